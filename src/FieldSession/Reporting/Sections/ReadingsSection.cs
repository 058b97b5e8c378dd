using System.Collections.Immutable;
using FieldSession.Comparing;
using FieldSession.Reviewing;
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
        return new ReportSection(
            ReportPart.LeftOut,
            ReportingWords.ReadingsTakenAndLeftOut,
            [
                new ReportTable(
                    ["Code", "Runs", "Planned", "Taken", "Spoilt", "Flagged late", "Missed", "Doubtful"],
                    [.. study.Codes.Select(code => Row(study, code, day.Names.Of(code.Digits)))]
                ),
                new Points([.. TypedLater(study), .. Spoilt(study), .. Corrected(study), .. Filled(study), .. Aborted(study)]),
                .. study.Runs.Count == 0 ? [] : RunBlocks.Of(day),
            ]
        );
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
        return later.Length == 0
            ? []
            : [ReportingWords.ReadingsTypedLater(later.Length, study.Runs.Sum(run => run.Readings.Count()), onSpot, late)];
    }

    private static IEnumerable<string> Filled(Study study) =>
        from run in study.Runs
        from reading in run.Readings
        where reading.FilledAtStop
        select ReportingWords.ReadingFilledAtStop(
            run.Number,
            study.Plan!.Route[reading.Segment - 1].Name,
            reading.Levels,
            study.Plan.FilledLeftOut == true ? ReportingWords.FilledIsOut : ReportingWords.FilledCounts
        );

    private static IEnumerable<string> Aborted(Study study)
    {
        ImmutableHashSet<int> notCounted = Aborts.NotCounted(study);
        return study
            .Runs.Where(run => run.Aborted is not null)
            .Select(run =>
                ReportingWords.RunWasAborted(
                    run,
                    study.Plan!.Route.Count,
                    notCounted.Contains(run.Number) ? ReportingWords.AbortedRunIsOut : ReportingWords.AbortedRunCounts
                )
            );
    }

    private static IEnumerable<string> Corrected(Study study) =>
        from run in study.Runs
        from reading in run.Readings
        where reading.CorrectedFrom is not null
        select ReportingWords.ReadingCorrectedAtStop(
            run.Number,
            study.Plan!.Route[reading.Segment - 1].Name,
            reading.CorrectedFrom,
            reading.Levels
        );
}

/// <summary>The runs in driven order: when, on what, and how loud on the mean; the plot shows the drift of the day.</summary>
public static class RunBlocks
{
    // Beyond this the hours of a day tell no longer where a run lies; own rule, a day of driving with daylight.
    private const double LongestDayHours = 16;

    /// <summary>Plot and table.</summary>
    public static IEnumerable<ReportBlock> Of(ReportDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        RunLevels? steady = RunLevels.Of(day.Day, MeasureClass.Steady);
        RunLevels? impact = RunLevels.Of(day.Day, MeasureClass.Impact);
        if ((MainOf(day, steady, impact) ?? steady ?? impact) is { } shown)
        {
            yield return Chart(day, shown);
        }

        yield return new ReportTable(
            [
                "Run",
                "Spec",
                "Driver",
                day.Study.Plan?.Facts.UtcOffsetMinutes is null ? "Started, UTC" : ReportingWords.StartedUtcAndLocal,
                "Clean readings",
                ReportingWords.SteadySegmentsInDb,
                "Impacts, dB(A)",
            ],
            [.. day.Study.Runs.Select(run => Row(run, day, steady, impact))]
        );
        yield return new Paragraph(ReportingWords.HowRunLevelIsTaken);
    }

    private static RunLevels? MainOf(ReportDay day, RunLevels? steady, RunLevels? impact) =>
        day.Study.Asked?.MainMeasure switch
        {
            MainMeasure.Impact => impact,
            MainMeasure.All => RunLevels.Of(day.Day, null),
            _ => steady,
        };

    private static IReadOnlyList<string> Row(Run run, ReportDay day, RunLevels? steady, RunLevels? impact) =>
        [
            $"{run.Number}",
            day.Names.Of(run.Code.Digits),
            run.Driver ?? "",
            $"{run.Started.At.UtcDateTime:yyyy-MM-dd} {run.Started.At.UtcDateTime:t}{LocalTime(run, day.Study.Plan)}",
            $"{run.Readings.Count(reading => !reading.LeftOut)}",
            LevelIn(steady, run),
            LevelIn(impact, run),
        ];

    private static string LocalTime(Run run, Plan? plan) =>
        plan?.Facts.UtcOffsetMinutes is { } minutes ? $" ({Local.TimeOfDay(run.Started.At, minutes)})" : "";

    private static string LevelIn(RunLevels? levels, Run run) =>
        levels?.Runs.FirstOrDefault(level => level.Run == run.Number) is { } found ? Figures.Db(found.LevelDb) : "not counted";

    private static RunLevelChart Chart(ReportDay day, RunLevels levels)
    {
        bool overTime =
            levels.Runs.All(run => run.Hours is not null)
            && levels.Runs.Max(run => run.Hours) - levels.Runs.Min(run => run.Hours) < LongestDayHours;
        DateTime first = day.Study.Runs.First(run => run.Readings.Any()).Started.At.UtcDateTime;
        double PlaceOf(RunMean run) => overTime ? first.TimeOfDay.TotalHours + run.Hours!.Value : run.Run;
        return new RunLevelChart(
            ReportingWords.MeanLevelOfEachRun(levels),
            [.. levels.Runs.Select(run => new RunLevelPoint(run.Run, day.Names.Of(run.Code), PlaceOf(run), run.LevelDb))],
            overTime && day.Study.Sessions.Count == 1 && levels.Drift is { } slope ? [.. Drifts(levels, slope, PlaceOf, day.Names)] : [],
            overTime
        )
        {
            DriftShown = levels.Drift is { } drift ? DriftShown(drift) : null,
        };
    }

    private static IEnumerable<DriftLine> Drifts(RunLevels levels, DriftPerHour drift, Func<RunMean, double> placeOf, SpecNames names) =>
        from code in levels.Runs.GroupBy(run => run.Code)
        where code.Count() > 1
        let first = code.Min(placeOf)
        let last = code.Max(placeOf)
        let middle = code.Average(placeOf)
        let levelDb = code.Average(run => run.LevelDb)
        select new DriftLine(
            names.Of(code.Key),
            first,
            levelDb + drift.BDbPerHour * (first - middle),
            last,
            levelDb + drift.BDbPerHour * (last - middle)
        );

    private static string DriftShown(DriftPerHour drift)
    {
        string error = drift.StandardErrorDbPerHour is { } known ? $", standard error {Figures.FineDb(known)}" : "";
        return ReportingWords.DriftPerHour(drift, error);
    }
}
