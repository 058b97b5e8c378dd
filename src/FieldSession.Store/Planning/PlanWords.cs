using System.Globalization;
using FieldSession.Sealing;
using Tomlyn.Syntax;

namespace FieldSession.Store.Planning;

/// <summary>The words of a plan, asked for one by one; what is not of the right sort or range is refused at its place.</summary>
/// <param name="Words">All words outside lists of tables.</param>
/// <param name="Repeated">The lists of tables, table by table.</param>
internal sealed record PlanWords(IReadOnlyList<PlanWord> Words, IReadOnlyList<PlanTable> Repeated)
{
    /// <summary>The word of a name; null where the plan does not hold it.</summary>
    public PlanWord? Find(string name) => Words.FirstOrDefault(word => word.Name == name);

    /// <summary>A text; null where it is absent or refused.</summary>
    public string? Text(string name, int longest, Troubles troubles) => Find(name) is { } word ? TextOf(word, longest, troubles) : null;

    /// <summary>A number in a range, both ends allowed; null where it is absent or refused.</summary>
    public double? Number(string name, double lowest, double highest, Troubles troubles) =>
        Find(name) is { } word
            ? NumberOf(word, number => number >= lowest && number <= highest, $"{Plain(lowest)} to {Plain(highest)}", troubles)
            : null;

    /// <summary>A number above 0, for what decides nothing at 0; null where it is absent or refused.</summary>
    public double? Positive(string name, double highest, Troubles troubles) =>
        Find(name) is { } word
            ? NumberOf(word, number => number > 0 && number <= highest, $"above 0, at most {Plain(highest)}", troubles)
            : null;

    /// <summary>Yes or no; null where it is absent or refused.</summary>
    public bool? YesNo(string name, Troubles troubles)
    {
        PlanWord? word = Find(name);
        if (word is { Value: not BooleanValueSyntax })
        {
            word.Refuse(troubles, $"'{name}' is {word.Sort}", $"'{name}' is true or false, without quotes");
        }

        return (word?.Value as BooleanValueSyntax)?.Value;
    }

    /// <summary>A list of different texts; null where it is absent or refused.</summary>
    public IReadOnlyList<string>? Texts(string name, int most, int longest, Troubles troubles)
    {
        if (Find(name) is not { } word)
        {
            return null;
        }

        if (word.Items is not { } items || items.Count > most)
        {
            string count = word.Items is { } many ? $"a list of {many.Count}" : word.Sort;
            word.Refuse(troubles, $"'{name}' is {count}", $"'{name}' is a list of at most {most} texts, such as [\"one\", \"two\"]");
            return null;
        }

        List<string> texts = [];
        foreach (PlanWord item in items)
        {
            if (TextOf(item, longest, troubles) is not { } text)
            {
                continue;
            }

            if (texts.Contains(text, StringComparer.OrdinalIgnoreCase))
            {
                item.Refuse(troubles, $"'{name}' holds {Troubles.Quoted(text)} twice", "name each once");
            }

            texts.Add(text);
        }

        return texts;
    }

    /// <summary>The text of a word; null where it is refused.</summary>
    public static string? TextOf(PlanWord word, int longest, Troubles troubles)
    {
        string allowed = $"'{word.Name}' is one line of 1 to {longest} visible characters in quotes";
        if (word.Value is not StringValueSyntax written)
        {
            word.Refuse(troubles, $"'{word.Name}' is {word.Sort}", allowed);
            return null;
        }

        string text = (written.Value ?? "").Trim();
        bool isGood = text.Length > 0 && text.Length <= longest && SealableText.IsVisible(text);
        if (!isGood)
        {
            word.Refuse(troubles, $"'{word.Name}' is empty, too long, or holds an invisible character", allowed);
        }

        return isGood ? text : null;
    }

    private static double? NumberOf(PlanWord word, Predicate<double> isAllowed, string range, Troubles troubles)
    {
        double? number = word.Value switch
        {
            IntegerValueSyntax whole => whole.Value,
            FloatValueSyntax real => real.Value,
            _ => null,
        };
        if (number is { } written && isAllowed(written))
        {
            return written;
        }

        string what = number is null ? word.Sort : Plain(number.Value);
        word.Refuse(troubles, $"'{word.Name}' is {what}", $"'{word.Name}' is a number {range}, with a point, without quotes");
        return null;
    }

    private static string Plain(double number) => number.ToString(CultureInfo.InvariantCulture);
}
