using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Reviewing;
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
    public static string Hint(ImmutableArray<RecentStudy> recent, int marked) =>
        recent.IsEmpty ? StartingWords.WhatToType : $"Enter: opens {Path.GetFileName(recent[marked].Path)}";

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
            PageRow
                .Of(Columns.Left($"{(isMarked ? ">" : " ")}{place + 1}", NumberColumns), Ink.Strong)
                .And(shown, isMarked ? Ink.Strong : Ink.Plain),
            PageRow.Of(new string(' ', NumberColumns)).And(Columns.Cut(study.Words, room), Ink.Quiet),
        ];
    }
}

/// <summary>What the start screen may use.</summary>
internal sealed record StartDesk
{
    /// <summary>The studies opened last, newest first.</summary>
    public required ImmutableArray<RecentStudy> Recent { get; init; }

    /// <summary>Opens what was chosen; words say why it can't be, null: it is open.</summary>
    public required Func<StartChoice, string?> Open { get; init; }

    /// <summary>The look to begin with.</summary>
    public Palette Palette { get; init; } = Palette.Day;

    /// <summary>The keys; those that go to a screen of a study do nothing here.</summary>
    public KeyTable Keys { get; init; } = ForStart(KeyTable.Standard);

    /// <summary>The keys without those that go to a screen of a study.</summary>
    public static KeyTable ForStart(KeyTable keys) => new([.. keys.Rows.Where(row => row.Deed != KeyDeed.Screen)]);
}

/// <summary>A study that was opened lately.</summary>
/// <param name="Path">Its file.</param>
/// <param name="Words">How far it has come, or why that can't be told.</param>
internal sealed record RecentStudy(string Path, string Words);

/// <summary>What was chosen on the start screen.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Path">The study file or the plan folder; empty for the demo.</param>
internal sealed record StartChoice(StartKind Kind, string Path);

/// <summary>What can be chosen on the start screen.</summary>
internal enum StartKind
{
    /// <summary>A study that exists.</summary>
    Study,

    /// <summary>A folder with a plan, of which a study is made.</summary>
    Plan,

    /// <summary>A folder whose plan is written or changed on the plan screen; it may not be there yet.</summary>
    Planning,

    /// <summary>The demo.</summary>
    Demo,
}
