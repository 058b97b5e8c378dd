using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Tests.House;

/// <summary>
/// Levels of the ring are read where they are kept, compared or written once uncovered, and nowhere else: a screen could only show them too
/// early.
/// </summary>
[Collection(HouseRules.Name)]
public sealed class TheRingHasOneDoorTests(TheHouse house)
{
    private static readonly ImmutableHashSet<string> Levels =
    [
        nameof(HeardSegment.RingDb),
        nameof(HeardSegment.RingMedianDb),
        nameof(HeardSegment.BandsDb),
        nameof(HeardSegment.BandDb),
        nameof(HeardSegment.ProminenceDb),
        nameof(HeardSegment.SpectrumDb),
        nameof(HeardSegment.RingLastsS),
    ];

    // each asks RingCover before it tells anything, or keeps and tells nothing
    private static readonly ImmutableArray<string> MayRead =
    [
        "src/FieldSession/State/Heard/RunRecording.cs",
        "src/FieldSession/Listening/HeardRun.cs",
        "src/FieldSession/Comparing/Ear/RingDay.cs",
        "src/FieldSession.Store/Exports/Tables/Road/BandsTable.cs",
    ];

    [Fact]
    public void Nobody_else_reads_a_level_of_the_ring() =>
        TheHouse.NoneOf(
            from use in house.Uses
            where use.IsOurs && !MayRead.Contains(use.Source.Path)
            where use.Symbol.ContainingType?.Name == nameof(HeardSegment) && Levels.Contains(use.Symbol.Name)
            select use.ToString(),
            "levels of the ring are told by RingFinding, which asks RingCover, and by nobody else"
        );

    [Fact]
    public void The_rule_sees_who_reads_them() =>
        Assert.Contains(
            house.Uses,
            use => use.Source.Path == "src/FieldSession/Comparing/Ear/RingDay.cs" && use.Symbol.Name == nameof(HeardSegment.RingDb)
        );

    [Fact]
    public void No_screen_of_the_day_takes_what_the_recordings_say() =>
        TheHouse.NoneOf(
            from use in house.Uses
            where
                use.IsOurs && use.Source.LiesIn("src/FieldSession.Terminal/Screens/") && use.Source.Room is not ("Revealing" or "Reporting")
            where use.Symbol.Name is "RingFinding" or "RingPair"
            select use.ToString(),
            "before the last prediction there is no ring to show"
        );
}
