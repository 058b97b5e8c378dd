using FieldSession.Comparing;
using FieldSession.Signals;
using FieldSession.State;

namespace FieldSession.Reviewing;

/// <summary>What the recordings say, in words for a shell; or that it is covered.</summary>
public static class RingWords
{
    private const int LabelWidth = 34;
    private const int CellWidth = 26;

    /// <summary>The lines; none where nothing was recorded.</summary>
    /// <param name="study">The study.</param>
    /// <param name="ring">What the recordings say; null: the ring is covered.</param>
    public static IEnumerable<string> Of(Study study, RingFinding? ring)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.Recordings.IsEmpty)
        {
            return [];
        }

        return ring is null
            ? ["", .. PlainLines.Wrapped("", Covered(study))]
            : ["", .. PlainLines.Wrapped("", Head(ring)), .. ring.Pairs.SelectMany(pair => Pair(pair, ring))];
    }

    /// <summary>What a band is called.</summary>
    public static string NameOf(string band) =>
        band switch
        {
            "searched" => "searched band",
            "prominence" => "prominence over its flanks",
            _ => $"{band} Hz, third octave",
        };

    /// <summary>A band by its edges: "178 to 282 Hz".</summary>
    public static string Edges(FrequencyBand band) => $"{band.LowerHz:0} to {band.UpperHz:0} Hz";

    private static string Covered(Study study) =>
        $"Recordings of {study.Recordings.Count} of {study.Runs.Count} runs; what they hold is covered until the last "
        + "prediction is locked.";

    private static string Head(RingFinding ring) =>
        $"Ring in recordings, {Edges(ring.Band)}, margin {Figures.MarginDb(ring.MarginDb)} dB: {ring.RunsHeard} of {ring.RunsDriven} runs"
        + (ring.IsCalibrated ? "." : "; not calibrated: good for differences only.");

    private static IEnumerable<string> Pair(RingPair pair, RingFinding ring)
    {
        yield return $"  {pair.Code} against {pair.Reference}";
        foreach (ClassFigure figure in ClassFigures.Of(pair.Main))
        {
            yield return Row(figure.Label, figure.Cell(pair.Main));
        }

        foreach (string line in PlainLines.Wrapped("    verdict: ", ring.WhyNone is { } why ? $"no verdict: {why}" : pair.Main.Verdict))
        {
            yield return line;
        }

        if (pair.HangsOnShortEvents)
        {
            yield return "    hangs on short events: the median over 1.28 s says otherwise";
        }

        foreach (SegmentEstimate segment in pair.Main.Segments)
        {
            yield return Row($"  {segment.Segment}", $"{Figures.Difference(segment.Estimate)} ({Figures.Interval95(segment.Estimate)})");
        }

        yield return "    explored, no verdict:";
        foreach (ExploredBand band in pair.Explored)
        {
            yield return Row($"  {NameOf(band.Name)}", $"{Figures.Difference(band.Estimate)} ({Figures.Interval95(band.Estimate)})");
        }

        yield return Row("  ring after impacts lasts", Lasting(pair.Lasting));
    }

    /// <summary>A ratio of times with its interval.</summary>
    public static string Lasting(RingLasting? lasting) =>
        lasting switch
        {
            null => "not determinable",
            { Low95: { } low, High95: { } high } => $"x {lasting.Ratio:0.00} ({low:0.00} to {high:0.00})",
            _ => $"x {lasting.Ratio:0.00}",
        };

    private static string Row(string label, string cell) =>
        (PlainLines.Left($"    {label}", LabelWidth) + PlainLines.Right(cell, CellWidth)).TrimEnd();
}
