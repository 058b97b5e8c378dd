using FieldSession.Journal;
using FieldSession.Predicting;
using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>When the key may be opened: once, and only after every member of the crew has locked a prediction.</summary>
public static class KeyGate
{
    /// <summary>What rules out opening the key now; null: nothing.</summary>
    public static Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] open = [.. study.StillToPredict.Select(m => m.Name)];
        return EveningGate.ObjectionIn(study, new Objection(RevealingWords.KeyIsOpenAlready, RevealingWords.AskForReport)) ?? study switch
        {
            { IsAnythingDriven: false } => new Objection(JournalWords.NothingHasBeenDriven, RevealingWords.DriveReviewAndPredictFirst),
            _ when open.Length > 0 => new Objection(
                RevealingWords.PredictionsAreStillOpen(string.Join(", ", open)), RevealingWords.LockPredictionsFirst),
            _ => null,
        };
    }

    /// <summary>What rules out opening with keys that name some codes: a code that was driven and that none of them names; null: nothing.</summary>
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
