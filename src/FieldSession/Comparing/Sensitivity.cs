namespace FieldSession.Comparing;

/// <summary>What was changed for a line of the sensitivity.</summary>
public enum SensitivityChange
{
    /// <summary>Spoilt readings put back.</summary>
    SpoiltPutBack,

    /// <summary>One run left out.</summary>
    RunLeftOut,

    /// <summary>One segment left out.</summary>
    SegmentLeftOut,

    /// <summary>The drift column put in or taken out, against the rule.</summary>
    DriftSwitched,
}

/// <summary>The comparison once more with one thing changed.</summary>
/// <param name="Change">What was changed.</param>
/// <param name="Name">The run or segment that was left out; empty where the change names none.</param>
/// <param name="Overall">The difference then.</param>
/// <param name="Verdict">The verdict words then.</param>
/// <param name="HasVerdict">Whether those are verdict words; false: what is left carries none.</param>
public sealed record SensitivityLine(SensitivityChange Change, string Name, Estimate Overall, string Verdict, bool HasVerdict);

/// <summary>How much the result of one code and class hangs on single runs, single segments, the spoilt readings and the drift column.</summary>
/// <param name="Lines">Every change tried, as far as a comparison was possible after it.</param>
/// <param name="LowestDb">Lowest difference among the lines and the result itself, dB.</param>
/// <param name="HighestDb">Highest difference among them, dB.</param>
/// <param name="VerdictChanges">True if any line that carries a verdict has other words than the result.</param>
public sealed record Sensitivity(IReadOnlyList<SensitivityLine> Lines, double LowestDb, double HighestDb, bool VerdictChanges)
{
    /// <summary>The least change that turns the word; null: none of those tried does, or there is no word.</summary>
    public LeastChange? Least { get; init; }

    /// <summary>Whether single readings were tried too; false: there are too many of them.</summary>
    public bool ReadingsTried { get; init; }
}
