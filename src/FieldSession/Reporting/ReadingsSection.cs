using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>How many readings were taken, spoilt, flagged late and missed, per code and for which reasons.</summary>
public static class ReadingsSection
{
    /// <summary>The section.</summary>
    public static ReportSection Of(ReportDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        Study study = day.Study;
        return new ReportSection(ReportPart.LeftOut, ReportingWords.ReadingsTakenAndLeftOut,
        [
            new ReportTable(
                ["Code", "Runs", "Planned", "Taken", "Spoilt", "Flagged late", "Missed", "Doubtful"],
                [.. study.Codes.Select(code => Row(study, code, day.Names.Of(code.Digits)))]),
            new Points([.. TypedLater(study), .. Spoilt(study), .. Corrected(study), .. Filled(study), .. Aborted(study)]),
            .. study.Runs.Count == 0 ? [] : RunBlocks.Of(day),
        ]);
    }

    private static IReadOnlyList<string> Row(Study study, SpecCode code, string name)
    {
        Run[] runs = [.. study.Runs.Where(r => r.Code == code)];
        Reading[] readings = [.. runs.SelectMany(r => r.Readings)];
        int planned = runs.Length * (study.Plan?.Route.Count ?? 0);
        int read = runs.Sum(r => r.Readings.Select(p => p.Segment).Distinct().Count());
        return
        [
            name,
            $"{runs.Length}",
            $"{planned}",
            $"{readings.Length}",
            $"{readings.Count(r => r.LeftOut)}",
            $"{readings.Count(r => r.Spoilt is { Late: true })}",
            $"{planned - read}",
            $"{readings.Count(r => r.IsToBeAsked)}",
        ];
    }

    private static IEnumerable<string> Spoilt(Study study) =>
        from run in study.Runs
        from reading in run.Readings
        where reading.Spoilt is not null
        let spoilt = reading.Spoilt
        let words = spoilt.Words is { } said ? $" ({said})" : ""
        let late = spoilt.Late ? ReportingWords.FlaggedLate : ""
        select $"Run {run.Number}, {study.Plan!.Route[reading.Segment - 1].Name}: {reading.Levels} dB, {spoilt.Cause.Word()}{words}{late}";

    private static IEnumerable<string> TypedLater(Study study)
    {
        Reading[] later = [.. study.Runs.SelectMany(run => run.Readings).Where(reading => reading.Mark.IsTypedLater)];
        int onSpot = later.Count(reading => reading.LeftOut);
        int late = later.Count(reading => reading.Spoilt is { Late: true });
        return later.Length == 0 ? [] : [ReportingWords.ReadingsTypedLater(later.Length, study.Runs.Sum(run => run.Readings.Count()), onSpot, late)];
    }

    private static IEnumerable<string> Filled(Study study) =>
        from run in study.Runs
        from reading in run.Readings
        where reading.FilledAtStop
        select ReportingWords.ReadingFilledAtStop(
            run.Number, study.Plan!.Route[reading.Segment - 1].Name, reading.Levels, study.Plan.FilledLeftOut == true ? ReportingWords.FilledIsOut : ReportingWords.FilledCounts);

    private static IEnumerable<string> Aborted(Study study)
    {
        ImmutableHashSet<int> notCounted = Aborts.NotCounted(study);
        return study.Runs.Where(run => run.Aborted is not null).Select(run => ReportingWords.RunWasAborted(
            run, study.Plan!.Route.Count, notCounted.Contains(run.Number) ? ReportingWords.AbortedRunIsOut : ReportingWords.AbortedRunCounts));
    }

    private static IEnumerable<string> Corrected(Study study) =>
        from run in study.Runs
        from reading in run.Readings
        where reading.CorrectedFrom is not null
        select ReportingWords.ReadingCorrectedAtStop(run.Number, study.Plan!.Route[reading.Segment - 1].Name, reading.CorrectedFrom, reading.Levels);
}
