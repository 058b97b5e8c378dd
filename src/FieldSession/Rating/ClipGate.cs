using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>
/// What rules out trials played from recordings. They are planned until the key is open, and played between the last prediction and the
/// reveal: who has heard the codes side by side would predict otherwise.
/// </summary>
public static class ClipGate
{
    /// <summary>What rules out planning such trials now; null: nothing.</summary>
    public static Objection? AgainstPlanning(Study study, ChoiceTerms terms)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(terms);
        return AgainstOpenKey(study)
            ?? (
                study switch
                {
                    { RunOn: { } run } => new Objection(
                        RatingWords.RunIsOnRateAtStop(run, RatingWords.TrialsArePlanned),
                        RatingWords.StopAndParkFirst
                    ),

                    // before the first prediction recordings can still be taken
                    { DataFrozen: true } => ClipPool.Of(study, terms).Objection,
                    _ => null,
                }
            );
    }

    /// <summary>What rules out playing a trial now; null: nothing.</summary>
    public static Objection? AgainstPlaying(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return AgainstOpenKey(study)
            ?? (
                study.StillToPredict.Any()
                    ? new Objection(RatingWords.StillToPredict(study.StillToPredict), RatingWords.LockPrediction)
                    : null
            );
    }

    /// <summary>What rules out a choice in a set for the way it was presented; null: nothing.</summary>
    /// <param name="study">The study.</param>
    /// <param name="set">The set.</param>
    /// <param name="clips">The clips that were played; null: none.</param>
    public static Objection? ObjectionTo(Study study, ChoiceSet set, ClipsHeard? clips)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(set);
        return (set.IsFromRecordings, clips) switch
        {
            (true, null) => new Objection(RatingWords.NobodyKnowsOrder(set), RatingWords.PlayIt),
            (false, null) => null,
            (true, { } played) when IsOf(study, set, played) => null,
            _ => new Objection(RatingWords.ClipsAreNotOfTrial, RatingWords.PlayRightClips),
        };
    }

    private static bool IsOf(Study study, ChoiceSet set, ClipsHeard clips) =>
        Counterbalance.Orders(set.Terms.Places).Contains(clips.Order)
        && clips.Runs.Count == clips.Order.Length
        && (set.Terms.Segment is null || set.Terms.Segment == clips.Segment)
        && clips
            .Runs.Zip(clips.Order)
            .All(place =>
                study.HasRun(place.First) && study.Runs[place.First - 1].Code == (place.Second == 'A' ? set.Terms.First : set.Terms.Second)
            );

    private static Objection? AgainstOpenKey(Study study) =>
        Gate.ForWriting(study) ?? (study.Opening is null ? null : new Objection(RatingWords.KeyIsOpen, JournalWords.NoteForm));
}
