using System.Collections.Immutable;
using FieldSession.Journal;

namespace FieldSession.Sealing;

/// <summary>
/// The custodian's list of specs, one name a line; the first is the control. Its names are secret: a refusal names the
/// line and what is allowed, never the name, because the crew may see the message.
/// </summary>
public sealed class SpecList
{
    /// <summary>Fewest specs that can be compared.</summary>
    public const int Fewest = 2;

    /// <summary>Most specs in one study.</summary>
    public const int Most = 9;

    private SpecList(ImmutableList<string> names) => Names = names;

    /// <summary>The names in the order of the file; 2..9, all different.</summary>
    public ImmutableList<string> Names { get; }

    /// <summary>The spec that all others are compared with: the first line of the file.</summary>
    public string Control => Names[0];

    /// <summary>The specs of a key, the control first: a later fitting needs no list.</summary>
    public static SpecList Of(KeySheet key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return new SpecList([key.ControlSpec, .. key.Places.Select(place => place.Spec).Where(spec => spec != key.ControlSpec)]);
    }

    /// <summary>Reads the custodian's list. Empty lines are passed over, spaces around a name are dropped.</summary>
    /// <param name="text">The whole file.</param>
    /// <param name="specsWanted">How many specs the plan says, 2..9.</param>
    /// <param name="refusal">Which line is wrong and what is allowed, without any name; null where the list is good.</param>
    /// <returns>The list; null where it is refused.</returns>
    public static SpecList? Parse(string text, int specsWanted, out Objection? refusal)
    {
        ArgumentNullException.ThrowIfNull(text);
        Dictionary<string, int> lines = new(StringComparer.OrdinalIgnoreCase);
        List<string> names = [];
        int number = 0;
        foreach (string line in text.TrimStart('\uFEFF').Split('\n'))
        {
            number++;
            string name = line.Trim();
            if (name.Length == 0)
            {
                continue;
            }

            refusal = ObjectionTo(name, number, lines);
            if (refusal is not null)
            {
                return null;
            }

            lines.Add(name, number);
            names.Add(name);
        }

        refusal = ObjectionToCount(names.Count, specsWanted);
        return refusal is null ? new SpecList([.. names]) : null;
    }

    /// <summary>How many specs, never which: a list that slips into a message tells nothing.</summary>
    public override string ToString() => $"{Names.Count} specs";

    private static Objection? ObjectionTo(string name, int number, Dictionary<string, int> lines)
    {
        if (SealableText.FaultIn(name) is string fault)
        {
            return new Objection(SealingWords.LineIsNoSpecName(number, fault), SealingWords.SpecNameForm);
        }

        return lines.TryGetValue(name, out int earlier)
            ? new Objection(SealingWords.LinesHoldSameSpecName(earlier, number), SealingWords.GiveEachSpecNameOfItsOwn)
            : null;
    }

    private static Objection? ObjectionToCount(int count, int wanted) =>
        count == wanted && count is >= Fewest and <= Most
            ? null
            : new Objection(SealingWords.ListHasWrongCount(count, wanted), SealingWords.SpecListForm(Fewest, Most));
}
