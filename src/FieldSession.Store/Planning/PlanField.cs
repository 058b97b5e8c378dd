using System.Collections.Immutable;
using System.Globalization;
using Tomlyn.Syntax;

namespace FieldSession.Store.Planning;

/// <summary>A word of the plan as a person edits it: one line of text.</summary>
/// <param name="Name">Its name in the plan.</param>
/// <param name="Label">Its name for people.</param>
/// <param name="Sort">How the text becomes a value.</param>
public sealed record PlanField(string Name, string Label, PlanFieldSort Sort)
{
    /// <summary>The words that can be edited, in the order in which a day is planned.</summary>
    public static ImmutableArray<PlanField> All { get; } =
    [
        new("study", "study", PlanFieldSort.Text),
        new("question", "question", PlanFieldSort.Text),
        new("main_measure", "main measure", PlanFieldSort.Text),
        new("margin_db", "margin, steady, dB", PlanFieldSort.Number),
        new("impact_margin_db", "margin, impacts, dB", PlanFieldSort.Number),
        new("specs", "specs, how many", PlanFieldSort.Whole),
        new("order", "order of runs", PlanFieldSort.Text),
        new("units", "units", PlanFieldSort.Text),
        new("crew", "crew, driver first", PlanFieldSort.List),
        new("custodian", "custodian", PlanFieldSort.Text),
        new("cars", "cars, if two", PlanFieldSort.List),
        new("car_order", "car of each run", PlanFieldSort.List),
        new("driver_order", "driver of each run", PlanFieldSort.List),
        new("phrases", "note phrases", PlanFieldSort.List),
        new("attributes", "rated attributes", PlanFieldSort.List),
        new("protocol", "protocol sheet", PlanFieldSort.Text),
        new("calibrator_db", "calibrator, dB", PlanFieldSort.Number),
        new("tyre_size", "tyre size", PlanFieldSort.Text),
        new("pressure_front_kpa", "cold front, kPa", PlanFieldSort.Number),
        new("pressure_rear_kpa", "cold rear, kPa", PlanFieldSort.Number),
        new("required_checks", "required checks", PlanFieldSort.List),
        new("rerun_counts", "driven twice, counts", PlanFieldSort.Text),
    ];

    /// <summary>The value as TOML; null: the text is empty, the word is left away. A text that is no number stays a text, so that it is refused by name.</summary>
    public string? ValueOf(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string trimmed = text.Trim();
        bool isNumber = double.TryParse(trimmed.Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out double number);
        return Sort switch
        {
            _ when trimmed.Length == 0 => null,
            PlanFieldSort.List => PlanText.Listed(trimmed.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)),
            PlanFieldSort.Number when isNumber => PlanText.Number(number),
            PlanFieldSort.Whole when isNumber && double.IsInteger(number) => number.ToString("0", CultureInfo.InvariantCulture),
            _ => PlanText.Quoted(trimmed),
        };
    }

    /// <summary>The text of a value as it stands in the file.</summary>
    internal static string TextOf(PlanWord word) => word.Value switch
    {
        StringValueSyntax text => text.Value ?? "",
        IntegerValueSyntax whole => whole.Value.ToString(CultureInfo.InvariantCulture),
        FloatValueSyntax number => number.Value.ToString("R", CultureInfo.InvariantCulture),
        ArraySyntax => string.Join("; ", (word.Items ?? []).Select(TextOf)),
        _ => "",
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

    /// <summary>Several texts, cut by semicolons.</summary>
    List,
}
