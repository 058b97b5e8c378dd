namespace FieldSession.Comparing;

/// <summary>The one way from the readings of a day to its comparison: codes against a reference, nothing about what a code is.</summary>
public static class BlindComparison
{
    /// <summary>Compares the codes of a day. Pure: same day and terms, same result. Method: docs/formulas.md.</summary>
    /// <param name="day">The readings.</param>
    /// <param name="terms">Reference, margins, archive.</param>
    /// <exception cref="ArgumentException">A run with two codes, a segment with two classes, a level that is not a number, or a margin not
    /// above 0.</exception>
    public static Comparison Of(MeasuredDay day, ComparisonTerms terms) =>
        MainSegmentsCompared.AddedTo(Plain(day, terms), day, terms, Plain);

    /// <summary>
    /// The comparison, and for every class what it hangs on (<see cref="Sensitivity"/>). Dearer, once more for every run and segment: for
    /// the evening and for 'compare', not for every reading.
    /// </summary>
    /// <param name="day">The readings.</param>
    /// <param name="terms">Reference, margins, archive.</param>
    /// <exception cref="ArgumentException">As for <see cref="Of"/>.</exception>
    public static Comparison InFull(MeasuredDay day, ComparisonTerms terms) =>
        MainSegmentsCompared.AddedTo(Tried(day, terms), day, terms, Tried);

    private static Comparison Plain(MeasuredDay day, ComparisonTerms terms) => Shown(DayComparing.Of(day, terms), terms);

    private static Comparison Tried(MeasuredDay day, ComparisonTerms terms) =>
        Shown(SensitivityOfDay.AddedTo(DayComparing.Of(day, terms), day, terms), terms);

    private static Comparison Shown(Comparison comparison, ComparisonTerms terms) =>
        terms.PlanComplete ? comparison : UnfinishedDay.Of(comparison);
}

/// <summary>What a day's comparison hangs on, put into its classes.</summary>
internal static class SensitivityOfDay
{
    // one comparison a run and a segment: beyond this somebody would wait for it
    private const double MostWork = 5e6;

    /// <summary>
    /// Tries every change and puts what comes of it into every class of a comparison. Dearer than the comparison itself (once more for
    /// every run and segment), so asked for apart; a day of very many readings only gets a remark that it was not done.
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

        return comparison with
        {
            Comparisons = pairs,
        };
    }

    /// <summary>Whether a day is small enough for every change to be tried while somebody waits.</summary>
    private static bool IsQuick(MeasuredDay day)
    {
        double runs = day.Levels.Select(level => level.Run).Distinct().Count();
        double segments = day.Levels.Select(level => level.Segment).Distinct().Count();
        return runs * segments * (runs + segments) <= MostWork;
    }

    private static ClassComparisons With(ClassComparisons classes, MeasureClass? measureClass, Sensitivity? found) =>
        measureClass switch
        {
            null when classes.All is not null => classes with { All = classes.All with { Sensitivity = found } },
            MeasureClass.Steady when classes.Steady is not null => classes with { Steady = classes.Steady with { Sensitivity = found } },
            MeasureClass.Impact when classes.Impact is not null => classes with { Impact = classes.Impact with { Sensitivity = found } },
            _ => classes,
        };
}
