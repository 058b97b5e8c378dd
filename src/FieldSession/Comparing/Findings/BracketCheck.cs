using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>
/// What the runs of a bracket say about the bracket itself. Nothing here compares one code with another: only the control with its own
/// repeat.
/// </summary>
/// <param name="Bracket">The bracket.</param>
/// <param name="RepeatDb">Control, closing minus opening run, mean over the steady segments read cleanly in both, dB; null: none.</param>
/// <param name="AirSpreadCelsius">Spread of the air temperatures noted from its first run to its last, degC; null: fewer than two
/// noted.</param>
/// <param name="LongestGapMinutes">Longest time from the end of one of its runs to the start of the next, minutes.</param>
/// <param name="SpoiltShares">The share of spoilt readings of each run, 0..1, by run number.</param>
public sealed record BracketCheck(
    Bracket Bracket,
    double? RepeatDb,
    double? AirSpreadCelsius,
    double LongestGapMinutes,
    IReadOnlyDictionary<int, double> SpoiltShares
)
{
    /// <summary>
    /// What an outdoor level changes by per degree of air temperature, dB (bituminous roads: Applied Acoustics 68, 2007, 1-16, abstract);
    /// inside a car there is no agreed figure.
    /// </summary>
    public const double DbPerCelsius = 0.1;

    /// <summary>Every bracket driven so far.</summary>
    public static IReadOnlyList<BracketCheck> Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return [.. Brackets.Of(study).Select(bracket => Of(study, bracket))];
    }

    /// <summary>The warnings, each with what to do; empty: the bracket is good.</summary>
    /// <param name="limits">What it is held against.</param>
    public IEnumerable<string> Warnings(Limits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        string name = $"bracket {Bracket.Number} (runs {string.Join(", ", Bracket.Runs.Select(run => run.Number))})";
        if (Math.Abs(RepeatDb ?? 0) > limits.Of(FurtherLimits.RepeatWarn))
        {
            string isVoid = IsVoid(limits) ? ComparingWords.VoidDriveAgain(limits, Bracket.Number) : ComparingWords.LookForWhatChanged;
            (double warn, double tooMuch) = (limits.Of(FurtherLimits.RepeatWarn), limits.Of(FurtherLimits.RepeatVoid));
            yield return ComparingWords.ControlRepeatsApart(name, RepeatDb, [warn, -warn, tooMuch, -tooMuch], isVoid);
        }

        if (AirSpreadCelsius > limits.Of(FurtherLimits.AirSpread))
        {
            yield return ComparingWords.AirChangedInBracket(name, AirSpreadCelsius, AirSpreadCelsius * DbPerCelsius);
        }

        if (LongestGapMinutes > limits.Of(FurtherLimits.BracketGap))
        {
            yield return ComparingWords.LongGapBetweenRuns(name, LongestGapMinutes);
        }

        foreach ((int run, double share) in SpoiltShares.Where(share => 100 * share.Value > limits.Of(FurtherLimits.SpoiltShare)))
        {
            yield return ComparingWords.RunLargelySpoilt(name, share, run, Bracket.Number);
        }
    }

    /// <summary>Whether the control repeats so badly that the bracket says nothing.</summary>
    public bool IsVoid(Limits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        return Math.Abs(RepeatDb ?? 0) > limits.Of(FurtherLimits.RepeatVoid);
    }

    private static BracketCheck Of(Study study, Bracket bracket) =>
        new(
            bracket,
            Repeat(study, bracket),
            AirSpread(study, bracket),
            bracket.Runs.Zip(bracket.Runs.Skip(1), (one, next) => (next.Started.At - one.Ended!.Value.At).TotalMinutes).Max(),
            bracket
                .Runs.Where(run => run.Readings.Any())
                .ToDictionary(
                    run => run.Number,
                    run => run.Readings.Count(reading => reading.Spoilt is not null) / (double)run.Readings.Count()
                )
        );

    private static double? Repeat(Study study, Bracket bracket)
    {
        double[] differences =
        [
            .. from segment in study.Plan?.Route ?? []
            where !segment.Kind.IsImpact
            let first = Level(bracket.Opening, segment)
            let last = Level(bracket.Closing, segment)
            where first is not null && last is not null
            select last.Value - first.Value,
        ];
        return differences.Length == 0 ? null : Math.Round(differences.Average(), 6);
    }

    private static double? Level(Run run, Segment segment)
    {
        Reading[] readings = [.. run.Readings.Where(reading => reading.Segment == segment.Number && !reading.LeftOut)];
        return readings.Length == 0 ? null : readings.Average(reading => reading.Levels.MidpointDb);
    }

    private static double? AirSpread(Study study, Bracket bracket)
    {
        int last = bracket.Closing.Ended!.Value.Place;
        Weather? before = study.Weather.LastOrDefault(weather =>
            weather.Air is not null && weather.Mark.Place < bracket.Opening.Started.Place
        );
        double[] air =
        [
            .. study
                .Weather.Where(weather =>
                    weather == before || (weather.Mark.Place > bracket.Opening.Started.Place && weather.Mark.Place < last)
                )
                .Select(weather => weather.Air?.Celsius)
                .OfType<double>(),
        ];
        return air.Length < 2 ? null : Math.Round(air.Max() - air.Min(), 6);
    }
}
