using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>A row of the stop: a passage of a run, or a segment on which nothing was stored.</summary>
/// <param name="Run">The run.</param>
/// <param name="Segment">The segment.</param>
/// <param name="Passage">What was stored; null: nothing.</param>
internal sealed record StopRow(Run Run, Segment Segment, Passage? Passage)
{
    /// <summary>The reading; null: none.</summary>
    public Reading? Reading => Passage as Reading;

    /// <summary>Its place as it is typed.</summary>
    public string Place => Reading is { } reading ? Run.PlaceOf(reading) : $"{Run.Number}.{Segment.Number}";

    /// <summary>What was read: the levels, "missed", or that nothing was.</summary>
    public string Levels =>
        Passage switch
        {
            Reading reading => $"{reading.Levels}",
            Missed => "missed",
            _ => DrivingScreenWords.NotRead,
        };

    /// <summary>Whether somebody still has to say whether the reading is right.</summary>
    public bool IsOpenDoubt => Reading is { IsToBeAsked: true, LeftOut: false };

    /// <summary>
    /// Every row of a stop: the last run in route order, also what was skipped, missed or never read, then the doubtful readings of
    /// earlier runs that are still open.
    /// </summary>
    public static ImmutableArray<StopRow> Of(Study study) =>
        study is { Plan: { } plan, LastRun: { } run }
            ? [.. plan.Route.SelectMany(segment => On(run, segment)), .. Earlier(study, plan, run)]
            : [];

    /// <summary>Place of the row that holds the newest passage, from 0; 0 where there is none.</summary>
    public static int Newest(ImmutableArray<StopRow> rows)
    {
        Passage? newest = rows.Select(row => row.Passage).OfType<Passage>().MaxBy(passage => (passage.Mark.Place, passage.Segment));
        int place = newest is null ? -1 : rows.ToList().FindIndex(row => ReferenceEquals(row.Passage, newest));
        return Math.Max(0, place);
    }

    /// <summary>Place of the next row with an open doubt, from 0, the first again after the last; null: none is open.</summary>
    public static int? NextDoubt(ImmutableArray<StopRow> rows, int place)
    {
        int[] doubtful = [.. Enumerable.Range(0, rows.Length).Where(at => rows[at].IsOpenDoubt)];
        return doubtful.Length == 0 ? null : doubtful.Cast<int?>().FirstOrDefault(at => at > place) ?? doubtful[0];
    }

    private static IEnumerable<StopRow> On(Run run, Segment segment)
    {
        Passage[] passages = [.. run.Passages.Where(passage => passage.Segment == segment.Number)];
        Passage[] shown = passages.Any(passage => passage is Reading) ? [.. passages.OfType<Reading>()] : [.. passages.Take(1)];
        return shown.Length == 0 ? [new StopRow(run, segment, null)] : shown.Select(passage => new StopRow(run, segment, passage));
    }

    private static IEnumerable<StopRow> Earlier(Study study, Plan plan, Run last) =>
        OpenDoubts
            .In(study)
            .Where(doubt => doubt.Run.Number != last.Number)
            .Select(doubt => new StopRow(doubt.Run, plan.Route[doubt.Reading.Segment - 1], doubt.Reading));
}

/// <summary>What a line typed on the stop screen means: figures, cause letters and notes are about the marked row.</summary>
internal static class StopLine
{
    /// <summary>The entry line.</summary>
    /// <param name="typed">What was typed; not empty.</param>
    /// <param name="marked">The marked row; null: none.</param>
    public static string Of(string typed, StopRow? marked)
    {
        string line = Typing.LineOf(typed);
        if (marked is null || line.Length == 0)
        {
            return line;
        }

        string[] words = Typed.Words(line);
        bool isFlag = words[0].Length == 1 && SpoiltCauses.FromLetter(words[0][0]) is not null;
        return line[0] switch
        {
            ';' => $"note {marked.Place} {line}",
            _ when isFlag => $"flag {marked.Place} {line}",
            >= '0' and <= '9' when marked.Reading is null => $"fill {marked.Place} {line}",
            >= '0' and <= '9' => $"correct {marked.Place} {line}",
            _ => line,
        };
    }
}

/// <summary>
/// How the recordings are, at a stop: of the last run in full, of all runs how many there are; what a meter's log doubts. Never a level,
/// never a code.
/// </summary>
internal static class StopRecordings
{
    /// <summary>The lines; none where nothing was recorded or logged.</summary>
    public static IEnumerable<string> Of(Study study)
    {
        if (study.Recordings.Count > 0)
        {
            yield return DrivingScreenWords.RunsRecorded(study.Recordings.Count, study.Runs.Count);
        }

        if (study.Recordings.Find(recording => recording.Run == study.LastRun?.Number) is { } last)
        {
            foreach (string words in HealthWords.Of(RecordingHealth.Of(study, last)))
            {
                yield return $"  {words}";
            }
        }

        if (study.LogComparisons.LastOrDefault() is { } log)
        {
            string[] doubts = [.. log.DoubtsIn(study).Select(doubt => doubt.Run.PlaceOf(doubt.Reading))];
            string[] traffic = [.. log.TrafficIn(study).Select(found => found.Run.PlaceOf(found.Reading))];
            yield return DrivingScreenWords.LogSays(doubts, traffic);
        }
    }
}
