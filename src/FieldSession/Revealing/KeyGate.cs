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
            { ReadOnlyBecause: { } because } => new Objection(because, "use a newer program"),
            { Plan: null } => new Objection("the study has no plan", "make it with 'start' first"),
            { Opening: not null } => new Objection("the key is open already", "ask for the report"),
            _ when study.Runs.Find(run => run.IsOn) is { } run => new Objection($"run {run.Number} is still on", "type 'end', or finish it first"),
            _ when study.Unsettled.Any() => new Objection("laptops are in conflict", "settle it first: 'settle 1 first because WHY'; 'merge' and 'review' list the conflicts"),
            { IsAnythingDriven: false } => new Objection("nothing has been driven", "drive, review and predict first"),
            _ when open.Length > 0 => new Objection(
                $"predictions are still open: {string.Join(", ", open)}", "lock them with 'predict' first"),
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
                $"the key does not name {string.Join(", ", missing)}",
                study.Fittings.Count > 1 ? "every fitting has a key of its own: 'reveal --key FIRST --key SECOND'" : "give the key of this study");
    }
}
