namespace FieldSession.Comparing;

/// <summary>How large a change is.</summary>
public enum ChangeSize
{
    /// <summary>The flag of a reading or of a few: taken back, or given.</summary>
    Readings,

    /// <summary>One run left out.</summary>
    Run,

    /// <summary>One segment left out.</summary>
    Segment,
}

/// <summary>The least change of the readings that turns the word of a class.</summary>
/// <param name="Size">How large it is.</param>
/// <param name="Places">The readings whose flag changes, or the one run or segment.</param>
/// <param name="Verdict">The word then.</param>
/// <param name="ShareByChance">On how many of simulated days of the same design, difference and scatter a change of this size turns the word as well, 0..1.</param>
public sealed record LeastChange(ChangeSize Size, IReadOnlyList<ChangedPlace> Places, string Verdict, double ShareByChance);

/// <summary>Where something was changed.</summary>
/// <param name="Run">Number of the run; null: on all runs.</param>
/// <param name="Segment">Name of the segment; null: the whole run.</param>
/// <param name="PutBack">True: a spoilt reading was put back; false: left out.</param>
public sealed record ChangedPlace(int? Run, string? Segment, bool PutBack);
