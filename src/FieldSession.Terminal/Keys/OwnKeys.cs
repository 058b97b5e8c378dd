using System.Collections.Immutable;
using FieldSession.Journal;
using Terminal.Gui.Input;

namespace FieldSession.Terminal;

/// <summary>
/// The user's own keys: lines of <c>SCREEN KEY = KEYS</c>, such as <c>drive t = g +</c>, where KEY is the first key of a row as
/// delivered. A line that is wrong, and keys that clash, are refused as a whole, because half of one's keys is worse than none.
/// </summary>
internal static class OwnKeys
{
    /// <summary>The word for the rows that work on every screen.</summary>
    public const string EverywhereWord = "everywhere";

    private const string Form = "write 'drive t = g +': what t does on drive is done by g and by +";

    /// <summary>The keys after a user's lines.</summary>
    /// <param name="delivered">The keys as delivered.</param>
    /// <param name="lines">The lines; empty ones and those that begin with # are passed over.</param>
    /// <returns>The keys, or what is wrong, beginning with the line's number.</returns>
    public static (KeyTable Keys, string? Refusal) Of(KeyTable delivered, IReadOnlyList<string> lines)
    {
        KeyTable keys = delivered;
        for (int i = 0; i < lines.Count; i++)
        {
            if (EntryText.IsPassedOver(lines[i]))
            {
                continue;
            }

            (KeyTable changed, string? wrong) = Changed(keys, delivered, Typed.Words(lines[i].Replace('\t', ' ')));
            wrong ??= Clash(changed);
            if (wrong is not null)
            {
                return (delivered, $"line {i + 1}: {wrong}");
            }

            keys = changed;
        }

        return (keys, null);
    }

    /// <summary>Whether other keys can do what a row does. Enter, Esc, Tab and what begins words or notes stay as they are.</summary>
    public static bool CanChange(KeyRow row) =>
        row.Deed
            is not (
                KeyDeed.Commit
                or KeyDeed.Clear
                or KeyDeed.Recall
                or KeyDeed.Complete
                or KeyDeed.Note
                or KeyDeed.Words
                or KeyDeed.Field
                or KeyDeed.Answer
                or KeyDeed.Back
            );

    private static (KeyTable Keys, string? Wrong) Changed(KeyTable keys, KeyTable delivered, string[] words)
    {
        if (words.Length < 4 || words[2] != "=")
        {
            return (keys, Form);
        }

        string where = Typed.Is(words[0], EverywhereWord) ? ScreenName.Everywhere : words[0].ToLowerInvariant();
        string first = KeyNames.Known(words[1]);
        int place = delivered
            .Rows.ToList()
            .FindIndex(row => row.Where == where && string.Equals(row.Keys[0], first, StringComparison.OrdinalIgnoreCase));
        if (place < 0)
        {
            return (keys, $"no row of '{words[0]}' begins with '{words[1]}'; 'fieldsession help keys' and ? list them");
        }

        KeyRow row = keys.Rows[place];
        ImmutableArray<string> wanted = [.. words.Skip(3).Select(KeyNames.Known)];
        string? wrong = CanChange(row)
            ? wanted.Select(key => WrongWith(key, row)).FirstOrDefault(said => said is not null)
            : $"'{words[1]}' can't be changed: it begins or ends what is in the box";
        return wrong is null ? (new KeyTable(keys.Rows.SetItem(place, row with { Keys = wanted })), null) : (keys, wrong);
    }

    private static string? WrongWith(string key, KeyRow row)
    {
        if (key.Length > 1)
        {
            return Key.TryParse(key, out _) ? null : $"'{key}' is not a key; write a character, or a name such as F5, Ctrl+R, Alt+5, PgUp";
        }

        if (char.IsAsciiDigit(key[0]) || key[0] is '-' or '.' or ',')
        {
            return $"readings are typed with '{key}'; take a letter, a sign, or a named key";
        }

        bool isTyped = row.Where == ScreenName.Everywhere && row.Deed != KeyDeed.Help;
        return isTyped || row.Where == ScreenName.Plan
            ? $"'{key}' is typed into the box there; take a named key, such as F5, Ctrl+R or Alt+5"
            : null;
    }

    private static string? Clash(KeyTable keys) =>
        keys.Rows.Select(row => row.Where).Distinct().Select(screen => ClashOn(screen, keys)).FirstOrDefault(said => said is not null);

    private static string? ClashOn(string screen, KeyTable keys)
    {
        IGrouping<string, (string Key, KeyRow Row)>? same = keys.On(screen)
            .Distinct()
            .SelectMany(row => row.Keys.Select(key => (Key: key, Row: row)))
            .GroupBy(pair => pair.Key, StringComparer.OrdinalIgnoreCase)
            .FirstOrDefault(group => group.Count() > 1);
        return same is null
            ? null
            : $"'{KeyNames.Shown(same.Key)}' would mean two things on {(screen.Length == 0 ? "every screen" : screen)}: "
                + $"'{same.First().Row.Words}' and '{same.Last().Row.Words}'; give one of them another key";
    }
}
