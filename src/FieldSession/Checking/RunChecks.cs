using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Checking;

/// <summary>What rules out starting a run, and what only warns. A blocking check can be overridden by name, with a reason.</summary>
public static class RunChecks
{
    /// <summary>The names of the checks that can rule out a run, or the locking of predictions.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [Commitment, CalibrationBefore, Surface, Wind, CalibrationAfter, Doubts, .. CheckKinds.All.Select(kind => kind.Name)];

    /// <summary>Sealed codes and their commitment are there before run 1.</summary>
    public const string Commitment = "commitment";

    /// <summary>The meter was checked before the session.</summary>
    public const string CalibrationBefore = "calibration-before";

    /// <summary>The meter was checked after the session.</summary>
    public const string CalibrationAfter = "calibration-after";

    /// <summary>Every doubtful reading was answered: confirmed, corrected or flagged.</summary>
    public const string Doubts = "doubts";

    /// <summary>The road is dry.</summary>
    public const string Surface = "surface";

    /// <summary>The mean wind is within the limit.</summary>
    public const string Wind = "wind";

    /// <summary>What to do about a check that blocks.</summary>
    public static string InsteadOf(string check) => CheckingWords.FixOrOverride(check);

    /// <summary>The checks that rule out the next run now and are not overridden.</summary>
    public static IEnumerable<Objection> AgainstNextRun(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Blocking(study).Where(objection => !IsOverridden(study, objection.Check!));
    }

    /// <summary>What rules out locking predictions: a session that was not closed, then doubts that are open; null: nothing.</summary>
    public static Objection? AgainstPredicting(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.SessionOn is { } session && study.LastRun?.Session == session.Number && !IsOverridden(study, CalibrationAfter)
            ? Blocking(CalibrationAfter, CheckingWords.CalibrationAfterIsMissing, CheckingWords.CalibrateAfter)
            : AgainstFreezing(study);
    }

    // once the data are frozen nobody can answer any more
    private static Objection? AgainstFreezing(Study study)
    {
        OpenDoubt[] open = study.DataFrozen || IsOverridden(study, Doubts) ? [] : [.. OpenDoubts.In(study)];
        return open.Length == 0 ? null : Blocking(Doubts, CheckingWords.DoubtsAreOpen(open), CheckingWords.AnswerDoubts(open[0]));
    }

    /// <summary>Every check that blocks now, overridden or not, for the next run or for the end of the session.</summary>
    public static IEnumerable<Objection> Blocking(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        Limits limits = study.Plan?.Limits ?? new Limits();
        if (study.Fittings.Count == 0)
        {
            yield return Blocking(Commitment, CheckingWords.NoCodesAreSealed, CheckingWords.LetCustodianRunSealFirst);
        }

        if (study.SessionOn is null)
        {
            yield return Blocking(CalibrationBefore, CheckingWords.CalibrationBeforeIsMissing, CheckingWords.CalibrateBefore);
        }

        if (Latest(study, w => w.Surface) is { Surface: { } surface } && surface != "dry")
        {
            yield return Blocking(Surface, CheckingWords.RoadRulesOutNoise(surface), CheckingWords.WaitForDryRoad);
        }

        if (Latest(study, w => w.Wind) is { Wind: { } wind } && wind.MetresPerSecond > limits.WindBlockMetresPerSecond)
        {
            yield return Blocking(
                Wind,
                CheckingWords.MeanWindIsAboveLimit(wind.In(Units(study)), new WindSpeed(limits.WindBlockMetresPerSecond).In(Units(study))),
                CheckingWords.WaitForLessWind
            );
        }

        foreach (Objection typed in OfTypedChecks(study))
        {
            yield return typed;
        }
    }

    private static IEnumerable<Objection> OfTypedChecks(Study study)
    {
        foreach (CheckKind kind in CheckKinds.All)
        {
            CheckRecord? last = SessionChecks.In(study, kind.Name).LastOrDefault();
            if (last is { Answer: CheckAnswer.Blocks })
            {
                yield return new Objection(last.Words, InsteadOf(kind.Name), kind.Name);
            }
            else if (last is null && study.Plan?.RequiredChecks?.Contains(kind.Name) == true)
            {
                yield return new Objection(
                    CheckingWords.PlanAsksInEverySession,
                    CheckingWords.CheckOrOverride(kind, study.Plan.Units),
                    kind.Name
                );
            }
        }
    }

    /// <summary>The checks of the plan's list of all that were not made in this session and do not block it, by name.</summary>
    public static IEnumerable<string> NotMade(Study study) =>
        CheckKinds.All.Where(kind => kind is not SpeedCheck && !SessionChecks.In(study, kind.Name).Any()).Select(kind => kind.Name);

    /// <summary>What the newest weather warns of.</summary>
    public static IEnumerable<string> WeatherWarnings(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.Weather.Count == 0)
        {
            return [];
        }

        Weather now = study.Weather[^1];
        Limits limits = study.Plan?.Limits ?? new Limits();
        string?[] warnings =
        [
            WindWarning("mean wind", now.Wind, new WindSpeed(limits.WindWarnMetresPerSecond), Units(study)),
            WindWarning("gusts", now.Gust, new WindSpeed(limits.GustWarnMetresPerSecond), Units(study)),
            AirWarning(now.Air, limits, Units(study)),
            now.Surface is { } surface && surface != "dry" ? CheckingWords.RoadIsNotDry(surface) : null,
        ];
        return warnings.OfType<string>();
    }

    private static string? WindWarning(string what, WindSpeed? wind, WindSpeed limit, UnitSystem units) =>
        wind?.MetresPerSecond > limit.MetresPerSecond ? $"{what} above {limit.In(units)}" : null;

    private static string? AirWarning(Temperature? air, Limits limits, UnitSystem units) =>
        air?.Celsius < limits.AirColdestCelsius || air?.Celsius > limits.AirWarmestCelsius
            ? $"air outside {new Temperature(limits.AirColdestCelsius).In(units)}..{new Temperature(limits.AirWarmestCelsius).In(units)}"
            : null;

    private static bool IsOverridden(Study study, string check) =>
        study.Overrides.Any(o => o.Check == check && o.Mark.Place > Renewed(study, check));

    // An override answers for the value it was given on: new weather or a new session asks again.
    private static int Renewed(Study study, string check) =>
        check switch
        {
            Surface => Latest(study, w => w.Surface)?.Mark.Place ?? 0,
            Wind => Latest(study, w => w.Wind)?.Mark.Place ?? 0,
            CalibrationBefore => study.LastSession?.After?.Mark.Place ?? 0,
            CalibrationAfter or Doubts => study.LastRun?.Started.Place ?? 0,
            _ when CheckKinds.Of(check) is not null => Math.Max(
                SessionChecks.In(study, check).LastOrDefault()?.Mark.Place ?? 0,
                Closed(study)
            ),
            _ => 0,
        };

    private static int Closed(Study study) =>
        study.Sessions.LastOrDefault(session => session.After is not null && study.Hand.TookOver(session.Opened))?.After?.Mark.Place ?? 0;

    private static Weather? Latest(Study study, Func<Weather, object?> part) => study.Weather.LastOrDefault(w => part(w) is not null);

    private static UnitSystem Units(Study study) => study.Plan?.Units ?? UnitSystem.Metric;

    private static Objection Blocking(string check, string why, string instead) =>
        new(why, CheckingWords.InsteadOrOverride(instead, check), check);
}
