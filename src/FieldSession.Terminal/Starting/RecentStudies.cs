using System.Collections.Immutable;
using FieldSession.Checking;
using FieldSession.Journal;
using FieldSession.State;
using FieldSession.Store.Journaling;
using FieldSession.Terminal.Commands;

namespace FieldSession.Terminal.Starting;

/// <summary>
/// The studies opened last, each with how far it has come; studies of one name are told apart, copies of one study are called so.
/// </summary>
internal static class RecentStudies
{
    /// <summary>The studies at some paths, without opening one for writing.</summary>
    public static ImmutableArray<RecentStudy> At(IEnumerable<string> paths)
    {
        Glance[] all = [.. paths.Select(GlanceAt)];
        return [.. all.Select((one, place) => new RecentStudy(one.Path, one.Words + Apart(one, all, place)))];
    }

    private static string Apart(Glance one, Glance[] all, int place)
    {
        if (one.Identity is not { } identity)
        {
            return "";
        }

        int original = Array.FindIndex(all, other => other.Identity == identity);
        return original < place ? StartingWords.CopyOf(original + 1)
            : all.Any(other => other.Identity is { } others && others != identity && other.Name == one.Name)
                ? StartingWords.ToldApart(one.Begun, identity)
            : "";
    }

    private static Glance GlanceAt(string path)
    {
        try
        {
            IReadOnlyList<Line> lines = StudyGlance.LinesOf(path);
            Study study = Logbook.Fold(lines);
            return new Glance(
                path,
                WordsOf(study),
                study.Plan?.StudyName,
                StudyState.IdentityOf(lines),
                lines.Count > 0 ? lines[0].At : default
            );
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return new Glance(path, StartingWords.CantBeRead, null, null, default);
        }
    }

    private static string WordsOf(Study study) =>
        DayAhead.Of(study) is { } ahead ? StageWords.Of(study.Plan!.StudyName, ahead) : StageWords.Empty;

    private sealed record Glance(string Path, string Words, string? Name, StudyIdentity? Identity, DateTimeOffset Begun);
}

/// <summary>
/// How far a study has come and what is due in it, told without opening it for writing. What is due is the rule of <see cref="NextStep"/>.
/// </summary>
/// <param name="Done">What is done, in words.</param>
/// <param name="Next">What is due, in words.</param>
/// <param name="Command">The command that does it.</param>
internal sealed record DayAhead(string Done, string Next, string Command)
{
    /// <summary>Of a study; null: it holds no plan.</summary>
    public static DayAhead? Of(Study study) =>
        study switch
        {
            { Plan: null } => null,
            { Runs.Count: 0, Fittings.Count: 0, Opening: null } => new(StageWords.Planned, StageWords.SealThenTakeCodes, CodesCommand.Name),
            _ => On(NextStep.Screen(study), study),
        };

    private static DayAhead On(string screen, Study study) =>
        screen switch
        {
            ScreenName.Report => new(StageWords.KeyIsOpen, StageWords.TheReport, screen),
            ScreenName.Reveal => new(StageWords.AllPredicted, StageWords.OpenTheKey, screen),
            ScreenName.Predict => new(
                Driven(study),
                StageWords.PredictionsMissing([.. study.StillToPredict.Select(member => member.Name)]),
                screen
            ),
            ScreenName.Review => new(Driven(study), StageWords.ReviewThenPredict, screen),
            _ => new(Driven(study), OnTheRoad(study), screen),
        };

    private static string OnTheRoad(Study study) =>
        study switch
        {
            { OrderDriven: true } when RunChecks.AgainstPredicting(study) is { } objection => objection.Why,
            { RunOn: { } run } => StageWords.FinishRun(run.Number),
            _ when RunChecks.AgainstNextRun(study).FirstOrDefault() is { } objection => StageWords.BeforeRun(
                RunsDriven(study) + 1,
                objection.Why
            ),
            _ => StageWords.DriveRun(RunsDriven(study) + 1),
        };

    private static string Driven(Study study) =>
        study switch
        {
            { OrderDriven: true, Runs.Count: > 0 } => StageWords.AllDriven(study.Plan!.Order.Count),
            { Runs.Count: > 0 } => StageWords.Driven(RunsDriven(study), study.Plan!.Order.Count),
            _ => StageWords.CodesAreIn,
        };

    private static int RunsDriven(Study study) => study.Runs.Count - Aborts.CountIn(study) - (study.RunOn is null ? 0 : 1);
}

/// <summary>What is said of how far a study has come.</summary>
internal static class StageWords
{
    public const string KeyIsOpen = "the key is open";
    public const string TheReport = "the report";
    public const string Planned = "planned";
    public const string SealThenTakeCodes = "the custodian seals the key, the crew takes the codes";
    public const string CodesAreIn = "the codes are in";
    public const string ReviewThenPredict = "the blind review, then the predictions";
    public const string AllPredicted = "all predictions are locked";
    public const string OpenTheKey = "open the key with the custodian";
    public const string Empty = "empty";

    public static string Of(string name, DayAhead ahead) => $"{name}: {ahead.Done}; next: {ahead.Next}";

    public static string Driven(int driven, int planned) => driven == 0 ? "no run is finished yet" : $"{driven} of {planned} runs driven";

    public static string AllDriven(int planned) => $"all {planned} runs driven";

    public static string FinishRun(int run) => $"finish run {run}";

    public static string DriveRun(int run) => $"run {run}";

    public static string BeforeRun(int run, string missing) => $"run {run}, but {missing}";

    public static string PredictionsMissing(IReadOnlyList<string> names) =>
        names.Count == 1 ? $"the prediction of {names[0]}" : $"the predictions of {string.Join(" and ", names)}";
}
