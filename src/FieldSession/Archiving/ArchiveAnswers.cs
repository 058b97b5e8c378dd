using System.Collections.Immutable;
using FieldSession.Reporting;
using FieldSession.Revealing;
using FieldSession.State;

namespace FieldSession.Archiving;

/// <summary>What one segment gave over several studies.</summary>
/// <param name="Segment">The crew's name of it.</param>
/// <param name="Kind">Kind of surface.</param>
/// <param name="Studies">Studies that drove it.</param>
/// <param name="Taken">Readings taken.</param>
/// <param name="Counted">Of these, readings that count.</param>
/// <param name="ReadingSdDb">Standard deviation of a reading on it, dB; null without degrees of freedom.</param>
/// <param name="Nu">Its degrees of freedom.</param>
/// <param name="PerDb2Minute">Information of a minute on it, 1/dB^2: readings that count a minute driven, each worth 1 / variance; null: it
/// told nothing yet.</param>
public sealed record SegmentSum(
    string Segment,
    string Kind,
    int Studies,
    int Taken,
    int Counted,
    double? ReadingSdDb,
    double Nu,
    double? PerDb2Minute
)
{
    /// <summary>Share of the readings that are left out, 0..1; null: none was taken.</summary>
    public double? SpoiltShare => Taken == 0 ? null : 1 - ((double)Counted / Taken);
}

/// <summary>How often a line of a verdict came out as a word.</summary>
/// <param name="Line">The line.</param>
/// <param name="Word">The word.</param>
/// <param name="Verdicts">How often.</param>
public sealed record WordCount(VerdictLineKind Line, string Word, int Verdicts);

/// <summary>Predictions that were stated about equally sure.</summary>
/// <param name="From">Least probability stated, 0..1 in steps of 0.1.</param>
/// <param name="Predictions">How many.</param>
/// <param name="Stated">Mean of what was stated.</param>
/// <param name="CameTrue">Share that came true.</param>
public sealed record CalibrationStep(double From, int Predictions, double Stated, double CameTrue);

/// <summary>How a meter's drift goes with the temperature.</summary>
/// <param name="Meter">The meter, as crews wrote it; empty: not given.</param>
/// <param name="Sessions">Sessions with a drift and a temperature.</param>
/// <param name="DriftDb">Mean drift over a session, dB.</param>
/// <param name="DbPerDegree">Slope of drift on air temperature, dB/degC (least squares); null: one temperature.</param>
public sealed record MeterDrift(string Meter, int Sessions, double DriftDb, double? DbPerDegree);

/// <summary>How often readings were flagged while somebody drove.</summary>
/// <param name="Driver">Who drove; empty: not given.</param>
/// <param name="Readings">Readings taken.</param>
/// <param name="Flags">Of these, flagged by cause, the most frequent first.</param>
public sealed record DriverFlags(string Driver, int Readings, ImmutableArray<(SpoiltCause Cause, int Readings)> Flags);

