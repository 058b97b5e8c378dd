using System.Collections.Immutable;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>
/// The drive screen in words: the next segment largest, then the entry box, what was just stored, the running
/// comparison, the last acts. Side by side where there is room, below each other where there is not.
/// </summary>
internal static class DrivePage
{
    /// <summary>The least terminal on which everything is shown; header and footer take a row each.</summary>
    public const int LeastColumns = 60;

    /// <summary>The least rows between header and footer on which everything is shown.</summary>
    public const int LeastRows = 18;

    private const int WideColumns = 110;
    private const int WideRows = 30;
    private const int VeryWideColumns = 170;
    private const int LeftColumns = 46;
    private const int RouteColumns = 44;
    private const int LeastActs = 4;
    private const int MostBoxColumns = 32;
    private const int CountsColumns = 31;
    private const string Prompt = " > ";

    /// <summary>The page in so many columns and rows.</summary>
    public static DriveWords Of(DriveSight sight, int columns, int rows)
    {
        if (columns < LeastColumns || rows < LeastRows)
        {
            return Tiny(sight, columns, rows);
        }

        return columns >= WideColumns && rows >= WideRows ? Wide(sight, columns, rows) : Narrow(sight, columns, rows);
    }

    private static DriveWords Wide(DriveSight sight, int columns, int rows)
    {
        ImmutableArray<PageRow> top = [.. NextBlock.Rows(sight, columns - 2, 5)];
        ImmutableArray<PageRow> all = [.. top, PageRow.Blank, .. Beside(sight, columns - 2, rows - top.Length - 3)];
        return new DriveWords(Indented(all, rows), Box(top.Length + 1, LeftColumns + CountsColumns));
    }

    private static DriveWords Narrow(DriveSight sight, int columns, int rows)
    {
        ImmutableArray<PageRow> top = [.. NextBlock.Rows(sight, columns - 2, 3)];
        ImmutableArray<PageRow> all =
        [
            .. top,
            Entry(sight.Study, columns - 2),
            Message(sight, columns - 2),
            .. Under(sight, columns - 2, rows - top.Length - 2),
        ];
        return new DriveWords(Indented(all, rows), Box(top.Length, columns));
    }

    private static ImmutableArray<PageRow> Under(DriveSight sight, int columns, int rows)
    {
        ImmutableArray<PageRow> stored = [.. Stored(sight, columns, rows >= 16)];
        bool aired = rows >= 16;
        int gaps = aired ? 3 : 1;
        int acts = Math.Clamp((rows - stored.Length - gaps) * 2 / 5, 2, 8);
        int table = rows - stored.Length - gaps - acts;
        return
        [
            .. aired ? [PageRow.Blank] : ImmutableArray<PageRow>.Empty,
            .. stored,
            .. aired ? [PageRow.Blank] : ImmutableArray<PageRow>.Empty,
            .. Filled(Table(sight, columns, table), table),
            PageRow.Blank,
            .. ActsBlock.Rows(sight, columns, acts, wrapped: false),
        ];
    }

    private static IEnumerable<PageRow> Beside(DriveSight sight, int columns, int rows)
    {
        const int Gap = 2;
        ImmutableArray<PageRow> stored = [.. Stored(sight, LeftColumns, large: true)];
        ImmutableArray<PageRow> left =
        [
            PageRow.Of(Prompt, Ink.Strong),
            .. MessageLines(sight, LeftColumns),
            PageRow.Blank,
            .. stored,
            PageRow.Blank,
            PageRow.Of(Counts(sight.Study)),
            PageRow.Blank,
        ];
        if (columns < VeryWideColumns)
        {
            PageRow[] route = [.. RouteBlock.Rows(sight.Study, LeftColumns, rows - left.Length - LeastActs - 1)];
            left = route.Length == 0 ? left : [.. left, .. route, PageRow.Blank];
        }

        left = [.. left, .. ActsBlock.Rows(sight, LeftColumns, rows - left.Length, wrapped: true)];
        return columns < VeryWideColumns
            ? Side(left, [.. Table(sight, columns - LeftColumns - Gap, rows)], LeftColumns + Gap, rows)
            : Side(
                Side(left, [.. RouteBlock.Rows(sight.Study, RouteColumns, rows)], LeftColumns + Gap, rows),
                [.. Table(sight, columns - LeftColumns - RouteColumns - (2 * Gap), rows)],
                LeftColumns + RouteColumns + (2 * Gap),
                rows
            );
    }

