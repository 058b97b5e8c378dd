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
    /// <summary>The headline: the run that comes, or that the order is driven.</summary>
    public static string Headline(Study study) => study switch
    {
        { Plan: null } => "no plan",
        { Opening: not null } => "the key is open",
        { DataFrozen: true } => "data frozen",
        { CodeAsked: { } code } => $"run {study.Runs.Count + 1} on {code}",
        { OrderDriven: true, Runs.Count: > 0 } => "order driven",
        _ => "not sealed",
    };

    /// <summary>What to do, each thing on rows of its own.</summary>
    public static IEnumerable<PageRow> Rows(Study study, KeyTable keys, int columns) =>
        Doubts(study).Concat(Todo(study, keys)).SelectMany(todo => Rows(todo, columns));

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
            return [("", "make a plan with 'start' first")];
        }

        if (study.DataFrozen)
        {
            return [("", "readings can't be added or changed any more; notes can: '; your words'"), Evening(study, keys)];
        }

        if (study.OrderDriven)
        {
            return [Evening(study, keys), .. Missing(study)];
        }

        Objection[] standing = [.. RunChecks.AgainstNextRun(study)];
        return standing.Length > 0
            ? [.. standing.Select(objection => (":", $"{objection}")), .. study.Runs.Count == 0 ? Weak(study) : study.SessionOn is null ? Missing(study) : []]
            : Start(study);
    }

    private static IEnumerable<(string Key, string Words)> Missing(Study study) => StillMissing.In(study).Append(NextDay.Line(study)).OfType<string>().Select(words => ("!", words));

    private static IEnumerable<(string Key, string Words)> Weak(Study study)
    {
        string[] doubts = [.. PlanDoubts.Of(study.Plan!)];
        string more = doubts.Length > 1 ? $"; {doubts.Length - 1} more stand in the plan's warnings" : "";
        return doubts.Length == 0 ? [] : [("!", $"weak in the plan: {doubts[0]}{more}")];
    }

    private static (string Key, string Words) Evening(Study study, KeyTable keys) => RunChecks.AgainstPredicting(study) is { } open
        ? (":", $"the order is driven; {open.Instead}, then {keys.KeyTo(KeyTable.Review)} goes to the blind review")
        : Due(study, keys);

    private static (string Key, string Words) Due(Study study, KeyTable keys)
    {
        string screen = NextStep.Screen(study);
        return (keys.KeyTo(screen), screen == KeyTable.Review
            ? "the order is driven and the meter checked: go to the blind review, when parked"
            : $"goes on with the evening: {screen}");
    }

    private static IEnumerable<(string Key, string Words)> Start(Study study)
    {
        if (study.Weather.Count == 0)
        {
            yield return (":", "no weather is noted yet: weather air=6.1 road=5 wind=2.5 gust=4 surface=dry");
        }

        foreach (string warning in RunChecks.WeatherWarnings(study).Concat(OfBrackets(study)))
        {
            yield return ("!", warning);
        }

        foreach ((string Key, string Words) weak in study.Runs.Count == 0 ? Weak(study) : [])
        {
            yield return weak;
        }

        if (study.SessionOn is { } session && study.LastRun?.Session != session.Number && RunChecks.NotMade(study).ToArray() is { Length: > 0 } unmade)
        {
            yield return (":", $"not checked with values yet: {string.Join(", ", unmade)}; such as '{CheckKinds.Of(unmade[0])!.Form}'");
        }

        yield return ("Enter", $"starts run {study.Runs.Count + 1} on {study.CodeAsked} and confirms: {study.Plan!.Protocol}");
    }

    private static IEnumerable<string> OfBrackets(Study study) =>
        BracketCheck.Of(study).TakeLast(1).SelectMany(check => check.Warnings(study.Plan!.Limits));

    private static IEnumerable<(string Key, string Words)> Doubts(Study study) => (study.LastRun?.Readings ?? [])
        .Where(reading => reading.Doubt is not null && reading.Spoilt is null)
        .Select(reading => ("?", $"{reading.Segment} {study.Plan!.Route[reading.Segment - 1].Name}: {reading.Doubt}"));
}
