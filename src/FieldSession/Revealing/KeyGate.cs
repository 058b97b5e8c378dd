using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>When the key may be opened: once, and only after every member of the crew has locked a prediction.</summary>
public static class KeyGate
{
    /// <summary>What stands against opening the key now; null: nothing.</summary>
    public static Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] open = [.. study.StillToPredict.Select(m => m.Name)];
        return study switch
        {
            { ReadOnlyBecause: { } because } => new Objection(because, RevealingWords.UseNewerProgram),
            { Plan: null } => new Objection(RevealingWords.StudyHasNoPlan, RevealingWords.MakePlanFirst),
            { Opening: not null } => new Objection(RevealingWords.KeyIsOpenAlready, RevealingWords.AskForReport),
            _ when study.Runs.Find(run => run.IsOn) is { } run => new Objection(RevealingWords.RunIsStillOn(run), RevealingWords.EndRunFirst),
            _ when study.Unsettled.Any() => new Objection(RevealingWords.LaptopsAreInConflict, RevealingWords.SettleConflictFirst),
            { IsAnythingDriven: false } => new Objection(RevealingWords.NothingHasBeenDriven, RevealingWords.DriveReviewAndPredictFirst),
            _ when open.Length > 0 => new Objection(
                RevealingWords.PredictionsAreStillOpen(string.Join(", ", open)), RevealingWords.LockPredictionsFirst),
            _ => null,
        };
    }

    /// <summary>What stands against opening with keys that name some codes: a code that was driven and that none of them names; null: nothing.</summary>
    public static Objection? ObjectionToMissing(Study study, IEnumerable<SpecCode> named)
    {
        ArgumentNullException.ThrowIfNull(study);
        SpecCode[] missing = [.. study.DrivenCodes.Except(named)];
        return missing.Length == 0
            ? null
            : new Objection(
                RevealingWords.KeyDoesNotName(string.Join(", ", missing)),
                study.Fittings.Count > 1 ? RevealingWords.GiveKeyOfEveryFitting : RevealingWords.GiveKeyOfThisStudy);
    }
}
