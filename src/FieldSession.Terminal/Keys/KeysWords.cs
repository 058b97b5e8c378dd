using FieldSession.State;

namespace FieldSession.Terminal;

/// <summary>What is said of keys: on the help page, in docs/keys.md, and where one is barred.</summary>
internal static class KeysWords
{
    public const string HowHelpCloses = "PgDn pages, any other key closes ";
    public const string FlagRule = "A flag goes to the reading in the box, or else to the last one.";

    public const string KeysPageBegins =
        "# Keys\n\nFor the co-driver. Here you can look up every key, and change keys to your own. On any screen `?` "
        + "shows the keys that work\n"
        + "there now, and why one does not. The numeric keypad alone is enough to drive: figures, `-` and `.` for readings, `+` traffic,\n"
        + "`*` missed, `/` undo, Enter. ";
    public const string OwnKeysChapter =
        "\n## Your own keys\n\n"
        + "The file `fieldsession/keys` below XDG_CONFIG_HOME (or `.config` in the home folder) changes keys, a row a "
        + "line. It has the screen, the first key\n"
        + "of the row as it is below, `=`, and every key that shall do it. `everywhere` means the rows of every screen, "
        + "`#` begins a remark.\n\n"
        + "```\ndrive t = g +\nstop y = b\neverywhere F12 = Ctrl+R Alt+L\n```\n\n"
        + "A line that is wrong, or a key that would mean two things on a screen, is refused with file, line and what to "
        + "do. The program does\n"
        + "not start with half of the keys. Enter, Esc, Tab, `;` and `:` stay as they are, and figures are for readings.\n";
    public const string OnEveryScreen = "On every screen";

    public static string KeysTableHead(string place) => $"\n## {place}\n\n| key | does | writes |\n|---|---|---|\n";

    public const string WordsPageBegins =
        "# Words\n\nFor whoever types at the laptop. Here you can look up every word that begins an entry line. While a run is on a\n"
        + "word is typed behind `:`; at a stop it needs no sign. Tab completes it from two letters, and once more goes to "
        + "the next word with the same\n"
        + "letters. The same lines go into `enter`. A word that the program does not know changes nothing, and the answer "
        + "names the nearest.\n";

    public static IEnumerable<(VerbTimes Time, string Title)> TimesOfWords =>
        [(VerbTimes.Road, "While a run is on"), (VerbTimes.Stop, "At a stop"), (VerbTimes.Evening, "In the evening")];

    public static string WordsTableHead(string title) => $"\n## {title}\n\n| word | such as | does |\n|---|---|---|\n";

    public static string WordsNow(Study study) =>
        study.RunOn is null ? "Words that can be typed now; Tab completes them" : "Words behind ':' now; Tab completes them";

    public const string EndRunFirst = "type 'end' on drive first";

    public static string RunStillOn(Run run) => $"run {run.Number} is on";

    public const string LastActWasNoNote = "the last act is not a note";
    public const string TypeNoteFirst = "type the note first, ';3' or '; words', then the key";
    public const string ReadingIsNotFresh = "other acts came after the reading";
}
