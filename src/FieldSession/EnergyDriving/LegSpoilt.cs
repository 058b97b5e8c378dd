using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.EnergyDriving;

/// <summary>
/// A leg was spoilt, or a flag on it was a mistake. A flag given after the same car has ended its next leg is late: it is kept and used in
/// the sensitivity result only.
/// </summary>
/// <param name="Leg">Number of the leg, from 1.</param>
/// <param name="Cause">What spoilt it; null: it is clean again.</param>
/// <param name="Words">More in the crew's words; null: none.</param>
public sealed record LegSpoilt(int Leg, SpoiltCause? Cause, string? Words = null) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.WhileDataAreOpen(study)
            ?? (
                Leg >= 1 && Leg <= study.Legs.Count
                    ? null
                    : new Objection(EnergyDrivingWords.ThereIsNoLeg(Leg), EnergyDrivingWords.FlagLegByItsNumber)
            );
    }

    /// <inheritdoc/>
    public override Entry Renumbered(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return this with { Leg = study.NumberOf(Leg, study.Legs.Select(leg => leg.Mark)) };
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (Leg < 1 || Leg > study.Legs.Count)
        {
            return study;
        }

        EnergyLeg leg = study.Legs[Leg - 1];
        EnergyLeg changed = leg with { Spoilt = Cause is { } cause ? new Spoiling(cause, Words, IsLate(study, leg)) : null };
        return (study with { Legs = study.Legs.SetItem(Leg - 1, changed) }).Undoably(study, mark, EnergyDrivingWords.FlagOnLeg(Leg));
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        bool isLate = Leg >= 1 && Leg <= after.Legs.Count && after.Legs[Leg - 1].Spoilt is { Late: true };
        return new Echo(
            Cause is { } cause ? EnergyDrivingWords.LegSpoilt(Leg, cause, Words, isLate) : EnergyDrivingWords.LegIsCleanAgain(Leg)
        );
    }

    private static bool IsLate(Study study, EnergyLeg leg) =>
        study.Legs.Skip(leg.Number).Any(later => CrewMember.SamePerson(later.Figures.Car, leg.Figures.Car));
}

/// <summary>
/// Reads <c>leg day=1 car=X code=417 km=212.4 kwh=38.0 t0=6 t1=8 wind=2 kmh=96 at=09:10</c>, with a cause letter and words behind it where
/// the leg was spoilt, and <c>leg 3 w words</c>, which flags leg 3 and given again without words takes the flag back.
/// </summary>
public static class LegText
{
    private const string FlagForm = EnergyDrivingWords.LegFlagForm;

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !Typed.Is(words[0], "leg"))
        {
            return null;
        }

        return words.Length > 1 && Typed.Count(words[1]) is { } number
            ? Flag(study, number, words[2..])
            : Leg(study, text, Typed.NamesJoined(words[1..], study));
    }

    private static Parsed Leg(Study study, string text, string[] words)
    {
        int parts = words.TakeWhile(word => word.Contains('=', StringComparison.Ordinal)).Count();
        LegDraft draft = LegDraft.Empty;
        HashSet<string> said = [];
        foreach (string word in words[..parts])
        {
            string[] halves = word.Split('=', 2);
            if (LegParts.Named(halves[0]) is not { } part || !said.Add(part.Name))
            {
                return Parsed.No(Unknown(halves[0]), EnergyDrivingWords.PartsOfLegAre(string.Join(", ", LegParts.All.Select(p => p.Name))));
            }

            (draft, string? wrong) = LegParts.With(draft, part, halves[1], study.Plan?.Units ?? UnitSystem.Metric);
            if (wrong is not null)
            {
                return Parsed.No(wrong, EnergyDrivingWords.LegForm(ExampleNames.In(study)));
            }
        }

        if (Spoiling(words[parts..]) is not { } spoilt)
        {
            return Parsed.No(EnergyDrivingWords.IsNeitherPartNorCause(words[parts]), EnergyDrivingWords.LegForm(ExampleNames.In(study)));
        }

        return LegMaking.Of(draft, study.Plan, text.Trim(), out Objection? objection) is { } figures
            ? Parsed.As(new EnergyLegDriven(figures, spoilt.Cause, spoilt.Words))
            : new Parsed(null, objection);
    }

    private static string Unknown(string name) =>
        LegParts.Named(name) is null ? EnergyDrivingWords.IsNoPartOfLeg(name) : EnergyDrivingWords.PartIsThereTwice(name);

    private static (SpoiltCause? Cause, string? Words)? Spoiling(string[] words) =>
        words switch
        {
            [] => (null, null),
            [{ Length: 1 } letter, .. var said] when SpoiltCauses.FromLetter(letter[0]) is { } cause => (
                cause,
                said.Length == 0 ? null : string.Join(' ', said)
            ),
            _ => null,
        };

    private static Parsed Flag(Study study, int number, string[] words)
    {
        if (number > study.Legs.Count)
        {
            return Parsed.No(EnergyDrivingWords.ThereIsNoLeg(number), FlagForm);
        }

        if (Spoiling(words) is not { Cause: { } cause } spoilt)
        {
            return Parsed.No(EnergyDrivingWords.FlagNamesLegAndCause, FlagForm);
        }

        bool sameAgain = study.Legs[number - 1].Spoilt?.Cause == cause && spoilt.Words is null;
        return Parsed.As(new LegSpoilt(number, sameAgain ? null : cause, spoilt.Words));
    }
}
