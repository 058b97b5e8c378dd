using System.Collections.Immutable;

namespace FieldSession.Tests.House;

/// <summary>Which room may lean on which: the plan of the house, drawn in docs/architecture.md.</summary>
internal static class Leanings
{
    /// <summary>The domain's top level: it sees every room, and no room sees it.</summary>
    public const string Hall = "FieldSession";

    // Sound to numbers, of which both lines may make use.
    private static ImmutableArray<string> Hearing { get; } = ["Signals", "Acoustics", "Aligning"];

    private static ImmutableArray<string> WritingFacts { get; } =
    [
        .. Hearing,
        "Measures",
        "State",
        "Journal",
        "Planning",
        "Sealing",
        "Checking",
        "Driving",
        "Flagging",
        "Statistics",
        "Rating",
        "Listening",
        "EnergyDriving",
        "Merging",
    ];

    private static ImmutableArray<string> DrawingConclusions { get; } =
    [.. Hearing, "Measures", "State", "Statistics", "Comparing", "Reviewing", "Predicting", "Revealing", "Reporting", "Archiving"];

    // The facts of these two stages are written like all others, ask whether the day was checked, and open what was sealed.
    private static ImmutableArray<string> ConclusionsWithFacts { get; } = ["Predicting", "Revealing"];

    private static ImmutableArray<string> WhatFactsNeed { get; } = ["Journal", "Sealing", "Checking"];

    /// <summary>Every room of the domain.</summary>
    public static IEnumerable<string> Rooms => WritingFacts.Concat(DrawingConclusions).Distinct();

    /// <summary>Whether a room of the domain may lean on another.</summary>
    public static bool May(string room, string other)
    {
        if (room == other || room == Hall)
        {
            return true;
        }

        if (room == "Statistics")
        {
            return false;
        }

        return ComesBefore(WritingFacts, other, room)
            || ComesBefore(DrawingConclusions, other, room)
            || (ConclusionsWithFacts.Contains(room) && WhatFactsNeed.Contains(other));
    }

    private static bool ComesBefore(ImmutableArray<string> order, string earlier, string later) =>
        order.Contains(earlier) && order.IndexOf(later) > order.IndexOf(earlier);
}
