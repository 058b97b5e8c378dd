namespace FieldSession.State;

/// <summary>Where and when a fact is in the journal.</summary>
/// <param name="Number">Number of the line within its strand, from 1.</param>
/// <param name="At">When it was written, by the laptop's clock; for a fact that was typed in from paper, the paper's time.</param>
public readonly record struct LineMark(int Number, DateTimeOffset At)
{
    private readonly int _place;

    /// <summary>Whether it was logged on paper and typed in afterwards.</summary>
    public bool IsTypedLater { get; init; }

    /// <summary>The strand that the line belongs to; null: the study's first one.</summary>
    public string? Strand { get; init; }

    /// <summary>Place of the line among those of all strands, from 1, in the order in which the study is told.</summary>
    public int Place
    {
        get => _place == 0 ? Number : _place;
        init => _place = value == Number ? 0 : value;
    }

    /// <summary>Which line it is, whatever else has been merged since.</summary>
    public LineName Name => new(Strand, Number);
}

/// <summary>A line by its strand and its number: the same on every laptop.</summary>
/// <param name="Strand">The strand; null: the study's first one.</param>
/// <param name="Line">Number of the line within the strand, from 1.</param>
public readonly record struct LineName(string? Strand, int Line);
