using FieldSession.Comparing;
using FieldSession.Store.Sealing;
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

    /// <summary>Opens the custodian's key file at a path with a passphrase; it says nothing of the specs where that fails.</summary>
    public Func<string, string, KeyOpening>? OpenKey { get; init; }

    /// <summary>Writes the report and gives its path.</summary>
    public Func<string>? WriteReport { get; init; }

    /// <summary>How a day is compared.</summary>
    public Func<MeasuredDay, ComparisonTerms, Comparison> Compare { get; init; } = Comparison.Of;
}
