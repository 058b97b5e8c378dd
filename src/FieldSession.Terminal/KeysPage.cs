using System.Collections.Immutable;
using System.Text;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal;

/// <summary>The key table in words: as footer, as help, as docs/keys.md.</summary>
internal static class KeysPage
{
    private const int KeyColumns = 14;

    /// <summary>The footer: the keys that work here now, as many as fit, each with its word.</summary>
    public static PageRow Footer(KeyTable table, string screen, Study study, int columns)
    {
        PageRow row = PageRow.Of(" ", Ink.Bar);
        foreach (IGrouping<string, KeyRow> label in table.On(screen)
            .Where(key => key.Label.Length > 0 && key.Label != screen && key.ObjectionIn(study) is null)
            .GroupBy(key => key.Label))
        {
            PageRow longer = row.And($"{Together(label)} {label.Key}  ", Ink.Bar);
            if (longer.Width > columns + 1)
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
        PageRow.Of($" Keys on {screen}", Ink.Strong).WithRight(PageRow.Of("any key closes this ", Ink.Quiet), columns),
        .. table.On(screen).SelectMany(key => HelpOf(key, study, columns)),
        .. Phrases(study),
    ];

    /// <summary>docs/keys.md.</summary>
    public static string Document(KeyTable table)
    {
        StringBuilder text = new();
        text.Append("# Keys\n\nPrinted from the key table of the program; on any screen `?` shows the keys that work there now,\n"
            + "and why one does not. The numeric keypad alone is enough to drive: figures, `-` and `.` for readings, `+` traffic,\n"
            + "`*` missed, `/` undo, Enter.\n");
        foreach (IGrouping<string, KeyRow> place in table.Rows.GroupBy(row => row.Where))
        {
            text.Append($"\n## {(place.Key.Length == 0 ? "On every screen" : $"On {place.Key}")}\n\n| key | does | writes |\n|---|---|---|\n");
            foreach (KeyRow row in place)
            {
                string keys = string.Join(" or ", row.Keys.Select(key => $"`{key}`"));
                string line = row.Deed == KeyDeed.Write ? $"`{row.Line}`" : "";
                text.Append($"| {keys} | {row.Words} | {line} |\n");
            }
        }

        return text.ToString();
    }

    private static string Together(IEnumerable<KeyRow> rows) => string.Join(' ', rows.Select(row => row.Keys[0]));

    private static IEnumerable<PageRow> HelpOf(KeyRow key, Study study, int columns)
    {
        string keys = Columns.Left(" " + string.Join(' ', key.Keys), KeyColumns);
        string indent = new(' ', KeyColumns);
        string[] lines = [.. Wrapped.Lines(key.Words, columns - KeyColumns - 1)];
        yield return PageRow.Of(keys, Ink.Strong).And(lines[0]);
        foreach (string line in lines[1..])
        {
            yield return PageRow.Of(indent + line);
        }

        if (key.ObjectionIn(study) is { } objection)
        {
            foreach (string line in Wrapped.Lines($"not now: {objection.Why}", columns - KeyColumns - 1))
            {
                yield return PageRow.Of(indent).And(line, Ink.Quiet);
            }
        }
    }

    private static IEnumerable<PageRow> Phrases(Study study) => (study.Plan?.Phrases ?? [])
        .Select((phrase, place) => PageRow.Of(Columns.Left($" ;{place + 1}", KeyColumns), Ink.Strong).And(phrase));
}