    private static IEnumerable<PageRow> Side(IEnumerable<PageRow> left, IEnumerable<PageRow> right, int leftColumns, int rows) =>
        Filled(left, rows).Zip(Filled(right, rows), (one, other) => one.Fit(leftColumns).And(other));

    private static DriveWords Tiny(DriveSight sight, int columns, int rows)
    {
        string place = sight.Study.NextSegment is { } next ? $"{next.Number} {next.Name}" : WhatNext.Headline(sight.Study);
        ImmutableArray<PageRow> all =
        [
            PageRow.Of(place, Ink.Strong),
            PageRow.Of(Prompt),
            Message(sight, columns),
            .. Stored(sight, columns, large: false).Take(1),
            PageRow.Of(DrivingScreenWords.TerminalTooSmall(LeastColumns, LeastRows + 2), Ink.Quiet),
        ];
        return new DriveWords(Indented(all, rows, indent: ""), Box(1, columns, indent: 0));
    }

    private static IEnumerable<PageRow> Stored(DriveSight sight, int columns, bool large) =>
        sight.Held?.Rows(columns, large, sight.Letters) ?? StoredBlock.Rows(sight.Study, columns, large, sight.Letters);

    private static (int Row, int Column, int Columns) Box(int row, int columns, int indent = 1) =>
        (row, Prompt.Length + indent, Math.Max(4, Math.Min(MostBoxColumns, columns - Prompt.Length - (indent * CountsColumns) - 1)));

    private static PageRow Entry(Study study, int columns)
    {
        return PageRow.Of(Prompt, Ink.Strong).WithRight(PageRow.Of(Counts(study)), columns);
    }

    private static string Counts(Study study)
    {
        int spoilt = study.LastRun?.Readings.Count(r => r.Spoilt is not null) ?? 0;
        int missed = study.LastRun?.Passages.OfType<Missed>().Count() ?? 0;
        return study.LastRun is { } run ? DrivingScreenWords.RunCounts(spoilt, missed, run) : "";
    }

    private static PageRow Message(DriveSight sight, int columns) =>
        sight.Message is { } message ? PageRow.Of(Columns.Cut($" {message} ", columns), Ink.Alarm) : LevelsRow(sight, columns);

    private static PageRow LevelsRow(DriveSight sight, int columns) =>
        sight.Levels is { } levels ? DriveLevels.Row(levels, sight.IsOffered, columns) : PageRow.Blank;

    private static IEnumerable<PageRow> MessageLines(DriveSight sight, int columns)
    {
        IEnumerable<PageRow> lines = sight.Message is { } message
            ? Wrapped.Lines(message, columns - 2).Select(line => PageRow.Of($" {line} ", Ink.Alarm))
            : [LevelsRow(sight, columns)];
        return Filled([.. lines], 2);
    }

    private static IEnumerable<PageRow> Table(DriveSight sight, int columns, int rows)
    {
        int current = sight.Study.LastRun is { Passages.Count: > 0 } run ? run.Passages[^1].Segment : sight.Study.NextSegment?.Number ?? 1;
        return sight.Study.Plan is { } plan ? ComparisonBlock.Rows(sight.Comparison, current, plan, columns, rows) : [];
    }

    private static IEnumerable<PageRow> Filled(IEnumerable<PageRow> rows, int count) =>
        rows.Concat(Enumerable.Repeat(PageRow.Blank, Math.Max(0, count))).Take(count);

    private static ImmutableArray<PageRow> Indented(ImmutableArray<PageRow> all, int rows, string indent = " ") =>
        [.. all.Take(rows).Select(row => PageRow.Of(indent).And(row))];
}
