using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Reviewing;

/// <summary>What the review page is made from.</summary>
/// <param name="Study">The study.</param>
/// <param name="Day">Its readings.</param>
/// <param name="Comparison">What they say.</param>
/// <param name="Journal">How many lines the journal has, and the hash of the last.</param>
/// <param name="Segment">Number of the chosen segment, from 1.</param>
internal sealed record ReviewSight(Study Study, MeasuredDay Day, Comparison Comparison, (int Lines, string HeadHash) Journal, int Segment)
{
    /// <summary>What the ear says.</summary>
    public required EarFindings Ear { get; init; }

    /// <summary>The plan.</summary>
    public Plan Plan => Study.Asked!;

    /// <summary>The class that the plan's main question is asked of; null: all segments together.</summary>
    public MeasureClass? MainClass => Plan.MainMeasure switch
    {
        MainMeasure.Steady => MeasureClass.Steady,
        MainMeasure.Impact => MeasureClass.Impact,
        _ => null,
    };

    /// <summary>Half width, dB, of the one scale of all plots.</summary>
    public double SpanDb => Look.IntervalPlot.SpanDb(
        Comparison.Comparisons
            .SelectMany(pair => new[] { pair.Classes.Steady, pair.Classes.Impact })
            .OfType<ClassComparison>()
            .SelectMany(one => one.Segments)
            .Select(segment => segment.Estimate),
        Math.Max(Plan.MarginDb, Plan.ImpactMarginDb));

    /// <summary>The margin of a class, dB.</summary>
    public double MarginDb(MeasureClass? measureClass) => measureClass == MeasureClass.Impact ? Plan.ImpactMarginDb : Plan.MarginDb;
}
