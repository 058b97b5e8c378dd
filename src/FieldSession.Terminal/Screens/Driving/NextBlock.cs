using System.Collections.Immutable;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>What comes next: the segment in the largest letters that fit, or at a stop what to do.</summary>
internal static class NextBlock
{
    /// <summary>The rows.</summary>
    /// <param name="sight">The study, the keys for what to do at a stop, and how letters are written.</param>
    /// <param name="columns">Columns to fill.</param>
    /// <param name="letterRows">Rows that large letters may take.</param>
    public static IEnumerable<PageRow> Rows(DriveSight sight, int columns, int letterRows) => sight.Study.NextSegment is { } segment
        ? OnTheRoad(segment, sight, columns, letterRows)
        : AtAStop(sight, columns, letterRows);

    private static IEnumerable<PageRow> OnTheRoad(Segment segment, DriveSight sight, int columns, int letterRows)
    {
        Plan plan = sight.Study.Plan!;
        string mark = segment.StartMark is { } start ? $"   from {start}" : "";
        PageRow head = PageRow
            .Of($"NEXT {segment.Number} of {plan.Route.Count}   ", Ink.Quiet)
            .And($"{segment.Kind.Word.ToUpperInvariant()}{(segment.Kind.IsImpact ? ", one peak" : "")}   {segment.Speed.In(plan.Units)}   {segment.Seconds:0} s", Ink.Strong);
        return [head.And(Columns.Cut(mark, Math.Max(0, columns - head.Width))), .. Letters(segment.Name, columns, letterRows, sight.Letters)];
    }

    private static IEnumerable<PageRow> AtAStop(DriveSight sight, int columns, int letterRows) =>
    [
        PageRow.Of("STOP   next:", Ink.Quiet),
        .. Letters(WhatNext.Headline(sight.Study), columns, Math.Min(3, letterRows), sight.Letters),
        .. WhatNext.Rows(sight.Study, sight.Keys, columns),
    ];

    // Always the same number of rows, so that nothing below jumps when a name is too long for large letters.
    private static IEnumerable<PageRow> Letters(string text, int columns, int rows, LetterForm form)
    {
        ImmutableArray<string> letters = LargeText.Of(text, columns, rows, form);
        int above = (rows - letters.Length) / 2;
        return Enumerable.Repeat(PageRow.Blank, above)
            .Concat(letters.Select(row => PageRow.Of(row, Ink.Strong)))
            .Concat(Enumerable.Repeat(PageRow.Blank, rows - letters.Length - above));
    }
}
