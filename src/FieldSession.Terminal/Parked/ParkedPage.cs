using System.Collections.Immutable;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Parked;

/// <summary>What a screen says when parked: rows that scroll, what comes next, and what the box asks for.</summary>
/// <param name="Rows">The rows.</param>
/// <param name="Hint">What to do next, in words; it stays in sight.</param>
/// <param name="Prompt">The box's name; empty: none.</param>
internal sealed record ParkedPage(ImmutableArray<PageRow> Rows, string Hint, string Prompt = "")
{
    /// <summary>Whether what is typed is hidden.</summary>
    public bool Secret { get; init; }

    /// <summary>The most rows that the hint may take.</summary>
    public int HintRows { get; init; } = 2;

    /// <summary>Rows that are above the others and do not scroll.</summary>
    public ImmutableArray<PageRow> Above { get; init; } = [];

    /// <summary>A row that must stay in sight; null: none.</summary>
    public int? Marked { get; init; }

    /// <summary>What is shown while the screen is shut: a run is on, or nobody has said that the car is parked.</summary>
    /// <param name="study">The study.</param>
    /// <param name="keys">The keys.</param>
    /// <param name="columns">Columns to fill.</param>
    public static ParkedPage Shut(Study study, KeyTable keys, int columns)
    {
        string[] words = study.RunOn is { } run
            ? [ParkedWords.ShutWhileRunOn(run), ParkedWords.OpensWhenRunIsOver]
            : [ParkedWords.ShutUntilParked, ParkedWords.HowToOpen];
        return new ParkedPage(
            [
                PageRow.Blank,
                .. words.SelectMany(
                    (line, place) => Wrapped.Lines(line, columns).Select(row => PageRow.Of(row, place == 0 ? Ink.Strong : Ink.Plain))
                ),
                PageRow.Blank,
                .. Wrapped.Lines(ParkedWords.DriverNeverTypes, columns).Select(row => PageRow.Of(row)),
            ],
            study.RunOn is null ? ParkedWords.HowToOpenBriefly : ParkedWords.KeyToDriving(keys)
        );
    }
}

/// <summary>What screens say that are used when parked.</summary>
internal static class ParkedWords
{
    public const string EnterBounced = "a second Enter within 0.3 s was left out";
    public const string OpensWhenRunIsOver = "This screen opens when the run is over and the car is parked.";
    public const string ShutUntilParked = "Shut until the car is parked.";
    public const string DriverNeverTypes = "The driver never reads or types; the screen does not face the driver.";

    public static string ShutWhileRunOn(Run run) => $"Shut: run {run.Number} is on.";

    public const string HowToOpen = $"Type '{Parking.Word}' and press Enter: review only when stopped and parked.";

    public const string HowToOpenBriefly = $"type '{Parking.Word}' and press Enter";

    public static string KeyToDriving(KeyTable keys) => $"{keys.KeyTo(ScreenName.Drive)}: back to driving";
}
