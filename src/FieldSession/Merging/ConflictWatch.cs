using FieldSession.State;

namespace FieldSession.Merging;

/// <summary>
/// Finds what a laptop wrote without knowing that another one had written what can't be meant beside it. It is asked when the study is
/// told, not when a line is written: while writing, neither of them could know.
/// </summary>
public static class ConflictWatch
{
    /// <summary>The study after a fact, with the conflicts that it brought.</summary>
    /// <param name="before">The study before it, in the hand of its writer.</param>
    /// <param name="after">The study after it.</param>
    /// <param name="mark">Where it is.</param>
    public static Study Watched(Study before, Study after, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        if (!before.IsShared)
        {
            return after;
        }

        Conflict[] found =
        [
            .. SameRun(before, after),
            .. SameReading(before, after),
            .. SameShift(before, after),
            .. SamePlanPart(before, after),
            .. SamePrediction(before, after),
            .. AfterFreeze(before, after, mark),
        ];
        return found.Length == 0 ? after : after with { Conflicts = after.Conflicts.AddRange(found) };
    }

    /// <summary>Whether a fact did nothing but add a note, or nothing at all.</summary>
    public static bool IsNoteOrNothing(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return after with { Notes = before.Notes, Undoables = before.Undoables, Hand = before.Hand, Conflicts = before.Conflicts } == before
            && after.Notes.Count >= before.Notes.Count;
    }

    private static IEnumerable<Conflict> SameRun(Study before, Study after)
    {
        if (after.Runs.Count == before.Runs.Count)
        {
            yield break;
        }

        Run run = after.Runs[^1];
        foreach (
            Run other in before.Runs.Where(r =>
                run.Step is not null && r.Step == run.Step && StudyInHand.SameCar(r.Car, run.Car) && !before.Hand.Knows(r.Started)
            )
        )
        {
            string car = run.Car is null ? "" : $" of car {run.Car}";
            yield return new Conflict(ConflictKind.SameRun, other.Started, run.Started, MergingWords.RunStartedOnBoth(run, car, other));
        }
    }

    private static IEnumerable<Conflict> SameReading(Study before, Study after)
    {
        if (
            after.Runs.Count != before.Runs.Count
            || before.LastRun is not { } was
            || after.Runs[was.Number - 1] is not { LastReading: { } reading } run
            || run.Readings.Count() == was.Readings.Count()
        )
        {
            yield break;
        }

        foreach (Reading other in was.Readings.Where(r => r.Segment == reading.Segment && !before.Hand.Knows(r.Mark)))
        {
            string name = before.Plan is { } plan ? $" {plan.Route[reading.Segment - 1].Name}" : "";
            yield return new Conflict(ConflictKind.SameReading, other.Mark, reading.Mark, MergingWords.RunReadOnBoth(run, reading, name));
        }
    }

    private static IEnumerable<Conflict> SameShift(Study before, Study after) =>
        after.Runs.Count != before.Runs.Count
            ? []
            : from run in after.Runs
            let known = before.Runs[run.Number - 1].Shifts
            where run.Shifts.Count > known.Count
            from other in known
            where !before.Hand.Knows(other)
            select new Conflict(ConflictKind.SameShift, other, run.Shifts[^1], MergingWords.RunShiftedOnBoth(run.Number));

    private static IEnumerable<Conflict> SamePlanPart(Study before, Study after) =>
        after.Amendments.Count == before.Amendments.Count
            ? []
            : from other in before.Amendments
            let amendment = after.Amendments[^1]
            where other.What == amendment.What && other.To != amendment.To && !before.Hand.Knows(other.Mark)
            select new Conflict(
                ConflictKind.SamePlanPart,
                other.Mark,
                amendment.Mark,
                MergingWords.PlanPartChangedOnBoth(amendment.What, other.To, amendment.To)
            );

    private static IEnumerable<Conflict> SamePrediction(Study before, Study after) =>
        after.Predictions.Count == before.Predictions.Count
            ? []
            : from other in before.Predictions
            let prediction = after.Predictions[^1]
            where CrewMember.SamePerson(other.Person, prediction.Person) && !before.Hand.Knows(other.Mark)
            select new Conflict(
                ConflictKind.SamePrediction,
                other.Mark,
                prediction.Mark,
                MergingWords.PredictionLockedOnBoth(prediction.Person)
            );

    private static IEnumerable<Conflict> AfterFreeze(Study before, Study after, LineMark mark)
    {
        bool isTheEvening = after.Predictions.Count > before.Predictions.Count || after.Opening != before.Opening;
        if (
            isTheEvening
            || FreezeOf(before) is not { } freeze
            || before.Hand.Knows(freeze)
            || IsNoteOrNothing(before, after)
            || IsTold(before, freeze, mark)
        )
        {
            return [];
        }

        return [new Conflict(ConflictKind.AfterFreeze, freeze, mark, MergingWords.DataWrittenWhileFrozen(mark.Strand ?? "one", mark))];
    }

    private static bool IsTold(Study study, LineMark freeze, LineMark mark) =>
        study.Conflicts.Exists(c => c.Kind == ConflictKind.AfterFreeze && c.Second.Strand == mark.Strand && c.First == freeze);

    private static LineMark? FreezeOf(Study study) => study.Predictions.Count > 0 ? study.Predictions[0].Mark : study.Opening?.Mark;
}
