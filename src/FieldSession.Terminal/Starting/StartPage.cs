using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Starting;

/// <summary>The start screen in words, and what a typed line means on it.</summary>
internal static class StartPage
{
    private const string DemoWord = "demo";
    private const string PlanWord = "plan ";
    private const int NumberColumns = 4;

    /// <summary>The rows.</summary>
    /// <param name="recent">The studies opened last.</param>
    /// <param name="marked">Place of the marked one, from 0.</param>
    /// <param name="columns">Columns to fill.</param>
    public static ImmutableArray<PageRow> Of(ImmutableArray<RecentStudy> recent, int marked, int columns) =>
    [
        PageRow.Of("fieldsession", Ink.Strong).And(StartingWords.ProgramInOneSentence),
        PageRow.Blank,
        PageRow.Of(recent.IsEmpty ? StartingWords.NoStudyOpenedYet : "opened last", Ink.Quiet),
        .. recent.SelectMany((study, place) => Study(study, place, place == marked, columns)),
        PageRow.Blank,
        PageRow.Of(StartingWords.OrType, Ink.Quiet),
        PageRow.Of("  demo            ", Ink.Strong).And(StartingWords.WhatDemoIs),
        PageRow.Of("  plan FOLDER     ", Ink.Strong).And(StartingWords.WhatPlanningIs),
        PageRow.Of("  FOLDER          ", Ink.Strong).And(Columns.Cut(StartingWords.WhatPlanFolderGives, columns - 18)),
        PageRow.Of("  STUDY FILE      ", Ink.Strong).And(StartingWords.WhatStudyFileIs),
        PageRow.Blank,
        .. Wrapped.Lines(StartingWords.WhereToRead, columns).Select(line => PageRow.Of(line, Ink.Quiet)),
        PageRow.Blank,
        .. Wrapped.Lines(StartingWords.RulesOfUse, columns).Select(line => PageRow.Of(line)),
    ];

    /// <summary>What to do next, in words.</summary>
    public static string Hint(ImmutableArray<RecentStudy> recent, int marked) => recent.IsEmpty
        ? StartingWords.WhatToType
        : $"Enter: opens {Path.GetFileName(recent[marked].Path)}";

    /// <summary>What a typed line chooses; null: nothing that is there.</summary>
    /// <param name="typed">The line; empty: the marked study.</param>
    /// <param name="recent">The studies opened last.</param>
    /// <param name="marked">Place of the marked one.</param>
    public static StartChoice? Choice(string typed, ImmutableArray<RecentStudy> recent, int marked)
    {
        if (typed.Length == 0)
        {
            return recent.IsEmpty ? null : new StartChoice(StartKind.Study, recent[marked].Path);
        }

        if (Typed.Is(typed, DemoWord))
        {
            return new StartChoice(StartKind.Demo, "");
        }

        if (typed.StartsWith(PlanWord, StringComparison.OrdinalIgnoreCase))
        {
            return new StartChoice(StartKind.Planning, typed[PlanWord.Length..].Trim());
        }

        if (Typed.Count(typed) is { } number && number <= recent.Length)
        {
            return new StartChoice(StartKind.Study, recent[number - 1].Path);
        }

        return new StartChoice(Directory.Exists(typed) ? StartKind.Plan : StartKind.Study, typed);
    }

    private static IEnumerable<PageRow> Study(RecentStudy study, int place, bool isMarked, int columns)
    {
        string path = study.Path;
        int room = columns - NumberColumns;
        string shown = Columns.Of(path) <= room ? path : $"...{path[^Math.Max(1, room - 3)..]}";
        return
        [
            PageRow.Of(Columns.Left($"{(isMarked ? ">" : " ")}{place + 1}", NumberColumns), Ink.Strong).And(shown, isMarked ? Ink.Strong : Ink.Plain),
            PageRow.Of(new string(' ', NumberColumns)).And(Columns.Cut(study.Words, room), Ink.Quiet),
        ];
    }
}
