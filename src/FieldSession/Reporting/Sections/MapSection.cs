using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>
/// The readings themselves: run by segment for each code, spoilt ones struck through with their cause, missed ones empty.
/// </summary>
public static class MapSection
{
    private const double AboveDb = 1;
    private const double FarDb = 2;

    /// <summary>The section.</summary>
    public static ReportSection Of(ReportDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        Study study = day.Study;
        Run[] runs = [.. study.Codes.SelectMany(code => study.Runs.Where(run => run.Code == code))];
        return new ReportSection(
            ReportPart.Readings,
            MapWords.Title,
            runs.Length == 0 || study.Plan is not { } plan
                ? []
                :
                [
                    new Paragraph(MapWords.HowToRead(string.Join(", ", study.Codes.Select(code => day.Names.Of(code.Digits))))),
                    new ReadingsMap(
                        ["Segment", .. runs.Select(run => $"{run.Code}, run {run.Number}")],
                        [.. plan.Route.Select(segment => Row(segment, runs))]
                    ),
                ]
        );
    }

    private static MapRow Row(Segment segment, Run[] runs)
    {
        Reading?[] readings = [.. runs.Select(run => run.Readings.LastOrDefault(reading => reading.Segment == segment.Number))];
        double[] counted = [.. readings.Where(reading => reading is { LeftOut: false }).Select(reading => LevelOf(reading!))];
        double? meanDb = counted.Length == 0 ? null : counted.Average();
        return new MapRow(segment.Name, [.. readings.Select(reading => Cell(reading, meanDb))]);
    }

    private static MapCell Cell(Reading? reading, double? meanDb)
    {
        if (reading is null)
        {
            return new MapCell("", null, "", false, MapHeat.Near);
        }

        double levelDb = LevelOf(reading);
        MapHeat heat = reading.LeftOut || meanDb is not { } mean ? MapHeat.Near : Heat(levelDb - mean);
        return new MapCell(
            $"{reading.Levels}",
            reading.LeftOut ? null : levelDb,
            string.Join(' ', Marks(reading).Append(Sign(heat)).OfType<string>()),
            reading.LeftOut,
            heat
        );
    }

    private static IEnumerable<string?> Marks(Reading reading) =>
        [
            reading.Spoilt is { } spoilt ? $"{spoilt.Cause.Word()}{(spoilt.Late ? MapWords.Late : "")}" : null,
            reading.FilledAtStop ? MapWords.Filled : null,
            reading.CorrectedFrom is null ? null : MapWords.Corrected,
            reading.Mark.IsTypedLater ? MapWords.TypedLater : null,
            reading.IsToBeAsked ? "?" : null,
        ];

    // the middle of what was typed, a peak as it is
    private static double LevelOf(Reading reading) => reading.Levels.MidpointDb;

    private static MapHeat Heat(double overDb) =>
        overDb switch
        {
            >= FarDb => MapHeat.FarAbove,
            >= AboveDb => MapHeat.Above,
            <= -FarDb => MapHeat.FarBelow,
            <= -AboveDb => MapHeat.Below,
            _ => MapHeat.Near,
        };

    private static string? Sign(MapHeat heat) =>
        heat switch
        {
            MapHeat.FarAbove => "++",
            MapHeat.Above => "+",
            MapHeat.FarBelow => "--",
            MapHeat.Below => "-",
            _ => null,
        };
}

/// <summary>What the table of readings says.</summary>
internal static class MapWords
{
    public const string Title = "The readings, run by segment";
    public const string Late = " late";
    public const string Filled = "filled";
    public const string Corrected = "corrected";
    public const string TypedLater = "later";

    public static string HowToRead(string codes) =>
        $"As typed, dB(A), for {codes}. Struck through with its cause: spoilt, left out. Empty: missed. "
        + "+ and -: 1 dB or more above or below the mean of the segment; ++ and --: 2 dB or more. The line beside a "
        + "segment shows its clean levels from column to column.";
}
