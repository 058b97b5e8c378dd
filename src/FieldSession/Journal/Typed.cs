using System.Globalization;

namespace FieldSession.Journal;

/// <summary>How typed words and numbers are read: letter case does not count, numbers have a point or a comma.</summary>
public static class Typed
{
    /// <summary>The longest line that is taken, in characters.</summary>
    public const int LongestLine = 4000;

    /// <summary>The words of a line.</summary>
    public static string[] Words(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
    }

    /// <summary>Whether a typed word is a word of the grammar.</summary>
    public static bool Is(string typed, string word) => string.Equals(typed, word, StringComparison.OrdinalIgnoreCase);

    /// <summary>A number with point or comma, sign allowed; null where the text is none, or not finite.</summary>
    public static double? Number(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return double.TryParse(
            text.Replace(',', '.'),
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture,
            out double number) && double.IsFinite(number)
            ? number
            : null;
    }

    /// <summary>A whole number from 1; null where the text is none.</summary>
    public static int? Count(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count > 0 ? count : null;
}
