using System.Collections.Immutable;
using System.Text;
using FieldSession.Journal;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal;

/// <summary>The key table in words: as footer, as help, as docs/keys.md.</summary>
internal static class KeysPage
{
    private const int KeyColumns = 14;

    /// <summary>
    /// The footer: at a stop first the keys to what is due, then those that work here now, as many as fit, each with its word.
    /// </summary>
    public static PageRow Footer(KeyTable table, string screen, Study study, int columns)
    {
        string[] due = screen is ScreenName.Drive or ScreenName.Stop ? [.. DueKeys(table, study)] : [];
        KeyRow[] rows = [.. table.On(screen).Where(key => key.Label.Length > 0 && !key.GoesTo(screen) && key.ObjectionIn(study) is null)];
        string[] labels = [.. due.Concat(LabelsOf(rows)).Distinct()];
        bool hidesHelp = LabelsOf([.. rows.Where(row => row.Deed == KeyDeed.Help)]).Except(Fitting(labels, columns)).Any();
        string[] shown = due.Length > 0 || hidesHelp ? [.. due.Concat(LabelsOf([.. WithHelpInFront(rows)])).Distinct()] : labels;
        return PageRow.Of($" {string.Join("  ", Fitting(shown, columns))}", Ink.Bar).Fit(columns);
    }

    private static IEnumerable<string> LabelsOf(KeyRow[] rows) =>
        rows.GroupBy(key => key.Label).Select(label => $"{Together(label)} {label.Key}");

    // as many, from the first, as have room in a row
    private static IEnumerable<string> Fitting(string[] labels, int columns)
    {
        int width = 1;
        return labels.TakeWhile((label, place) => (width += Columns.Of(label) + (place == 0 ? 0 : 2)) <= columns);
    }

    // The help stays too, next to the first key.
    private static IEnumerable<KeyRow> WithHelpInFront(KeyRow[] rows) =>
        rows.Take(1).Concat(rows.Where(row => row.Deed == KeyDeed.Help)).Concat(rows).Distinct();

    // What is due comes first, so that it stays when space is short; what is typed is begun by one key, one after the other.
    private static IEnumerable<string> DueKeys(KeyTable table, Study study)
    {
        Due[] due = [.. DueAtStop.In(study)];
        return
        [
            .. Labelled("Tab", due.Where(one => !one.IsOnRateScreen)),
            .. Labelled(table.KeyTo(ScreenName.Rate), due.Where(one => one.IsOnRateScreen)),
        ];
    }

    private static string[] Labelled(string key, IEnumerable<Due> due) =>
        due.Any() ? [$"{key} {string.Join(", ", due.Select(one => one.Label))}"] : [];

    /// <summary>The help of a screen: every key, what it does, and why a barred one is barred now.</summary>
    public static ImmutableArray<PageRow> Help(KeyTable table, string screen, Study study, int columns) =>
        [
            PageRow.Of($" Keys on {screen}", Ink.Strong).WithRight(PageRow.Of(KeysWords.HowHelpCloses, Ink.Quiet), columns),
            .. table.On(screen).SelectMany(key => HelpOf(key, study, columns)),
            .. Phrases(study),
            PageRow.Of($" {KeysWords.FlagRule}", Ink.Quiet),
            .. screen is ScreenName.Drive or ScreenName.Stop ? WordsPage.Help(study, columns) : [],
        ];

    /// <summary>docs/keys.md.</summary>
    public static string Document(KeyTable table)
    {
        StringBuilder text = new();
        text.Append(KeysWords.KeysPageBegins + KeysWords.FlagRule + "\n" + KeysWords.OwnKeysChapter);
        foreach (IGrouping<string, KeyRow> place in table.Rows.GroupBy(row => row.Where))
        {
            text.Append(KeysWords.KeysTableHead(place.Key.Length == 0 ? KeysWords.OnEveryScreen : $"On {place.Key}"));
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

    private static IEnumerable<PageRow> Phrases(Study study) =>
        (study.Plan?.Phrases ?? []).Select(
            (phrase, place) => PageRow.Of(Columns.Left($" ;{place + 1}", KeyColumns), Ink.Strong).And(phrase)
        );
}

/// <summary>The names of keys: as they are on the key, and as Terminal.Gui calls them.</summary>
internal static class KeyNames
{
    private static readonly ImmutableArray<(string Known, string Shown)> Differing =
    [
        ("CursorUp", "Up"),
        ("CursorDown", "Down"),
        ("CursorLeft", "Left"),
        ("CursorRight", "Right"),
        ("PageUp", "PgUp"),
        ("PageDown", "PgDn"),
    ];

    /// <summary>The name as it is on the key.</summary>
    public static string Shown(string known) => Differing.FirstOrDefault(name => name.Known == known).Shown ?? known;

    /// <summary>The name as Terminal.Gui knows it.</summary>
    public static string Known(string shown) =>
        Differing.FirstOrDefault(name => string.Equals(name.Shown, shown, StringComparison.OrdinalIgnoreCase)).Known ?? shown;
}

/// <summary>The table of words in words: as a part of the help, as docs/words.md.</summary>
internal static class WordsPage
{
    private const string Indent = "     ";

    /// <summary>The words that are of use now: an example of each, and what it does.</summary>
    public static IEnumerable<PageRow> Help(Study study, int columns)
    {
        yield return PageRow.Blank;
        yield return PageRow.Of($" {KeysWords.WordsNow(study)}", Ink.Strong);
        foreach (Verb verb in VerbTable.UsableIn(study))
        {
            yield return PageRow.Of($" {verb.ExampleIn(study)}", Ink.Strong);
            foreach (string line in Wrapped.Lines(verb.Does, columns - Indent.Length - 1))
            {
                yield return PageRow.Of(Indent).And(line);
            }
        }
    }

    /// <summary>docs/words.md.</summary>
    public static string Document()
    {
        StringBuilder text = new(KeysWords.WordsPageBegins);
        foreach ((VerbTimes time, string title) in KeysWords.TimesOfWords)
        {
            text.Append(KeysWords.WordsTableHead(title));
            foreach (Verb verb in VerbTable.All.Where(verb => verb.Times.HasFlag(time)))
            {
                text.Append($"| `{verb.Word}` | `{verb.Example}` | {verb.Does} |\n");
            }
        }

        return text.ToString();
    }
}
