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

    private Objection? ObjectionToPerson() => string.IsNullOrWhiteSpace(Person) || Person.Trim().Length > LongestName
        ? new Objection(RatingWords.SlipNamesPerson(LongestName), RatingWords.SlipForm)
        : null;

    private Objection? ObjectionToSet(Study study)
    {
        if (Set < 1 || Set > study.ChoiceSets.Count)
        {
            return new Objection(RatingWords.ThereIsNoSetOfTrials(Set), ChoiceText.PlanForm);
        }

        ChoiceSet set = study.ChoiceSets[Set - 1];
        return set switch
        {
            { IsFromRecordings: true } => new Objection(RatingWords.NobodyKnowsOrder(set), RatingWords.PlayIt),
            { IsComplete: true } => new Objection(RatingWords.AllTrialsOfSetAreMade(set), RatingWords.SetEndsByItsPlan),
            _ when set.Choices.Exists(choice => CrewMember.SamePerson(choice.Person, Person)) =>
                new Objection(RatingWords.PersonChoosesInSet(Person.Trim(), set), RatingWords.SomebodyElseRuns),
            _ => null,
        };
    }
}
