namespace FieldSession.State;

/// <summary>What someone said or saw.</summary>
/// <param name="Words">The note.</param>
/// <param name="Run">Number of the run it belongs to; null: said outside a run.</param>
/// <param name="Segment">Number of the segment it belongs to; null: none.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record Note(string Words, int? Run, int? Segment, LineMark Mark)
{
    /// <summary>Who said it; null: not noted.</summary>
    public string? Who { get; init; }

    /// <summary>Whether it was written after the reveal.</summary>
    public bool AfterReveal { get; init; }
}
