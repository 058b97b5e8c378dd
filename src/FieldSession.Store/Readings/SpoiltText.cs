using System.Globalization;
using FieldSession.State;

namespace FieldSession.Store.Readings;

/// <summary>
/// What the column 'spoilt' says: empty, 0, no or false: the reading counts. 1, y, yes or true: spoilt, cause not said. A cause letter (t w
/// s r n e), its word, or any words of the crew's: spoilt, and why.
/// </summary>
/// <param name="IsSpoilt">Whether the reading is left out.</param>
/// <param name="Cause">Why, in one word where it is a known cause; null: not said.</param>
internal readonly record struct SpoiltText(bool IsSpoilt, string? Cause)
{
    /// <summary>What may be in the column.</summary>
    public const string Allowed = ReadingsFileWords.SpoiltForm;

    /// <summary>Reads the text; null: it can't be told what it means.</summary>
    public static SpoiltText? Read(string text) =>
        text.Length == 0
            ? new SpoiltText(false, null)
            : text.ToLowerInvariant() switch
            {
                "0" or "no" or "false" => new SpoiltText(false, null),
                "1" or "y" or "yes" or "true" => new SpoiltText(true, null),
                "na" or "n/a" or "nan" or "null" or "none" => null,
                string words => Known(words) is { } known ? new SpoiltText(true, known.Word()) : FreeWords(text),
            };

    private static SpoiltCause? Known(string words)
    {
        foreach ((SpoiltCause cause, char letter, string word, string meaning) in SpoiltCauses.All)
        {
            if (words == word || words == meaning || (words.Length == 1 && words[0] == letter))
            {
                return cause;
            }
        }

        return null;
    }

    /// <summary>A number or a mark alone says nothing; a single letter that is not a cause is a slip.</summary>
    private static SpoiltText? FreeWords(string text) => text.Length > 1 && text.Any(char.IsLetter) ? new SpoiltText(true, text) : null;
}

/// <summary>Numbers as files write them: a point, no thousands, never NaN or infinity.</summary>
internal static class CsvNumbers
{
    /// <summary>A finite number; null where the text is none.</summary>
    public static double? Number(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number)
            ? number
            : null;

    /// <summary>A number as files write it; empty: unknown.</summary>
    public static string Text(double? number) => number?.ToString("R", CultureInfo.InvariantCulture) ?? "";

    /// <summary>What is wrong with a text that is not a number, in words that help.</summary>
    public static string WhatIsWrong(string text) =>
        text.Contains(',', StringComparison.Ordinal) ? ReadingsFileWords.NumberWithComma : "no number";

    /// <summary>A whole number from 1; null where the text is none.</summary>
    public static int? Count(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count > 0 ? count : null;
}
