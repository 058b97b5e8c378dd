using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Reviewing;

/// <summary>What the study still lacks, and what the next session or day should drive. Nothing in it depends on a result.</summary>
public static class StillMissing
{
    private const int BracketsWanted = 2;

    /// <summary>In how many brackets a code is driven for a firm result; common practice, no source.</summary>
    public const int BracketsForAClaim = 4;

    /// <summary>The lines for the stop and the review; empty before the first run, and where nothing is missing.</summary>
    public static IReadOnlyList<string> In(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.Plan is not { } plan || study.Runs.Count == 0 || study.DataFrozen)
        {
            return [];
        }

        return
        [
            .. NotDriven(study, plan),
            .. VoidSessions(study, plan),
            .. VoidBrackets(study, plan),
            .. FewBrackets(study),
            .. FewCars(study, plan),
        ];
    }

    /// <summary>
    /// Whether the order is driven, the data are open, and a further day would add what this one could not: few brackets, or cars that kept
    /// their tyres.
    /// </summary>
    public static bool WantsAnotherDay(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study is { Plan: { } plan, OrderDriven: true, DataFrozen: false } && FewBrackets(study).Concat(FewCars(study, plan)).Any();
    }

    private static IEnumerable<string> NotDriven(Study study, Plan plan)
    {
        int[] planned = [.. study.Steps ?? [.. Enumerable.Range(0, plan.Order.Count)]];
        int[] steps =
        [
            .. study.IsShared
                ? planned.Where(step => !study.Runs.Exists(run => run.Step == step && run.Aborted is null))
                : planned.Skip(study.NextTurn()),
        ];
        if (steps.Length > 0 && study.RunOn is null)
        {
            string codes = string.Join(
                ' ',
                steps.Select(step => study.Fitting?.At(plan.Order[step])?.ToString() ?? plan.Order[step].ToString())
            );
            string first = study.SessionOn is null ? ReviewingWords.BeginWithCalibrationBefore : "";
            yield return ReviewingWords.StillToDrive(codes, first);
        }
    }

    private static IEnumerable<string> VoidSessions(Study study, Plan plan) =>
        from session in study.Sessions
        where Math.Abs(session.DriftDb ?? 0) > plan.Limits.CalibrationDriftVoidDb
        let runs = study.Runs.Where(run => run.Session == session.Number).Select(run => run.Number).ToArray()
        where runs.Length > 0
        select ReviewingWords.SessionIsVoid(session.Number, session.DriftDb);

    private static IEnumerable<string> VoidBrackets(Study study, Plan plan) =>
        BracketCheck
            .Of(study)
            .Where(check => check.IsVoid(plan.Limits) && study.Reruns.All(rerun => rerun.Bracket != check.Bracket.Number))
            .Select(check => ReviewingWords.BracketIsVoid(check));

    private static IEnumerable<string> FewBrackets(Study study)
    {
        if (!study.OrderDriven)
        {
            yield break;
        }

        IReadOnlyList<Bracket> brackets = Brackets.Of(study);
        foreach (SpecCode code in study.Codes.Where(code => code != study.ReferenceCodeOf(code)))
        {
            int driven = brackets.Count(bracket => bracket.Candidates.Any(run => run.Code == code));
            if (driven < BracketsForAClaim)
            {
                string wanted =
                    driven < BracketsWanted
                        ? ReviewingWords.LeastBrackets(BracketsWanted)
                        : ReviewingWords.BracketsForAFirmResult(BracketsForAClaim);
                yield return ReviewingWords.AnotherDayInReverse(code, driven, driven == 1 ? "" : "s", wanted);
            }
        }
    }

    private static IEnumerable<string> FewCars(Study study, Plan plan)
    {
        bool isSplit =
            plan.Cars is not null
            && study.OrderDriven
            && study
                .Runs.Where(run => run.Car is not null)
                .GroupBy(run => run.Code)
                .Any(runs => runs.Select(run => run.Car).Distinct(StringComparer.OrdinalIgnoreCase).Count() == 1);
        return isSplit ? [ReviewingWords.CarAndTyreAreNotSeparated] : [];
    }
}
