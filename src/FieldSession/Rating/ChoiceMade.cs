using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>Someone chose in the next planned trial of a set. What was chosen stays covered until the set is at its end.</summary>
/// <param name="Person">Who chose.</param>
/// <param name="Set">Number of the set.</param>
/// <param name="Trial">Number of the trial in the set.</param>
/// <param name="Place">The place chosen, from 1.</param>
/// <param name="Unseen">True: the person says that they saw neither the meter nor a comparison of the pair. Null: nothing is said.</param>
/// <param name="Clips">The clips that were played; null: presented in the car.</param>
public sealed record ChoiceMade(string Person, int Set, int Trial, int Place, bool? Unseen = null, ClipsHeard? Clips = null) : Entry
{
    /// <inheritdoc/>
    public override bool OutlivesFreeze => Clips is not null;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return (Clips is null ? EarGate.ObjectionIn(study, "choices") : ClipGate.AgainstPlaying(study))
            ?? EarGate.ObjectionTo(study, Person)
            ?? ObjectionToTrial(study)
            ?? ClipGate.ObjectionTo(study, study.ChoiceSets[Set - 1], Clips)
            ?? ObjectionToSight(study);
    }

    /// <inheritdoc/>
    public override Entry Renumbered(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return this with
        {
            Set = study.NumberOf(Set, study.ChoiceSets.Select(set => set.Mark)),
            Clips = Clips is null
                ? null
                : Clips with
                {
                    Runs = [.. Clips.Runs.Select(run => study.NumberOf(run, study.Runs.Select(known => known.Started)))],
                },
        };
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (ObjectionToTrial(study) is not null || EarGate.MemberIn(study, Person) is not { } member)
        {
            return study;
        }

        ChoiceSet set = study.ChoiceSets[Set - 1];
        Choice choice = new(member.Name, Trial, Place, mark) { Sight = ChoiceSights.Of(study, set, member, Unseen == true), Clips = Clips };
        ChoiceSet made = set with
        {
            Choices = set.Choices.Add(choice),
            Presentations = Clips is null ? set.Presentations : set.Presentations.SetItem(Trial - 1, Clips.Order),
        };
        Study chosen = study with { ChoiceSets = study.ChoiceSets.SetItem(Set - 1, made) };

        // The last choice uncovers the count, so it can't be taken back any more.
        return made.IsComplete || set.IsFromRecordings
            ? chosen with
            {
                Undoables = [],
            }
            : chosen.Undoably(study, mark, RatingWords.ChoiceInTrial(member, Trial));
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        string next = Set <= after.ChoiceSets.Count ? $"; {Presenting.InWords(after.ChoiceSets[Set - 1])}" : "";
        string apart = SightIn(after) == ChoiceSight.MeterSeen ? RatingWords.CountedWithMeterSeen : "";
        return new Echo(RatingWords.ChoiceStored(EarGate.MemberIn(after, Person)?.Name ?? Person, Trial, Set, apart + next));
    }

    private ChoiceSight? SightIn(Study after) =>
        Set <= after.ChoiceSets.Count ? after.ChoiceSets[Set - 1].Choices.LastOrDefault()?.Sight : null;

    private Objection? ObjectionToSight(Study study)
    {
        ChoiceSet set = study.ChoiceSets[Set - 1];
        CrewMember member = EarGate.MemberIn(study, Person)!;
        return set.IsRunBy(Person) ? new Objection(RatingWords.RunnerKnowsOrder(member.Name, set), RatingWords.SomebodyElseChooses)
            : Unseen == true && ChoiceSights.HasReadMeter(study, set, member)
                ? new Objection(RatingWords.PersonReadMeter(member.Name), RatingWords.ChooseWithoutUnseen)
            : null;
    }

    private Objection? ObjectionToTrial(Study study)
    {
        if (Set < 1 || Set > study.ChoiceSets.Count)
        {
            return new Objection(RatingWords.ThereIsNoSetOfTrials(Set), RatingWords.TrialsForm(ExampleNames.In(study)));
        }

        ChoiceSet set = study.ChoiceSets[Set - 1];
        return set switch
        {
            { IsComplete: true } => new Objection(RatingWords.AllTrialsOfSetAreMade(set), RatingWords.SetEndsByItsPlan),
            _ when Trial != set.NextTrial => new Objection(RatingWords.OtherTrialComesNext(set, Trial), RatingWords.ChooseForNextTrial),
            _ when Place < 1 || Place > set.Terms.Places => new Objection(
                RatingWords.ThereIsNoPlaceInTrial(Place),
                $"choose 1 to {set.Terms.Places}"
            ),
            _ => null,
        };
    }
}

/// <summary>
/// What somebody could know of the answer before choosing (own rule, docs/formulas.md, "The ear"): until both codes of the pair have been
/// read on the meter nothing can be known. From then on who sat at the meter knows; anybody else could have looked, unless they say that
/// they did not.
/// </summary>
public static class ChoiceSights
{
    /// <summary>What a choice made now rests on.</summary>
    /// <param name="study">The study before the choice.</param>
    /// <param name="set">The set.</param>
    /// <param name="member">Who chooses.</param>
    /// <param name="saysUnseen">Whether they say that they saw neither meter nor comparison.</param>
    public static ChoiceSight Of(Study study, ChoiceSet set, CrewMember member, bool saysUnseen)
    {
        ArgumentNullException.ThrowIfNull(set);
        ArgumentNullException.ThrowIfNull(member);
        return set.IsRunBy(member.Name) ? ChoiceSight.OrderSeen
            // whoever knows what the meter showed still does not know which clip is which: that is drawn when it is played
            : set.IsFromRecordings ? ChoiceSight.Unseen
            : !IsComparable(study, set) ? ChoiceSight.Unseen
            : saysUnseen && !HasReadMeter(study, set, member) ? ChoiceSight.Unseen
            : ChoiceSight.MeterSeen;
    }

    /// <summary>Whether somebody sat at the meter in a run on one of the pair, after which both codes are read.</summary>
    public static bool HasReadMeter(Study study, ChoiceSet set, CrewMember member)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(set);
        return IsComparable(study, set)
            && study.Runs.Exists(run =>
                IsOf(set, run.Code) && run.Readings.Any() && EarGate.SeatIn(run, member) == CrewMember.CoDriverSeat
            );
    }

    /// <summary>Whether both codes of the pair are read, so that a screen could show how they compare.</summary>
    public static bool IsComparable(Study study, ChoiceSet set)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(set);
        return IsRead(study, set.Terms.First) && IsRead(study, set.Terms.Second);
    }

    private static bool IsRead(Study study, SpecCode code) => study.Runs.Exists(run => run.Code == code && run.Readings.Any());

    private static bool IsOf(ChoiceSet set, SpecCode code) => code == set.Terms.First || code == set.Terms.Second;
}
