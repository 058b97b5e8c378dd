using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Checking;

/// <summary>A value of a check.</summary>
/// <param name="Name">Its name, such as "fl".</param>
/// <param name="Lowest">Lowest number that can be; null: it is a word.</param>
/// <param name="Highest">Highest number that can be.</param>
/// <param name="Needed">Whether the check says nothing without it.</param>
public sealed record CheckValue(string Name, double? Lowest, double Highest, bool Needed = false)
{
    /// <summary>A number.</summary>
    public static CheckValue Of(string name, double lowest, double highest, bool needed = false) => new(name, lowest, highest, needed);

    /// <summary>A word.</summary>
    public static CheckValue Word(string name, bool needed = false) => new(name, null, 0, needed);
}

/// <summary>A kind of check with typed values: what is typed, what it answers, and what it does to the study.</summary>
/// <param name="Name">Its name in entry lines, overrides and the report.</param>
/// <param name="Form">How it is typed, as an example.</param>
/// <param name="Values">Its values, in the order in which they may be typed without their names.</param>
public abstract record CheckKind(string Name, string Form, ImmutableArray<CheckValue> Values)
{
    /// <summary>How it is typed in a plan of miles, psi and degrees Fahrenheit; the same where no value of it has such a unit.</summary>
    protected virtual string ImperialForm => Form;

    /// <summary>How it is typed, in the units of the plan.</summary>
    public string FormIn(UnitSystem units) => units == UnitSystem.Imperial ? ImperialForm : Form;

    /// <summary>What rules it out now, beside the gate of all facts; null: nothing.</summary>
    public virtual Objection? ObjectionIn(Study study, CheckValues values) => null;

    /// <summary>What the values answer in the study as it is.</summary>
    public abstract (CheckAnswer Answer, string Words) AnswerIn(Study study, CheckValues values);

    /// <summary>What the check changes beside being recorded; by default nothing.</summary>
    public virtual Study EffectOn(Study study, CheckValues values) => study;

    /// <summary>The words of an answer, the gravest answer of its parts.</summary>
    protected static (CheckAnswer Answer, string Words) Joined(IReadOnlyList<(CheckAnswer Answer, string Words)> parts) =>
        parts.Count == 0
            ? (CheckAnswer.Records, "noted")
            : (parts.Max(part => part.Answer), string.Join("; ", parts.OrderByDescending(part => part.Answer).Select(part => part.Words)));

    /// <summary>A part that warns beyond a limit and is recorded within it.</summary>
    protected static (CheckAnswer Answer, string Words) Above(double value, double limit, string words, string limitWords) =>
        value > limit ? (CheckAnswer.Warns, $"{words}, more than {limitWords}") : (CheckAnswer.Records, words);

    /// <summary>The limits of a study's plan.</summary>
    protected static Limits LimitsOf(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Plan?.Limits ?? new Limits();
    }
}

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
