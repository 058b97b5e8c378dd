using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;
using FieldSession.Statistics;

namespace FieldSession.Rating;

/// <summary>A set of forced-choice trials is planned: pair, question, side, number and order are before the first choice.</summary>
/// <param name="Terms">What is fixed.</param>
/// <param name="Presentations">The order of the codes in each trial, made by <see cref="Counterbalance"/>.</param>
/// <param name="Sealed">True: the order is shown to nobody but the one who runs the trials. Null: planned by an older program, which told
/// the codes.</param>
/// <param name="FromRecordings">True: played from recordings after the last prediction; the presentations are empty, each is drawn when its
/// trial is played.</param>
public sealed record ChoiceTrialsPlanned(
    ChoiceTerms Terms,
    ImmutableList<string> Presentations,
    bool? Sealed = null,
    bool? FromRecordings = null
) : Entry
{
    /// <summary>The largest set, trials: more nobody sits through in a day.</summary>
    public const int MostTrials = 200;

    /// <inheritdoc/>
    public override bool OutlivesFreeze => FromRecordings == true;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return (FromRecordings == true ? ClipGate.AgainstPlanning(study, Terms) : EarGate.ObjectionIn(study, RatingWords.TrialsArePlanned))
            ?? ObjectionToCodes(study)
            ?? ObjectionToNumber()
            ?? ObjectionToOpenSet(study);
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        ChoiceSet set = new(study.ChoiceSets.Count + 1, Terms, Presentations, mark)
        {
            IsSealed = Sealed == true,
            IsFromRecordings = FromRecordings == true,
        };
        Study planned = study with { ChoiceSets = study.ChoiceSets.Add(set) };
        return study.DataFrozen ? planned : planned.Undoably(study, mark, RatingWords.TrialsOfSet(set));
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        string where = Terms.Segment is { } segment ? $" on {segment} {after.Plan!.Route[segment - 1].Name}" : "";
        return new Echo(
            RatingWords.TrialsPlanned(after.ChoiceSets.Count, Presentations.Count, Terms, where, Presenting.InWords(after.ChoiceSets[^1]))
                + NotHeardIsOutOfReach
        );
    }

    private string NotHeardIsOutOfReach
    {
        get
        {
            ChoiceSize size = ChoiceSize.Of(Terms.Chance, Terms.IsTwoSided, Presentations.Count, Terms.DetectShare);
            return size.CanSayNotHeard
                ? ""
                : RatingWords.NotHeardOutOfReach(size, ChoiceSize.TrialsFor(Terms.Chance, Terms.IsTwoSided, Terms.DetectShare));
        }
    }

    private Objection? ObjectionToCodes(Study study)
    {
        SpecCode[] codes = [.. study.Codes];
        SpecCode[] strangers = [.. new[] { Terms.First, Terms.Second }.Where(code => !codes.Contains(code))];
        if (strangers.Length > 0 || Terms.First == Terms.Second)
        {
            return new Objection(
                strangers.Length > 0 ? JournalWords.IsNoCodeOfStudy(strangers[0]) : RatingWords.ChoiceNeedsTwoCodes,
                JournalWords.CodesAre(string.Join(", ", codes.OrderBy(c => c.Digits, StringComparer.Ordinal)))
            );
        }

        return ObjectionToSegment(study) ?? ObjectionToExpected();
    }

    private Objection? ObjectionToSegment(Study study) =>
        Terms.Segment is { } segment && (segment < 1 || segment > study.Plan!.Route.Count)
            ? new Objection(JournalWords.ThereIsNoSegment(segment), JournalWords.RouteHasSegmentsTo(study))
            : null;

    private Objection? ObjectionToExpected() =>
        Terms.Expected is { } expected && expected != Terms.First && expected != Terms.Second
            ? new Objection(RatingWords.CodeIsNotOfPair(expected), RatingWords.SidesOfPairAre(Terms.First, Terms.Second))
            : null;

    // With too few trials not even all right reaches 5 %; such a set could only ever say "not tested enough".
    private Objection? ObjectionToNumber()
    {
        int fewest = 1;
        while (ChoiceSize.Of(Terms.Chance, Terms.IsTwoSided, fewest, Terms.DetectShare).FewestRight is null)
        {
            fewest++;
        }

        return Presentations.Count < fewest || Presentations.Count > MostTrials
            ? new Objection(
                $"{Presentations.Count} trials "
                    + $"{(Presentations.Count < fewest ? "can never reach 5 %" : "are more than anybody can sit through")}",
                RatingWords.NumberOfTrialsCanBe(fewest, MostTrials)
            )
            : null;
    }

    private Objection? ObjectionToOpenSet(Study study) =>
        study.ChoiceSets.FirstOrDefault(set =>
            !set.IsComplete
            && set.IsFromRecordings == (FromRecordings == true)
            && set.Terms.IsPair(Terms.First, Terms.Second)
            && set.Terms.Segment == Terms.Segment
            && string.Equals(set.Terms.Question, Terms.Question, StringComparison.OrdinalIgnoreCase)
        )
            is { } open
            ? new Objection(RatingWords.SetAsksThisAlready(open), RatingWords.FinishOpenSetFirst(open))
            : null;
}

/// <summary>Which trial of a set comes next, in words that everybody may read.</summary>
public static class Presenting
{
    /// <summary>
    /// "trial 3 of 10: answer first or second", with the codes only in a set of an older program; or that the set is at its planned end.
    /// </summary>
    public static string InWords(ChoiceSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        if (set.IsComplete)
        {
            return RatingWords.AllTrialsAreMade(set);
        }

        if (set.IsFromRecordings)
        {
            return RatingWords.NextTrialIsPlayed(set);
        }

        if (set.IsSealed)
        {
            return RatingWords.NextTrialIs(set);
        }

        IEnumerable<string> codes = Enumerable.Range(1, set.Terms.Places).Select(place => set.CodeAt(set.NextTrial, place).Digits);
        return RatingWords.NextTrialPresents(set, string.Join(", then ", codes));
    }
}
