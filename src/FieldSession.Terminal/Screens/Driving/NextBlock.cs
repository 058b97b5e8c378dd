using System.Collections.Immutable;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>What comes next: the segment in the largest letters that fit, or at a stop what to do.</summary>
internal static class NextBlock
{
    /// <summary>The rows.</summary>
    /// <param name="study">The study.</param>
    /// <param name="keys">The keys, for what to do at a stop.</param>
    /// <param name="columns">Columns to fill.</param>
    /// <param name="letterRows">Rows that large letters may take.</param>
    public static IEnumerable<PageRow> Rows(Study study, KeyTable keys, int columns, int letterRows) => study.NextSegment is { } segment
        ? OnTheRoad(segment, study.Plan!, columns, letterRows)
        : AtAStop(study, keys, columns, letterRows);

    private static IEnumerable<PageRow> OnTheRoad(Segment segment, Plan plan, int columns, int letterRows)
    {
        string mark = segment.StartMark is { } start ? $"   from {start}" : "";
        PageRow head = PageRow
            .Of($"NEXT {segment.Number} of {plan.Route.Count}   ", Ink.Quiet)
            .And($"{segment.Kind.Word.ToUpperInvariant()}{(segment.Kind.IsImpact ? ", one peak" : "")}   {segment.Speed.In(plan.Units)}   {segment.Seconds:0} s", Ink.Strong)
            .And(Columns.Cut(mark, Math.Max(0, columns - 46)));
        return [head, .. Letters(segment.Name, columns, letterRows)];
    }

    private static IEnumerable<PageRow> AtAStop(Study study, KeyTable keys, int columns, int letterRows) =>
    [
        PageRow.Of("STOP   next:", Ink.Quiet),
        .. Letters(WhatNext.Headline(study), columns, Math.Min(3, letterRows)),
        .. WhatNext.Rows(study, keys, columns),
    ];

    // Always the same number of rows, so that nothing below jumps when a name is too long for large letters.
    private static IEnumerable<PageRow> Letters(string text, int columns, int rows)
    {
        ImmutableArray<string> letters = LargeText.Of(text, columns, rows);
        int above = (rows - letters.Length) / 2;
        return Enumerable.Repeat(PageRow.Blank, above)
            .Concat(letters.Select(row => PageRow.Of(row, Ink.Strong)))
            .Concat(Enumerable.Repeat(PageRow.Blank, rows - letters.Length - above));
    }
}
