using FieldSession.Comparing;
using FieldSession.Reviewing;

namespace FieldSession.Reporting;

/// <summary>A difference in dB as a row of a plot.</summary>
public static class DifferenceRow
{
    /// <summary>The row; none where the difference is not known.</summary>
    /// <param name="label">What it is about.</param>
    /// <param name="estimate">The difference; null: not known.</param>
    /// <param name="marginDb">The margin that it is held against, dB.</param>
    /// <param name="marked">Whether the row is set apart.</param>
    public static IEnumerable<IntervalRow> Of(string label, Estimate? estimate, double marginDb, bool marked) => estimate is null
        ? []
        : [new IntervalRow(label, estimate.DifferenceDb, $"{Figures.Difference(estimate)} dB", Usable(estimate, estimate.Lo95Db), Usable(estimate, estimate.Hi95Db), marginDb)
        {
            Marked = marked,
            ShownInterval = Usable(estimate, estimate.Lo95Db) is null ? "" : Figures.Interval95(estimate),
        }];

    private static double? Usable(Estimate estimate, double? limitDb) => estimate.HasNoUsableInterval ? null : limitDb;
}
