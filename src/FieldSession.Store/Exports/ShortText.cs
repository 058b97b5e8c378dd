using System.Globalization;

namespace FieldSession.Store.Exports;

/// <summary>Names short enough to be in a plot; the table beside it has all of them.</summary>
internal static class ShortText
{
    /// <summary>The name as it can be seen, cut between letters and not inside one.</summary>
    /// <param name="name">The name.</param>
    /// <param name="letters">The most letters that are left, 2 or more.</param>
    public static string Of(string name, int letters)
    {
        string visible = VisibleText.Of(name);
        int[] starts = StringInfo.ParseCombiningCharacters(visible);
        return starts.Length <= letters ? visible : visible[..starts[letters - 1]].TrimEnd() + "\u2026";
    }
}
