using System.Collections.Immutable;
using System.Text;
using FieldSession.Journal;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal;

/// <summary>The key table in words: as footer, as help, as docs/keys.md.</summary>
internal static class KeysPage
{
    private const int KeyColumns = 14;
    private const string FlagRule = "A flag goes to the reading in the box, or else to the last one.";

    private const string OwnKeysWords = "\n## Your own keys\n\n"
        + "The file `fieldsession/keys` below XDG_CONFIG_HOME (or `.config` in the home folder) changes keys, a row a line: the screen, the first key\n"
        + "of the row as it stands below, `=`, and every key that shall do it; `everywhere` for the rows of every screen, `#` for a remark.\n\n"
        + "```\ndrive t = g +\nstop y = b\neverywhere F12 = Ctrl+R Alt+L\n```\n\n"
        + "A line that is wrong, or a key that would mean two things on a screen, is refused with file, line and what to do, and the program does\n"
        + "not start with half of the keys. Enter, Esc, Tab, `;` and `:` stay as they are, and figures are for readings.\n";

    /// <summary>The footer: the keys that work here now, as many as fit, each with its word.</summary>
    public static PageRow Footer(KeyTable table, string screen, Study study, int columns)
    {
        PageRow row = PageRow.Of(" ", Ink.Bar);
        foreach (IGrouping<string, KeyRow> label in table.On(screen)
            .Where(key => key.Label.Length > 0 && key.Label != screen && key.ObjectionIn(study) is null)
            .GroupBy(key => key.Label))
        {
            PageRow longer = row.And($"{(row.Width > 1 ? "  " : "")}{Together(label)} {label.Key}", Ink.Bar);
            if (longer.Width > columns)
            {
                break;
            }

            row = longer;
        }

        return row.Fit(columns);
    }

    /// <summary>The help of a screen: every key, what it does, and why a barred one is barred now.</summary>
    public static ImmutableArray<PageRow> Help(KeyTable table, string screen, Study study, int columns) =>
    [
        PageRow.Of($" Keys on {screen}", Ink.Strong).WithRight(PageRow.Of("PgDn pages, any other key closes ", Ink.Quiet), columns),
        .. table.On(screen).SelectMany(key => HelpOf(key, study, columns)),
        .. Phrases(study),
        PageRow.Of($" {FlagRule}", Ink.Quiet),
    ];

    /// <summary>docs/keys.md.</summary>
    public static string Document(KeyTable table)
    {
        StringBuilder text = new();
        text.Append("# Keys\n\nPrinted from the key table of the program; on any screen `?` shows the keys that work there now,\n"
            + "and why one does not. The numeric keypad alone is enough to drive: figures, `-` and `.` for readings, `+` traffic,\n"
            + "`*` missed, `/` undo, Enter. " + FlagRule + "\n" + OwnKeysWords);
        foreach (IGrouping<string, KeyRow> place in table.Rows.GroupBy(row => row.Where))
        {
            text.Append($"\n## {(place.Key.Length == 0 ? "On every screen" : $"On {place.Key}")}\n\n| key | does | writes |\n|---|---|---|\n");
            foreach (KeyRow row in place)
            {
                string keys = string.Join(" or ", row.Keys.Select(key => $"`{KeyNames.Shown(key)}`"));
                string line = row.Deed == KeyDeed.Write ? $"`{row.Line}`" : "";
                text.Append($"| {keys} | {row.Words} | {line} |\n");
            }
        }

        return text.ToString();
    }

    private static string Together(IEnumerable<KeyRow> rows) => string.Join(' ', rows.Select(row => KeyNames.Shown(row.Keys[0])));

    private static IEnumerable<PageRow> HelpOf(KeyRow key, Study study, int columns)
    {
        string keys = Columns.Left(" " + string.Join(' ', key.Keys.Select(KeyNames.Shown)), KeyColumns);
        string indent = new(' ', KeyColumns);
        Objection? objection = key.ObjectionIn(study);
        string words = objection is null ? key.Words : $"{key.Words} (not now: {objection.Why})";
        foreach (string line in Wrapped.Lines(words, columns - KeyColumns - 1))
        {
            yield return PageRow.Of(keys, Ink.Strong).And(line, objection is null ? Ink.Plain : Ink.Quiet);
            keys = indent;
        }
    }

    private static IEnumerable<PageRow> Phrases(Study study) => (study.Plan?.Phrases ?? [])
        .Select((phrase, place) => PageRow.Of(Columns.Left($" ;{place + 1}", KeyColumns), Ink.Strong).And(phrase));
}