/// <summary>Questions of a test department, answered from finished studies: the same as in docs/team/questions.sql.</summary>
/// <param name="Segments">What each segment gave, the most telling first; those that told nothing last.</param>
/// <param name="Words">How often verdicts came out as each word.</param>
/// <param name="Calibration">How far stated probabilities came true.</param>
/// <param name="Drifts">The meters' drift against the temperature.</param>
/// <param name="Flags">Flags a driver.</param>
public sealed record ArchiveAnswers(
    ImmutableArray<SegmentSum> Segments,
    ImmutableArray<WordCount> Words,
    ImmutableArray<CalibrationStep> Calibration,
    ImmutableArray<MeterDrift> Drifts,
    ImmutableArray<DriverFlags> Flags
)
{
    private const int Steps = 10;

    /// <summary>The answers.</summary>
    public static ArchiveAnswers Of(IEnumerable<ArchivedStudy> studies)
    {
        ArchivedStudy[] all = [.. studies.Where(study => study.IsFinished)];
        return new ArchiveAnswers(
            [.. SegmentsOf(all)],
            [
                .. all.SelectMany(study => study.Details.Words)
                    .GroupBy(word => word)
                    .Select(found => new WordCount(found.Key.Line, found.Key.Word, found.Count()))
                    .OrderBy(count => count.Line)
                    .ThenByDescending(count => count.Verdicts)
                    .ThenBy(count => count.Word, StringComparer.Ordinal),
            ],
            [
                .. all.SelectMany(study => study.Predictions)
                    .GroupBy(one => Math.Floor(one.Stated * Steps) / Steps)
                    .OrderBy(step => step.Key)
                    .Select(Step),
            ],
            [
                .. all.GroupBy(study => study.Details.Meter ?? "")
                    .OrderBy(meter => meter.Key, StringComparer.Ordinal)
                    .Select(meter => Drift(meter.Key, meter))
                    .OfType<MeterDrift>(),
            ],
            [
                .. all.SelectMany(study => study.Details.Flags)
                    .GroupBy(flags => flags.Driver)
                    .OrderBy(driver => driver.Key, StringComparer.Ordinal)
                    .Select(Driver),
            ]
        );
    }

    /// <summary>What each segment gave over some studies, the most telling first.</summary>
    public static IEnumerable<SegmentSum> SegmentsOf(IEnumerable<ArchivedStudy> studies) =>
        studies
            .SelectMany(study => study.Details.Segments)
            .GroupBy(segment => (segment.Segment, segment.Kind))
            .Select(Segment)
            .OrderByDescending(sum => sum.PerDb2Minute ?? -1)
            .ThenBy(sum => sum.Segment, StringComparer.Ordinal);

    private static SegmentSum Segment(IEnumerable<ArchivedSegment> segment)
    {
        ArchivedSegment[] all = [.. segment];
        double nu = all.Where(one => one.SdDb is not null).Sum(one => one.Nu);
        double? variance = nu > 0 ? all.Sum(one => one.SdDb is { } sd ? one.Nu * sd * sd : 0) / nu : null;
        double minutes = all.Sum(one => (one.Taken + one.Missed) * one.Seconds) / 60;
        int counted = all.Sum(one => one.Counted);
        return new SegmentSum(
            all[0].Segment,
            all[0].Kind,
            all.Length,
            all.Sum(one => one.Taken),
            counted,
            variance is { } known ? Math.Sqrt(known) : null,
            nu,
            minutes > 0 && variance > 0 ? counted / minutes / variance : null
        );
    }

    private static CalibrationStep Step(IGrouping<double, ScoredPrediction> step) =>
        new(step.Key, step.Count(), step.Average(one => one.Stated), step.Average(one => one.Hit ? 1.0 : 0));

    private static MeterDrift? Drift(string meter, IEnumerable<ArchivedStudy> studies)
    {
        (double Drift, double Air)[] all =
        [
            .. studies
                .SelectMany(study => study.Details.Drifts)
                .Where(one => one.AirC is not null)
                .Select(one => (one.DriftDb, one.AirC!.Value)),
        ];
        if (all.Length == 0)
        {
            return null;
        }

        (double drift, double air) = (all.Average(one => one.Drift), all.Average(one => one.Air));
        double spread = all.Sum(one => (one.Air - air) * (one.Air - air));
        return new MeterDrift(meter, all.Length, drift, spread > 0 ? all.Sum(one => (one.Air - air) * (one.Drift - drift)) / spread : null);
    }

    private static DriverFlags Driver(IGrouping<string, ArchivedFlags> driver) =>
        new(
            driver.Key,
            driver.Sum(flags => flags.Readings),
            [
                .. driver
                    .Where(flags => flags.Cause is not null)
                    .GroupBy(flags => flags.Cause!.Value)
                    .Select(cause => (cause.Key, cause.Sum(flags => flags.Readings)))
                    .OrderByDescending(cause => cause.Item2)
                    .ThenBy(cause => cause.Key),
            ]
        );
}
