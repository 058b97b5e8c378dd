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
public sealed record SensitivityLine(SensitivityChange Change, string Name, Estimate Overall, string Verdict);

/// <summary>How much the result of one code and class hangs on single runs, single segments, the spoilt readings and the drift column.</summary>
/// <param name="Lines">Every change tried, as far as a comparison was possible after it.</param>
/// <param name="LowestDb">Lowest difference among the lines, dB; null: no line.</param>
/// <param name="HighestDb">Highest difference among the lines, dB; null: no line.</param>
/// <param name="VerdictChanges">True if any line has other verdict words.</param>
public sealed record Sensitivity(IReadOnlyList<SensitivityLine> Lines, double? LowestDb, double? HighestDb, bool VerdictChanges)
{
    /// <summary>Tries every change. Dearer than the comparison itself (one comparison a run and a segment), so asked for apart.</summary>
    /// <param name="day">The readings.</param>
    /// <param name="terms">Reference, margins, archive.</param>
    /// <param name="code">The code to hold against the reference.</param>
    /// <param name="measureClass">The class; null: all segments.</param>
    public static Sensitivity Of(MeasuredDay day, ComparisonTerms terms, string code, MeasureClass? measureClass) =>
        SensitivityFinding.Of(day, terms, code, measureClass);
}
