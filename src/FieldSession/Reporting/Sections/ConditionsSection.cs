using FieldSession.Comparing;
using FieldSession.Measures;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>Meter, weather and route as they were.</summary>
public static class ConditionsSection
{
    /// <summary>The section.</summary>
    public static ReportSection Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        UnitSystem units = study.Plan?.Units ?? UnitSystem.Metric;
        return new ReportSection(
            ReportPart.Conditions,
            ReportingWords.MeterWeatherAndRoute,
            [
                new Points([.. study.Sessions.Select(Session)]),
                new ReportTable(
                    ["When, UTC", "Air", "Road", "Wind", "Gusts", "Surface"],
                    [.. study.Weather.Select(w => Weather(w, units))]
                ),
                new ReportTable(
                    ["No.", "Segment", "Kind", "Speed", "Length"],
                    [.. (study.Plan?.Route ?? []).Select(s => Segment(s, units))]
                ),
                new Paragraph(ReportingWords.NoCorrectionApplied),
            ]
        );
    }

    private static string Session(Session session)
    {
        string before = session.Before is { } b ? $"{b.LevelDb:0.0#} dB" : "not made";
        string after = session.After is { } a ? $"{a.LevelDb:0.0#} dB" : "not made";
        string drift = session.DriftDb is { } d ? $"; drift {d:+0.0#;-0.0#;0.0} dB" : ReportingWords.DriftNotKnown;
        return ReportingWords.SessionCalibration(session, before, after, drift);
    }

    private static IReadOnlyList<string> Weather(Weather weather, UnitSystem units) =>
        [
            $"{weather.Mark.At:yyyy-MM-dd} {weather.Mark.At:t}",
            weather.Air?.In(units) ?? "",
            weather.Road?.In(units) ?? "",
            weather.Wind?.In(units) ?? "",
            weather.Gust?.In(units) ?? "",
            weather.Surface ?? "",
        ];

    private static IReadOnlyList<string> Segment(Segment segment, UnitSystem units) =>
        [$"{segment.Number}", segment.Name, segment.Kind.Word, segment.Speed.In(units), segment.Length.In(units)];
}

/// <summary>What was checked with which values, what warned, what was overridden and why, and which limits the plan had changed.</summary>
public static class ChecksSection
{
    /// <summary>The section.</summary>
    public static ReportSection Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        Limits limits = study.Plan?.Limits ?? new Limits();
        string[] warnings = [.. BracketCheck.Of(study).SelectMany(check => check.Warnings(limits)), .. SpoiltBalance.Warnings(study)];
        string[] rest =
        [
            .. warnings,
            .. study.Overrides.Select(one => ReportingWords.OverriddenBeforeRun(one)),
            .. study.Reruns.Select(one => ReportingWords.BracketDrivenAgain(one, string.Join(", ", one.Runs))),
            .. ConflictWords.Of(study),
            .. Archive(study),
            .. Changed(limits),
        ];
        ReportBlock checks =
            study.Checks.Count == 0
                ? new Paragraph(ReportingWords.NoCheckWithTypedValues)
                : new ReportTable(["When, UTC", "Before run", "Check", "Answer", "Found"], [.. study.Checks.Select(Row)]);
        return new ReportSection(
            ReportPart.Checks,
            "Checks",
            [checks, new Points(rest.Length == 0 ? [ReportingWords.NothingWarnedOrOverridden] : rest)]
        );
    }

    private static IEnumerable<string> Archive(Study study) =>
        study.Archive is { } archive
            ?
            [
                ReportingWords.RepeatabilityTakenFromArchive(
                    archive,
                    archive.Days == 1 ? "" : "s",
                    string.Join(", ", archive.Lines.Select(line => line.Day).Distinct())
                ),
            ]
            : [];

    private static IReadOnlyList<string> Row(CheckRecord check) =>
        [$"{check.Mark.At:yyyy-MM-dd} {check.Mark.At:t}", $"{check.Run + 1}", check.Name, Word(check.Answer), check.Words];

    private static string Word(CheckAnswer answer) =>
        answer switch
        {
            CheckAnswer.Blocks => ReportingWords.SpeaksAgainstRun,
            CheckAnswer.Warns => "look out",
            _ => "recorded",
        };

    private static IEnumerable<string> Changed(Limits limits) =>
        from held in AllLimits.InOrder
        where held.IsChangedIn(limits) || limits.Reasons?.ContainsKey(held.Limit.Name) == true
        select ReportingWords.LimitWasChanged(
            held.Limit.Name,
            held.Limit.Words,
            held.Of(limits),
            held.Limit.Default,
            Reason(limits, held.Limit.Name)
        );

    private static string Reason(Limits limits, string name) =>
        limits.Reasons?.GetValueOrDefault(name) ?? ReportingWords.NoReasonWasWrittenDown;
}
