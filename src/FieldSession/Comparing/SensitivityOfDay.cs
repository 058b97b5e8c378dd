namespace FieldSession.Comparing;

/// <summary>What a day's comparison hangs on, put into its classes.</summary>
internal static class SensitivityOfDay
{
    // one comparison a run and a segment: beyond this somebody would wait for it
    private const double MostWork = 5e6;

    /// <summary>
    /// Tries every change and puts what comes of it into every class of a comparison. Dearer than the comparison itself (once more for every run and
    /// segment), so asked for apart; a day of very many readings only gets a remark that it was not done.
    /// </summary>
    /// <param name="comparison">The comparison of the day.</param>
    /// <param name="day">The readings.</param>
    /// <param name="terms">Reference, margins, archive.</param>
    public static Comparison AddedTo(Comparison comparison, MeasuredDay day, ComparisonTerms terms)
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
