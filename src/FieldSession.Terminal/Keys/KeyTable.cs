using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Terminal;

/// <summary>Every key of the program.</summary>
/// <param name="Rows">The rows, in the order in which help prints them; the footer takes them from the first on as far as they fit.</param>
internal sealed record KeyTable(ImmutableArray<KeyRow> Rows)
{
    /// <summary>The keys as delivered.</summary>
    public static KeyTable Standard { get; } =
        new([
            new(ScreenName.Drive, ["Enter"], "store", "stores what is in the box; empty at a stop: starts the next run", KeyDeed.Commit),
            .. SpoiltCauses.All.Select(Flag),
            new(ScreenName.Drive, ["m", "*"], "missed", "nothing was read on this segment; the run moves on", KeyDeed.Write, "m"),
            new(ScreenName.Drive, ["u", "/"], "undo", "takes the last act back; both stay in the journal", KeyDeed.Write, "u"),
            new(ScreenName.Drive, [";"], "note", "note on the last segment: ;3 is the plan's third phrase at once, or words", KeyDeed.Note),
            .. SpeakerKeys,
            new(
                ScreenName.Drive,
                [":"],
                "words",
                "words, such as :run 417, :seg 5, :end, :weather air=6; Tab completes them",
                KeyDeed.Words
            ),
            new(ScreenName.Drive, ["Tab"], "", "completes the words begun in the box, or offers what is due", KeyDeed.Complete),
            new(ScreenName.Drive, ["Backspace"], "", "on an empty box: brings the line back that was not stored", KeyDeed.Recall),
            new(
                ScreenName.Drive,
                ["Esc"],
                "",
                "empties the box, or closes the help; on an empty one drops the line that was not stored",
                KeyDeed.Clear
            ),
            new(
                ScreenName.Rate,
                ["Enter"],
                "store",
                "takes what is in the box: who rates, then a score; empty: skips the attribute",
                KeyDeed.Answer
            ),
            new(ScreenName.Rate, ["Esc"], "next person", "empties the box; empty: gives the keyboard to the next", KeyDeed.Back),
            .. StopKeys.Rows,
            .. EveningKeys.Rows,
            .. PlanKeys.Rows,
            .. StartKeys.Rows,
            new(
                ScreenName.Legs,
                ["Enter"],
                "next",
                "takes the value in the box, or the one suggested, and asks the next; the last one stores the leg",
                KeyDeed.Field
            ),
            new(ScreenName.Legs, ["CursorUp"], "back", "asks the field before once more", KeyDeed.Field),
            new(
                ScreenName.Legs,
                ["Esc"],
                "",
                "empties the form, or closes the help; whole lines go in too: leg 3 w rain, u, ; note",
                KeyDeed.Clear
            ),
            new(ScreenName.Everywhere, ["?", "F1", "Alt+H"], "help", "every key that works here, and why one does not", KeyDeed.Help),
            new(ScreenName.Everywhere, ["Ctrl+Q", "Alt+Q"], "leave", "leaves the program; all that was stored is safe", KeyDeed.Leave),
            new(ScreenName.Everywhere, ["F12", "Alt+L"], "look", "the next look: day, night, no colour", KeyDeed.Look),
            new(
                ScreenName.Everywhere,
                ["F11", "Alt+C"],
                "",
                "covers the running comparison on this laptop, or uncovers it; remembered like the look",
                KeyDeed.Cover
            ),
            .. ScreenName.InOrder.Select((screen, place) => ToScreen(screen, place + 2)),
        ]);

    /// <summary>The rows that work on a screen, its own first.</summary>
    public IEnumerable<KeyRow> On(string screen) =>
        Rows.Where(row => row.Where == screen).Concat(Rows.Where(row => row.Where == ScreenName.Everywhere));

    /// <summary>The row of a screen that writes a line on a typed character; null: none.</summary>
    public KeyRow? ActOf(string screen, char typed) =>
        Rows.FirstOrDefault(row => row.Deed == KeyDeed.Write && row.Where == screen && row.Has(typed));

