using FieldSession.Comparing;
using FieldSession.Reviewing;

namespace FieldSession.Reporting;

/// <summary>
/// A plot of differences with their 95 % intervals, a row each, zero and the margins that matter behind them; how it is drawn is for others
/// to say.
/// A table with the same numbers is beside it.
/// </summary>
/// <param name="Title">What is plotted, such as "Difference by segment".</param>
/// <param name="Unit">Unit of every number in it, such as "dB".</param>
/// <param name="Rows">What is drawn, from top to bottom.</param>
public sealed record IntervalChart(string Title, string Unit, IReadOnlyList<IntervalRow> Rows) : ReportChart(Title)
{
    /// <summary>What a marked row means, such as "the main measure"; null: no row is marked.</summary>
    public string? MarkedMeans { get; init; }

    /// <summary>What it means to lie below 0 and above it.</summary>
    public required ChartEnds Ends { get; init; }

    /// <inheritdoc/>
    public override bool IsEmpty => Rows.Count == 0;

    /// <inheritdoc/>
    public override string Words
    {
        get
        {
            IntervalRow highest = Rows.MaxBy(row => row.Estimate)!;
            IntervalRow lowest = Rows.MinBy(row => row.Estimate)!;
            string ends = Rows.Count == 1 ? Said(highest) : $"highest {Said(highest)}, lowest {Said(lowest)}";
            string[] sentences = [$"Plot: {Title}, {Counted(Rows.Count, "row")}: {ends}.", .. Intervals, .. Marked];
            return string.Join(' ', sentences);
        }
    }

    /// <summary>Whether any row has an interval.</summary>
    public bool HasIntervals => Rows.Any(row => row is { Low95: not null, High95: not null });

    /// <summary>Whether any row has a margin.</summary>
    public bool HasMargins => Rows.Any(row => row.Margin is not null);

    private IEnumerable<string> Intervals
    {
        get
        {
            IntervalRow[] known = [.. Rows.Where(row => row is { Low95: not null, High95: not null })];
            if (!HasIntervals)
            {
                yield return ReportingWords.NoIntervalIsKnown;
                yield break;
            }

            int apart = known.Count(row => row.Low95 > 0 || row.High95 < 0);
            int inside = known.Count(row => row.Low95 > -row.Margin && row.High95 < row.Margin);
            yield return known.Length == 1
                ? ReportingWords.OneInterval(apart == 1, HasMargins ? inside == 1 : null)
                : ReportingWords.SeveralIntervals(known.Length, apart, HasMargins ? inside : null);
        }
    }

    private IEnumerable<string> Marked =>
        MarkedMeans is { } means && Rows.Any(row => row.Marked)
            ? [$"Marked as {means}: {string.Join(", ", Rows.Where(row => row.Marked).Select(row => row.Label))}."]
            : [];

    private static string Said(IntervalRow row) => $"{row.Label} {row.Shown}";

    private static string Counted(int count, string what) => $"{count} {what}{(count == 1 ? "" : "s")}";
}

/// <summary>The two directions of a plot, in words.</summary>
/// <param name="Below">Below 0, such as "quieter".</param>
/// <param name="Above">Above 0, such as "louder".</param>
public sealed record ChartEnds(string Below, string Above)
{
    /// <summary>Of levels.</summary>
    public static ChartEnds OfLevels { get; } = new(AnswerWords.Quieter, AnswerWords.Louder);

    /// <summary>Of a ring.</summary>
    public static ChartEnds OfRing { get; } = new(AnswerWords.Weaker, AnswerWords.Stronger);

    /// <summary>Of ratings.</summary>
    public static ChartEnds OfRatings { get; } = new(AnswerWords.Worse, AnswerWords.Better);

    /// <summary>Of energy.</summary>
    public static ChartEnds OfEnergy { get; } = new(AnswerWords.Less, AnswerWords.More);
}

/// <summary>A row of an <see cref="IntervalChart"/>.</summary>
/// <param name="Label">What the row is about.</param>
/// <param name="Estimate">The difference, in the chart's unit.</param>
/// <param name="Shown">The difference as people read it, rounded once, with its unit.</param>
/// <param name="Low95">Lower end of its 95 % interval; null: not known.</param>
/// <param name="High95">Upper end; null: not known.</param>
/// <param name="Margin">Differences within plus or minus this do not matter, above 0; null: no margin was agreed.</param>
public sealed record IntervalRow(string Label, double Estimate, string Shown, double? Low95, double? High95, double? Margin)
{
    /// <summary>Its 95 % interval as people read it; empty: not known.</summary>
    public string ShownInterval { get; init; } = "";

    /// <summary>Whether the row is set apart, as <see cref="IntervalChart.MarkedMeans"/> says.</summary>
    public bool Marked { get; init; }
}

/// <summary>A difference in dB as a row of a plot.</summary>
public static class DifferenceRow
{
    /// <summary>The row; none where the difference is not known.</summary>
    /// <param name="label">What it is about.</param>
    /// <param name="estimate">The difference; null: not known.</param>
    /// <param name="marginDb">The margin that it is held against, dB.</param>
    /// <param name="marked">Whether the row is set apart.</param>
    public static IEnumerable<IntervalRow> Of(string label, Estimate? estimate, double marginDb, bool marked) =>
        estimate is null
            ? []
            :
            [
                new IntervalRow(
                    label,
                    estimate.DifferenceDb,
                    $"{Figures.Difference(estimate)} dB",
                    Usable(estimate, estimate.Lo95Db),
                    Usable(estimate, estimate.Hi95Db),
                    marginDb
                )
                {
                    Marked = marked,
                    ShownInterval = Usable(estimate, estimate.Lo95Db) is null ? "" : Figures.Interval95(estimate),
                },
            ];

    private static double? Usable(Estimate estimate, double? limitDb) => estimate.HasNoUsableInterval ? null : limitDb;
}
