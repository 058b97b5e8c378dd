using System.Globalization;
using FieldSession.Measures;
using Tomlyn.Syntax;

namespace FieldSession.Store.Planning;

/// <summary>A word of the plan as a person edits it: one line of text.</summary>
/// <param name="Name">Its name in the plan.</param>
/// <param name="Label">Its name for people.</param>
/// <param name="Sort">How the text becomes a value.</param>
/// <param name="Hint">What it takes, and what holds where it is empty.</param>
public sealed record PlanField(string Name, string Label, PlanFieldSort Sort, string Hint)
{
    /// <summary>The units in which it is edited; null: both. A word that the plan holds is edited in any.</summary>
    public UnitSystem? Units { get; init; }

    /// <summary>
    /// The value as TOML; null: the text is empty, the word is left away. A text that is not a number stays a text, so that it is refused
    /// by name.
    /// </summary>
    public string? ValueOf(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string trimmed = text.Trim();
        bool isNumber = double.TryParse(
            trimmed.Replace(',', '.'),
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture,
            out double number
        );
        return Sort switch
        {
            _ when trimmed.Length == 0 => null,
            PlanFieldSort.List => PlanText.Listed(
                trimmed.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            ),
            PlanFieldSort.Names => PlanText.Listed(
                trimmed.Split([';', ','], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            ),
            PlanFieldSort.Number when isNumber => PlanText.Number(number),
            PlanFieldSort.Whole when isNumber && double.IsInteger(number) => number.ToString("0", CultureInfo.InvariantCulture),
            PlanFieldSort.YesNo when YesOrNo(trimmed) is { } answer => answer,
            _ => PlanText.Quoted(trimmed),
        };
    }

    /// <summary>The text of a value as it is in the file.</summary>
    internal static string TextOf(PlanWord word) =>
        word.Value switch
        {
            StringValueSyntax text => text.Value ?? "",
            IntegerValueSyntax whole => whole.Value.ToString(CultureInfo.InvariantCulture),
            FloatValueSyntax number => number.Value.ToString("R", CultureInfo.InvariantCulture),
            BooleanValueSyntax answer => answer.Value ? "yes" : "no",
            ArraySyntax => string.Join("; ", (word.Items ?? []).Select(TextOf)),
            InlineTableSyntax => word.Members is [var first, ..] ? TextOf(first) : "",
            _ => "",
        };

    private static string? YesOrNo(string text) =>
        text.ToLowerInvariant() switch
        {
            "yes" or "y" or "true" => "true",
            "no" or "n" or "false" => "false",
            _ => null,
        };
}

/// <summary>How the text of a field becomes a value.</summary>
public enum PlanFieldSort
{
    /// <summary>A text.</summary>
    Text,

    /// <summary>A number with a fraction.</summary>
    Number,

    /// <summary>A whole number.</summary>
    Whole,

    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>Several texts, cut by semicolons; a comma may be part of one.</summary>
    List,

    /// <summary>Several names, cut by semicolons or commas: no name holds a comma.</summary>
    Names,
}