    /// <summary>The row of a screen that says whose words the last note was, on a typed character; null: none.</summary>
    public KeyRow? SpeakerOf(string screen, char typed) =>
        Rows.FirstOrDefault(row => row.Deed == KeyDeed.Speaker && row.Where == screen && row.Has(typed));

    /// <summary>Whether a typed character asks for the help.</summary>
    public bool AsksHelp(char typed) => Rows.Any(row => row.Deed == KeyDeed.Help && row.Has(typed));

    /// <summary>The key that goes to a screen, such as "F3".</summary>
    public string KeyTo(string screen) => Rows.First(row => row.Deed == KeyDeed.Screen && row.Line == screen).Keys[0];

    /// <summary>The first key that does a deed.</summary>
    public string KeyThat(KeyDeed deed) => Rows.First(row => row.Deed == deed).Keys[0];

    private static ImmutableArray<KeyRow> SpeakerKeys =>
        [
            new(ScreenName.Drive, ["d"], "whose words", "right after a note: the driver said so", KeyDeed.Speaker, "d"),
            new(ScreenName.Drive, ["c"], "whose words", "right after a note: the co-driver said so", KeyDeed.Speaker, "c"),
        ];

    private static KeyRow Flag((SpoiltCause Cause, char Letter, string Word, string Meaning) cause) =>
        new(
            ScreenName.Drive,
            cause.Cause == SpoiltCause.Traffic ? [$"{cause.Letter}", "+"] : [$"{cause.Letter}"],
            "spoilt",
            $"spoilt by {cause.Meaning}; again takes the flag back",
            KeyDeed.Write,
            $"{cause.Letter}"
        );

    private static KeyRow ToScreen((string Name, string Words) screen, int number) =>
        new(
            ScreenName.Everywhere,
            [$"F{number}", $"Alt+{number % 10}"],
            screen.Name,
            $"goes to {screen.Name}: {screen.Words}",
            KeyDeed.Screen,
            screen.Name
        );
}

/// <summary>The keys of the stop screen.</summary>
internal static class StopKeys
{
    /// <summary>Every row.</summary>
    public static IEnumerable<KeyRow> Rows =>
        [
            new(
                ScreenName.Stop,
                ["Enter"],
                "run",
                "empty: starts the next run, protocol confirmed; figures correct or fill the marked row, a cause letter flags "
                    + "it, ; notes on it, words as anywhere",
                KeyDeed.Answer
            ),
            new(ScreenName.Stop, ["CursorUp"], "mark", "marks the row before", KeyDeed.Previous),
            new(ScreenName.Stop, ["CursorDown"], "mark", "marks the row after", KeyDeed.Next),
            new(ScreenName.Stop, ["y"], "keep", "the marked doubtful reading is right as it was typed", KeyDeed.Confirm),
            new(
                ScreenName.Stop,
                ["<"],
                "shift",
                "from the marked one back to the next gap, all one segment back; once more: two segments; shown first, Enter takes it",
                KeyDeed.ShiftBack
            ),
            new(
                ScreenName.Stop,
                [">"],
                "shift",
                "from the marked one on to the next gap, all one segment further on; once more: two segments; shown first, Enter takes it",
                KeyDeed.ShiftOn
            ),
            new(
                ScreenName.Stop,
                ["Tab"],
                "",
                "completes the words begun in the box; on an empty one goes to what is due: marks the next doubt, or begins the line",
                KeyDeed.Due
            ),
            new(ScreenName.Stop, ["Backspace"], "", "on an empty box: brings the line back that was not stored", KeyDeed.Recall),
            new(ScreenName.Stop, ["u", "/"], "undo", "takes the last act back; both stay in the journal", KeyDeed.Undo, "u"),
            new(ScreenName.Stop, ["Esc"], "drive", "empties the box; on an empty one goes back to drive", KeyDeed.Back),
            new(ScreenName.Stop, ["PageUp"], "", "a page up", KeyDeed.PageUp),
            new(ScreenName.Stop, ["PageDown"], "", "a page down", KeyDeed.PageDown),
            new(ScreenName.Stop, ["Home"], "", "to the first row", KeyDeed.Top),
            new(ScreenName.Stop, ["End"], "", "to the last row", KeyDeed.Bottom),
        ];
}
