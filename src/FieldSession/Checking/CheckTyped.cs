using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Checking;

/// <summary>A check was made, with the values that were read: never a tick. Its answer is worked out again from them.</summary>
/// <param name="Check">Name of the check.</param>
/// <param name="Values">What was typed, by name, in metric units as the plan holds them.</param>
public sealed record CheckTyped(string Check, ImmutableSortedDictionary<string, string> Values) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => Gate.WhileDataAreOpen(study) ?? Kind?.ObjectionIn(study, Read);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (Kind is not { } kind)
        {
            return study;
        }

        (CheckAnswer answer, string words) = kind.AnswerIn(study, Read);
        CheckRecord record = new(Check, Values, answer, words, study.LastRun?.Number ?? 0, mark);
        Study marked = kind.EffectOn(study, Read);
        return (marked with { Checks = study.Checks.Add(record) }).Undoably(study, mark, $"check {Check}");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        CheckRecord? record = after.Checks.LastOrDefault();
        return record?.Answer switch
        {
            CheckAnswer.Blocks => new Echo($"check {Check}: {record.Words}", CheckingWords.NoRunStartsSo(RunChecks.InsteadOf(Check))),
            CheckAnswer.Warns => new Echo(CheckingWords.CheckWarns(Check, record)),
            _ => new Echo($"check {Check}: {record?.Words}"),
        };
    }

    private CheckKind? Kind => CheckKinds.Of(Check);

    private CheckValues Read => new(Values);
}

/// <summary>
/// Reads <c>check pressure 230 231 250 249 at=12</c> and the other checks: values in their order, or by name. Pressures and
/// masses are typed in the plan's units and held in kPa and kg.
/// </summary>
public static class CheckText
{
    private const int LongestWord = 40;
    private const string Kilometres = "km";
    private const double KgPerPound = 0.45359237;

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, UnitSystem units)
    {
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !Typed.Is(words[0], "check"))
        {
            return null;
        }

        string known = string.Join(", ", CheckKinds.All.Select(kind => kind.Name));
        if (words.Length == 1 || CheckKinds.Of(words[1]) is not { } kind)
        {
            return Parsed.No(
                words.Length == 1 ? CheckingWords.CheckHasName : CheckingWords.ThereIsNoCheck(words[1]),
                CheckingWords.ChecksAre(known, CheckKinds.All[0].FormIn(units))
            );
        }

        return Read(kind, words[2..], units, out string? wrong) is { } values
            ? Parsed.As(new CheckTyped(kind.Name, values))
            : Parsed.No(wrong!, $"type '{kind.FormIn(units)}'");
    }

    private static ImmutableSortedDictionary<string, string>? Read(CheckKind kind, string[] words, UnitSystem units, out string? wrong)
    {
        Dictionary<string, string> values = [];
        wrong = null;
        for (int i = 0; i < words.Length && wrong is null; i++)
        {
            (CheckValue? value, string text, UnitSystem unitsOfIt) = Named(kind, words[i], i, units);
            wrong = value is null ? CheckingWords.IsNoValueOfCheck(words[i], kind) : Put(values, value, text, unitsOfIt);
        }

        string[] missing = [.. kind.Values.Where(value => value.Needed && !values.ContainsKey(value.Name)).Select(value => value.Name)];
        wrong ??=
            missing.Length > 0 ? $"check {kind.Name} lacks {string.Join(", ", missing)}"
            : values.Count == 0 ? CheckingWords.CheckSaysNothing(kind)
            : null;
        return wrong is null ? values.ToImmutableSortedDictionary(StringComparer.Ordinal) : null;
    }

    // a distance that names its unit is in that unit, whatever the plan's units are
    private static (CheckValue? Value, string Text, UnitSystem Units) Named(CheckKind kind, string word, int place, UnitSystem units)
    {
        int equals = word.IndexOf('=', StringComparison.Ordinal);
        if (equals < 0)
        {
            return (place < kind.Values.Length ? kind.Values[place] : null, word, units);
        }

        string name = word[..equals];
        (string called, UnitSystem unitsOfIt) =
            Typed.Is("mi", name) ? (Kilometres, UnitSystem.Imperial)
            : Typed.Is(Kilometres, name) ? (Kilometres, UnitSystem.Metric)
            : (name, units);
        return (kind.Values.FirstOrDefault(value => Typed.Is(value.Name, called)), word[(equals + 1)..], unitsOfIt);
    }

    private static string? Put(Dictionary<string, string> values, CheckValue value, string text, UnitSystem units)
    {
        if (value.Lowest is not { } lowest)
        {
            values[value.Name] = text.ToLowerInvariant();
            return text.Length is 0 or > LongestWord ? CheckingWords.IsEmptyOrTooLong(value) : null;
        }

        if (Typed.Number(text) is not { } typed)
        {
            return CheckingWords.IsNoNumber(text);
        }

        double held = Metric(value.Name, typed, units);
        values[value.Name] = CheckValues.Text(held);
        return held < lowest || held > value.Highest ? $"{value.Name}={text} can't be" : null;
    }

    private static double Metric(string name, double typed, UnitSystem units) =>
        (name, units) switch
        {
            ("fl" or "fr" or "rl" or "rr", UnitSystem.Imperial) => TyrePressure.FromPsi(typed).Kpa,
            // pressures of a car are typed in bar as often as in kPa, and no tyre of a car has 10 kPa
            ("fl" or "fr" or "rl" or "rr", _) when typed < 10 => typed * 100,
            ("at", UnitSystem.Imperial) => (typed - 32) / 1.8,
            ("mass", UnitSystem.Imperial) => typed * KgPerPound,
            ("speed" or Kilometres, UnitSystem.Imperial) => typed * Speed.KmPerMile,
            _ => typed,
        };
}
