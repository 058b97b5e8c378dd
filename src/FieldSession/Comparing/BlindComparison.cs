namespace FieldSession.Comparing;

/// <summary>The one way from the readings of a day to its comparison: codes against a reference, nothing about what a code is.</summary>
public static class BlindComparison
{
    /// <summary>Compares the codes of a day. Pure: same day and terms, same result. Method: docs/formulas.md.</summary>
    /// <param name="day">The readings.</param>
    /// <param name="terms">Reference, margins, archive.</param>
    /// <exception cref="ArgumentException">A run with two codes, a segment with two classes, a level that is not a number, or a margin not above 0.</exception>
    public static Comparison Of(MeasuredDay day, ComparisonTerms terms) =>
        MainSegmentsCompared.AddedTo(Plain(day, terms), day, terms, Plain);

    /// <summary>
    /// The comparison, and for every class what it hangs on (<see cref="Sensitivity"/>). Dearer, once more for every run and segment: for the evening
    /// and for 'compare', not for every reading.
    /// </summary>
    /// <param name="day">The readings.</param>
    /// <param name="terms">Reference, margins, archive.</param>
    /// <exception cref="ArgumentException">As for <see cref="Of"/>.</exception>
    public static Comparison InFull(MeasuredDay day, ComparisonTerms terms) =>
        MainSegmentsCompared.AddedTo(Tried(day, terms), day, terms, Tried);

    private static Comparison Plain(MeasuredDay day, ComparisonTerms terms) => Shown(DayComparing.Of(day, terms), terms);

    private static Comparison Tried(MeasuredDay day, ComparisonTerms terms) => Shown(SensitivityOfDay.AddedTo(DayComparing.Of(day, terms), day, terms), terms);

    private static Comparison Shown(Comparison comparison, ComparisonTerms terms) => terms.PlanComplete ? comparison : UnfinishedDay.Of(comparison);
}
