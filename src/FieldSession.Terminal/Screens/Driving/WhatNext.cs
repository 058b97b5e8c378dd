using FieldSession.Checking;
using FieldSession.Comparing;
using FieldSession.Journal;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>What to do at a stop, in words.</summary>
internal static class WhatNext
{
    private const string StartKey = "Enter";
    private const string BeginKey = "Tab";

    /// <summary>The headline: the run that comes, or that the order is driven.</summary>
    public static string Headline(Study study) =>
        study switch
        {
            { Plan: null } => "no plan",
            { Opening: not null } => DrivingScreenWords.KeyIsOpen,
            { DataFrozen: true } => "data frozen",
            { CodeAsked: { } code } => $"run {study.Runs.Count + 1} on {code}",
            { OrderDriven: true, Runs.Count: > 0 } => Aborts.CountIn(study) is > 0 and var aborted
                ? DrivingScreenWords.OrderDrivenWithAborted(aborted)
                : "order driven",
            { IsOwnOrderDriven: true } => DrivingScreenWords.OwnOrderDriven,
            _ => "not sealed",
        };

    /// <summary>What to do, each thing on rows of its own.</summary>
    public static IEnumerable<PageRow> Rows(Study study, KeyTable keys, int columns) =>
        Conflicts(study)
            .Concat(DueNow(study, keys, Parking.Word))
            .Concat(Todo(study, keys))
            .Concat(ReadBack(study))
            .SelectMany(todo => Rows(todo, columns));

    /// <summary>What is due where a run is read back, each thing on rows of its own.</summary>
    public static IEnumerable<PageRow> DueRows(Study study, KeyTable keys, int columns) =>
        Conflicts(study).Concat(DueNow(study, keys, BeginKey)).SelectMany(todo => Rows(todo, columns));

    /// <summary>What to do beside that, each thing on rows of its own; the start of the next run is left out.</summary>
    public static IEnumerable<PageRow> RowsWhenReadBack(Study study, KeyTable keys, int columns) =>
        Todo(study, keys).Where(todo => todo.Key != StartKey).SelectMany(todo => Rows(todo, columns));

    /// <summary>What Enter on an empty box does at a stop; null: nothing.</summary>
    public static string? StartWords(Study study) =>
        Todo(study, KeyTable.Standard).Where(todo => todo.Key == StartKey).Select(todo => todo.Words).FirstOrDefault();

    private static IEnumerable<PageRow> Rows((string Key, string Words) todo, int columns)
    {
        const int KeyColumns = 7;
        string key = todo.Key;
        foreach (string line in Wrapped.Lines(todo.Words, columns - KeyColumns))
        {
            yield return PageRow.Of(Columns.Left(key, KeyColumns), Ink.Strong).And(line);
            key = "";
        }
    }

    private static IEnumerable<(string Key, string Words)> Todo(Study study, KeyTable keys)
    {
        if (study.Plan is null)
        {
            return [("", DrivingScreenWords.MakePlanFirst)];
        }

        if (study.DataFrozen)
        {
            return [("", DrivingScreenWords.ReadingsAreFrozen), Evening(study, keys)];
        }

        if (study.OrderDriven)
        {
            return [Evening(study, keys), .. Missing(study)];
        }

        Objection[] blocking = [.. RunChecks.AgainstNextRun(study)];
        return blocking.Length > 0
            ?
            [
                .. blocking.Select(objection => (":", $"{objection}")),
                .. Weak(study).Select(words => ("!", words)),
                .. study is { SessionOn: null, Runs.Count: > 0 } ? Missing(study) : [],
            ]
            : Start(study);
    }

    private static IEnumerable<(string Key, string Words)> Missing(Study study) =>
        StillMissing.In(study).Append(NextDay.Line(study)).OfType<string>().Select(words => ("!", words));

    // said before the first run; afterwards it is too late for another plan, and the report says it
    private static IEnumerable<string> Weak(Study study)
    {
        string[] doubts = study.Runs.Count > 0 ? [] : [.. PlanDoubts.Of(study.Plan!)];
        return doubts.Length == 0 ? [] : [DrivingScreenWords.WeakPlan(doubts)];
    }

    private static (string Key, string Words) Evening(Study study, KeyTable keys) =>
        RunChecks.AgainstPredicting(study) is { } open ? (":", DrivingScreenWords.PredictingStillBarred(open, keys)) : Due(study, keys);

    private static (string Key, string Words) Due(Study study, KeyTable keys)
    {
        string screen = NextStep.Screen(study);
        return (
            keys.KeyTo(screen),
            screen == ScreenName.Review ? DrivingScreenWords.BlindReviewIsDue : DrivingScreenWords.EveningGoesOn(screen)
        );
    }

    private static IEnumerable<(string Key, string Words)> Start(Study study)
    {
        foreach (string warning in RunChecks.WeatherWarnings(study).Concat(OfBrackets(study)).Concat(Weak(study)))
        {
            yield return ("!", warning);
        }

        if (
            study.SessionOn is { } session
            && study.LastRun?.Session != session.Number
            && RunChecks.NotMade(study).ToArray() is { Length: > 0 } unmade
        )
        {
            yield return (":", DrivingScreenWords.ChecksNotMade(unmade, study.Plan!.Units));
        }

        if (study.IsOwnOrderDriven)
        {
            yield return (":", DrivingScreenWords.MergeWithOtherLaptop);
            yield break;
        }

        yield return (StartKey, DrivingScreenWords.EnterStartsRun(study));
    }

    private static IEnumerable<string> OfBrackets(Study study) =>
        BracketCheck.Of(study).TakeLast(1).SelectMany(check => check.Warnings(study.Plan!.Limits));

    private static IEnumerable<(string Key, string Words)> ReadBack(Study study) =>
        study is { DataFrozen: false, LastRun: { } run } ? [(Parking.Word, DrivingScreenWords.ParkedReadsRunBack(run))] : [];

    private static IEnumerable<(string Key, string Words)> Conflicts(Study study) =>
        ConflictWords.FirstOpen(study) is { } open ? [("!", open)] : [];

    // the calibrator is told with what rules out the next step
    private static IEnumerable<(string Key, string Words)> DueNow(Study study, KeyTable keys, string doubtsKey) =>
        DueAtStop
            .In(study)
            .Where(due => due.Kind != DueKind.Calibration)
            .Select(due =>
                (
                    due switch
                    {
                        { Kind: DueKind.Doubts } => doubtsKey,
                        { IsOnRateScreen: true } => keys.KeyTo(ScreenName.Rate),
                        _ => BeginKey,
                    },
                    due.Words
                )
            );
}
