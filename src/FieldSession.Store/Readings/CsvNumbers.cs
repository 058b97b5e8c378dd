using System.Globalization;

namespace FieldSession.Store.Readings;

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
    public static string WhatIsWrong(string text) => text.Contains(',', StringComparison.Ordinal)
        ? ReadingsFileWords.NumberWithComma
        : "no number";

    /// <summary>A whole number from 1; null where the text is none.</summary>
    public static int? Count(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count > 0 ? count : null;
}
