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


    // one comparison a run and a segment: beyond this somebody would wait for it
    private const double MostWork = 5e6;

    /// <summary>
    /// Tries every change and puts what comes of it into every class of a comparison. Dearer than the comparison itself (once more for every run and
    /// segment), so asked for apart; a day of very many readings only gets a remark that it was not done.
    /// </summary>
    /// <param name="comparison">The comparison of the day.</param>
    /// <param name="day">The readings.</param>
    /// <param name="terms">Reference, margins, archive.</param>
    internal static Comparison AddedTo(Comparison comparison, MeasuredDay day, ComparisonTerms terms)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        ArgumentNullException.ThrowIfNull(day);
        if (!IsQuick(day))
        {
            return comparison with { Remarks = [.. comparison.Remarks, ComparingWords.SensitivityNotWorkedOut] };
        }

        SensitivityFinding finding = new(DayTable.Of(day), terms);
        CodeComparison[] pairs = [.. comparison.Comparisons];
        foreach (MeasureClass? measureClass in new MeasureClass?[] { null, MeasureClass.Steady, MeasureClass.Impact })
        {
            Dictionary<string, Sensitivity> found = finding.OfClass(measureClass);
            for (int i = 0; i < pairs.Length; i++)
            {
                pairs[i] = pairs[i] with { Classes = With(pairs[i].Classes, measureClass, found.GetValueOrDefault(pairs[i].Code)) };
            }
        }

        return comparison with { Comparisons = pairs };
    }

    /// <summary>Whether a day is small enough for every change to be tried while somebody waits.</summary>
    private static bool IsQuick(MeasuredDay day)
    {
        double runs = day.Levels.Select(level => level.Run).Distinct().Count();
        double segments = day.Levels.Select(level => level.Segment).Distinct().Count();
        return runs * segments * (runs + segments) <= MostWork;
    }

    private static ClassComparisons With(ClassComparisons classes, MeasureClass? measureClass, Sensitivity? found) => measureClass switch
    {
        null when classes.All is not null => classes with { All = classes.All with { Sensitivity = found } },
        MeasureClass.Steady when classes.Steady is not null => classes with { Steady = classes.Steady with { Sensitivity = found } },
        MeasureClass.Impact when classes.Impact is not null => classes with { Impact = classes.Impact with { Sensitivity = found } },
        _ => classes,
    };
}
