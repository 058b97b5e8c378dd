using System.Globalization;
using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>A row of the table of readings: a reading, or a planned one that was missed.</summary>
/// <param name="Run">The run.</param>
/// <param name="Segment">The segment.</param>
/// <param name="Take">Which reading of this run and segment it is, from 1.</param>
internal sealed record ReadingRow(Run Run, Segment Segment, int Take)
{
    private const int LongestNote = 20_000;

    /// <summary>The reading; null: missed.</summary>
    public Reading? Reading { get; init; }

    /// <summary>The reading as the comparison sees it; null: missed.</summary>
    public MeasuredLevel? Level { get; init; }

    /// <summary>From the first run's start to the middle of this run, minutes; null: unknown.</summary>
    public double? Minutes { get; init; }

    /// <summary>The car, as the comparison sees it; null: there is one car.</summary>
    public string? Car { get; init; }

    /// <summary>Runs driven side by side share it; null: driven alone.</summary>
    public string? Slot { get; init; }

    /// <summary>The session, as the comparison sees it: what cars drove side by side is one.</summary>
    public int Session { get; init; }

    /// <summary>Where the reading, or that it was missed, is in the journal; null: the run ended before.</summary>
    public LineMark? Mark { get; init; }

    /// <summary>Runs of the order, as the comparison knows them; null: not known.</summary>
    public string? OrderRuns { get; init; }

    /// <summary>What was said on this segment of this run; null: nothing.</summary>
    public string? Note { get; init; }

    /// <summary>
    /// The rows of a study: by run, then in route order, then as typed, so that the rows of an ended run 1 tell the route.
    /// </summary>
    public static IEnumerable<ReadingRow> Of(ExportSource source)
    {
        if (source.Study.Plan is not { } plan)
        {
            yield break;
        }

        ILookup<int, MeasuredLevel> levels = source.Day.Levels.ToLookup(level => level.Run);
        ILookup<(int?, int?), string> notes = source.Study.Notes.ToLookup(note => (note.Run, note.Segment), note => note.Words);
        int firstSession = source.Study.Runs.Select(run => run.Session).DefaultIfEmpty().Min();
        foreach (Run run in source.Study.Runs)
        {
            foreach (ReadingRow row in OfRun(run, plan, [.. levels[run.Number]], firstSession))
            {
                yield return row with
                {
                    Note = row.Take == 1 ? Joined(notes[(run.Number, row.Segment.Number)]) : null,
                };
            }
        }
    }

    private static IEnumerable<ReadingRow> OfRun(Run run, Plan plan, MeasuredLevel[] levels, int firstSession)
    {
        MeasuredLevel? first = levels.FirstOrDefault();
        ReadingRow of = new(run, plan.Route[0], 0)
        {
            Minutes = first?.Minutes,
            Car = first?.Car ?? run.Car,
            Slot = first?.Slot,
            Session =
                int.TryParse(first?.Session, NumberStyles.None, CultureInfo.InvariantCulture, out int session) ? session
                : first is null ? run.Session
                : firstSession,
        };
        ILookup<int, (Reading Reading, MeasuredLevel Level)> read = StudyReadings
            .InRouteOrder(run)
            .Zip(levels)
            .ToLookup(pair => pair.First.Segment);
        foreach (Segment segment in plan.Route)
        {
            Missed? missed = run.Passages.OfType<Missed>().LastOrDefault(passage => passage.Segment == segment.Number);
            int take = 0;
            foreach ((Reading reading, MeasuredLevel level) in read[segment.Number])
            {
                yield return of with
                {
                    Segment = segment,
                    Take = ++take,
                    Reading = reading,
                    Level = level,
                    Mark = reading.Mark,
                };
            }

            // while a run is on, what has not been reached yet is not missed
            if (take == 0 && (missed is not null || !run.IsOn))
            {
                yield return of with
                {
                    Segment = segment,
                    Take = 1,
                    Mark = missed?.Mark,
                };
            }
        }
    }

    // a row that is too long could not be read back
    private static string? Joined(IEnumerable<string> notes)
    {
        string all = string.Join(" / ", notes);
        return all.Length switch
        {
            0 => null,
            // not between the halves of a pair, which no file can hold alone
            > LongestNote => all[..(char.IsHighSurrogate(all[LongestNote - 1]) ? LongestNote - 1 : LongestNote)] + ExportWords.NotesGoOn,
            _ => all,
        };
    }
}
