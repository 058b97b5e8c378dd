using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Flagging;

/// <summary>How flags find their reading, and when a flag is late.</summary>
public static class Flags
{
    /// <summary>The reading that is in a journal line, and its run; null: none.</summary>
    public static (Run Run, Reading Reading)? Find(Study study, LineName line)
    {
        ArgumentNullException.ThrowIfNull(study);
        for (int i = study.Runs.Count - 1; i >= 0; i--)
        {
            if (study.Runs[i].Readings.FirstOrDefault(r => r.Mark.Name == line) is { } reading)
            {
                return (study.Runs[i], reading);
            }
        }

        return null;
    }

    /// <summary>Whether a flag given now on a reading comes after the next segment has begun.</summary>
    public static bool IsLate(Study study, Reading reading)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(reading);
        return reading.FilledAtStop || study.LastRun is not { Passages.Count: > 0 } run || !run.Passages[^1].Equals(reading);
    }

    /// <summary>What rules out flagging a reading now; null: nothing.</summary>
    public static Objection? ObjectionTo(Study study, LineName line) =>
        Gate.WhileDataAreOpen(study)
        ?? (Find(study, line) is null ? new Objection(FlaggingWords.LineIsNoReading(line), FlaggingWords.FlagOtherReading) : null);

    /// <summary>The study with one reading changed.</summary>
    public static Study With(Study study, LineName line, Func<Reading, Reading> change)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(change);
        if (Find(study, line) is not { } found)
        {
            return study;
        }

        Run changed = found.Run with { Passages = found.Run.Passages.Replace(found.Reading, change(found.Reading)) };
        return study with { Runs = study.Runs.SetItem(found.Run.Number - 1, changed) };
    }

    /// <summary>A reading in words, such as "58-60 dB on 3 Sallowheath lane, run 2".</summary>
    public static string InWords(Study study, LineName line)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Find(study, line) is { } found && study.Plan is { } plan
            ? FlaggingWords.ReadingOnSegment(found.Run, found.Reading, plan.Route[found.Reading.Segment - 1].Name)
            : $"line {line.Line}";
    }
}
