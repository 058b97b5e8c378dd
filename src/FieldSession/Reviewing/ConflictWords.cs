using FieldSession.State;

namespace FieldSession.Reviewing;

/// <summary>What laptops did without knowing of each other, and how it was settled, in plain words. No level is in them.</summary>
public static class ConflictWords
{
    /// <summary>A sentence a conflict, in order; empty: there is none.</summary>
    public static IEnumerable<string> Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Conflicts.Select((conflict, index) => Line(conflict, index + 1));
    }

    /// <summary>The first conflict that nobody has settled, with what to type, and how many more there are; null: there is none.</summary>
    public static string? FirstOpen(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        int more = study.Unsettled.Count() - 1;
        int first = study.Conflicts.FindIndex(conflict => conflict.Settlement is null);
        return first < 0 ? null
            : $"laptops in conflict: {study.Conflicts[first].Words}; 'settle {first + 1} first because WHY', or second, or both{(more == 0 ? "" : $"; {more} more, 'review' lists them")}";
    }

    private static string Line(Conflict conflict, int number) => conflict.Settlement is { } settlement
        ? $"Conflict {number}: {conflict.Words}; settled: {Side(settlement.Counts)}, because {settlement.Reason}."
        : $"Conflict {number}: {conflict.Words}; NOT SETTLED: both count until 'settle {number} first because WHY' (or second, or both).";

    private static string Side(ConflictSide side) => side switch
    {
        ConflictSide.First => "the first counts",
        ConflictSide.Second => "the second counts",
        _ => "both count",
    };
}
