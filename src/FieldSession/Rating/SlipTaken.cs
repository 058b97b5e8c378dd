using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>Somebody took the slip of a set: they are shown the order of its trials, run them, and choose in none of them.</summary>
/// <param name="Set">Number of the set.</param>
/// <param name="Person">Who runs the trials: the custodian, another helper, or one of the crew.</param>
public sealed record SlipTaken(int Set, string Person) : Entry
{
    private const int LongestName = 40;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return EarGate.ObjectionIn(study, RatingWords.SlipsAreTaken) ?? ObjectionToPerson() ?? ObjectionToSet(study);
    }

    /// <inheritdoc/>
    public override Entry Renumbered(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return this with { Set = study.NumberOf(Set, study.ChoiceSets.Select(set => set.Mark)) };
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (Set < 1 || Set > study.ChoiceSets.Count)
        {
            return study;
        }

        // who has seen the order has seen it: it can't be taken back, and neither can what led to it
        ChoiceSet set = study.ChoiceSets[Set - 1];
        ImmutableList<string> runners = set.IsRunBy(Person) ? set.Runners : set.Runners.Add(Person.Trim());
        return study with { ChoiceSets = study.ChoiceSets.SetItem(Set - 1, set with { Runners = runners }), Undoables = [] };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) => new(RatingWords.SlipWasTaken(Person.Trim(), Set));

    private Objection? ObjectionToPerson() =>
        string.IsNullOrWhiteSpace(Person) || Person.Trim().Length > LongestName
            ? new Objection(RatingWords.SlipNamesPerson(LongestName), RatingWords.SlipForm)
            : null;

    private Objection? ObjectionToSet(Study study)
    {
        if (Set < 1 || Set > study.ChoiceSets.Count)
        {
            return new Objection(RatingWords.ThereIsNoSetOfTrials(Set), RatingWords.TrialsForm(ExampleNames.In(study)));
        }

        ChoiceSet set = study.ChoiceSets[Set - 1];
        return set switch
        {
            { IsFromRecordings: true } => new Objection(RatingWords.NobodyKnowsOrder(set), RatingWords.PlayIt),
            { IsComplete: true } => new Objection(RatingWords.AllTrialsOfSetAreMade(set), RatingWords.SetEndsByItsPlan),
            _ when set.Choices.Exists(choice => CrewMember.SamePerson(choice.Person, Person)) => new Objection(
                RatingWords.PersonChoosesInSet(Person.Trim(), set),
                RatingWords.SomebodyElseRuns
            ),
            _ => null,
        };
    }
}

/// <summary>Reads <c>slip Ilse</c>, with <c>set=2</c> where several sets are open: who runs the trials and is shown their order.</summary>
public static class SlipText
{
    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !Typed.Is(words[0], "slip"))
        {
            return null;
        }

        bool namesSet = words.Length > 2 && ChoiceText.AskedSet(words[^1]) is not null;
        string person = string.Join(' ', namesSet ? words[1..^1] : words[1..]);
        return person.Length == 0 ? Parsed.No(RatingWords.SlipNamesSomebody, RatingWords.SlipForm)
            : SetFor(study, namesSet ? ChoiceText.AskedSet(words[^1]) : null) is { } set ? Parsed.As(new SlipTaken(set, person))
            : Parsed.No(RatingWords.NoTrialsArePlanned, RatingWords.TrialsForm(ExampleNames.In(study)));
    }

    /// <summary>The set that is asked for, or the first that is open, or the last one; null: none is planned.</summary>
    public static int? SetFor(Study study, int? asked)
    {
        ArgumentNullException.ThrowIfNull(study);
        return asked ?? (study.ChoiceSets.Find(set => !set.IsComplete) ?? study.ChoiceSets.LastOrDefault())?.Number;
    }
}

/// <summary>The order of a set's trials as the one who runs them reads it, and nobody else.</summary>
public static class OrderSlip
{
    private const int TrialsInRow = 5;

    /// <summary>Whose it is and how it is read, then the trials, a few in a row: "1  862 417".</summary>
    /// <param name="set">The set.</param>
    /// <param name="fromTrial">Number of the first trial to show.</param>
    public static IEnumerable<string> Rows(ChoiceSet set, int fromTrial)
    {
        ArgumentNullException.ThrowIfNull(set);
        yield return RatingWords.SlipHead(set);
        yield return RatingWords.SlipIsForRunnerAlone;
        foreach (
            int[] row in Enumerable
                .Range(1, set.Presentations.Count)
                .Skip(fromTrial - 1)
                .Chunk(set.Terms.Places == 2 ? TrialsInRow : TrialsInRow - 1)
        )
        {
            yield return string.Join(
                "   ",
                row.Select(trial =>
                    $"{trial, 3}  {string.Join(' ', Enumerable.Range(1, set.Terms.Places).Select(place => set.CodeAt(trial, place)))}"
                )
            );
        }
    }
}
