using FieldSession.Measures;
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
        return new ReportSection(ReportPart.Conditions, ReportingWords.MeterWeatherAndRoute,
        [
            new Points([.. study.Sessions.Select(Session)]),
            new ReportTable(["When, UTC", "Air", "Road", "Wind", "Gusts", "Surface"], [.. study.Weather.Select(w => Weather(w, units))]),
            new ReportTable(["No.", "Segment", "Kind", "Speed", "Length"], [.. (study.Plan?.Route ?? []).Select(s => Segment(s, units))]),
            new Paragraph(ReportingWords.NoCorrectionApplied),
        ]);
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
