using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>What may only be done at a stop: reading back, mending, confirming. Nothing asks for it while the car moves.</summary>
public static class StopGate
{
    /// <summary>What stands against mending a run now; null: nothing.</summary>
    public static Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.WhileDataAreOpen(study) ?? (study switch
        {
            { RunOn: { } run } => new Objection(JournalWords.RunIsOn(run), DrivingWords.MendAtNextStop),
            { Runs.Count: 0 } => new Objection(JournalWords.NothingHasBeenDriven, DrivingWords.DriveRunFirst),
            _ => null,
        });
    }

    /// <summary>The last reading of a run on a segment; null: there is none.</summary>
    public static Reading? ReadingAt(Study study, int run, int segment)
    {
        ArgumentNullException.ThrowIfNull(study);
        return run >= 1 && run <= study.Runs.Count
            ? study.Runs[run - 1].Readings.LastOrDefault(r => r.Segment == segment)
            : null;
    }

    /// <summary>The study with the last reading of a run on a segment changed.</summary>
    public static Study With(Study study, int run, int segment, Func<Reading, Reading> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        if (ReadingAt(study, run, segment) is not { } reading)
        {
            return study;
        }

        Run driven = study.Runs[run - 1];
        return study with { Runs = study.Runs.SetItem(run - 1, driven with { Passages = driven.Passages.Replace(reading, change(reading)) }) };
    }

    /// <summary>A reading's place in words, such as "run 2, 5 Ferrowdyke slabs".</summary>
    public static string InWords(Study study, int run, int segment)
    {
        ArgumentNullException.ThrowIfNull(study);
        string name = study.Plan is { } plan && segment >= 1 && segment <= plan.Route.Count ? $" {plan.Route[segment - 1].Name}" : "";
        return $"run {run}, {segment}{name}";
    }
}
