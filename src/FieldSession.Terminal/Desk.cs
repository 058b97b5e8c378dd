using FieldSession.Comparing;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal;

/// <summary>What the screens may use. It comes from outside; screens know no files and no clock of their own.</summary>
internal sealed record Desk
{
    /// <summary>The study's one door.</summary>
    public required Logbook Logbook { get; init; }

    /// <summary>Where the time comes from.</summary>
    public required TimeProvider Clock { get; init; }

    /// <summary>The look to begin with.</summary>
    public Palette Palette { get; init; } = Palette.Day;

    /// <summary>The keys.</summary>
    public KeyTable Keys { get; init; } = KeyTable.Standard;

    /// <summary>How a day is compared.</summary>
    public Func<MeasuredDay, ComparisonTerms, Comparison> Compare { get; init; } = Comparison.Of;
}
