using System.Collections.Immutable;
using System.Globalization;

namespace FieldSession.Checking;

/// <summary>The values of a check, asked for by name.</summary>
/// <param name="Typed">What was typed, by name.</param>
public sealed record CheckValues(ImmutableSortedDictionary<string, string> Typed)
{
    /// <summary>A number; null: not typed, or no number.</summary>
    public double? Number(string name) => Typed.TryGetValue(name, out string? text) ? Journal.Typed.Number(text) : null;

    /// <summary>A word; null: not typed.</summary>
    public string? Word(string name) => Typed.GetValueOrDefault(name);

    /// <summary>Whether a value was typed.</summary>
    public bool Has(string name) => Typed.ContainsKey(name);

    /// <summary>The values with a number of their own put in.</summary>
    public static string Text(double number) => number.ToString("R", CultureInfo.InvariantCulture);
}
