using System.Collections.Immutable;
using FieldSession.Aligning;
using FieldSession.Journal;
using FieldSession.Signals;
using FieldSession.State;

namespace FieldSession.Listening;

/// <summary>A meter's log as it is held against what was typed.</summary>
/// <param name="Sha256">SHA-256 of the file.</param>
/// <param name="Levels">Its levels in the order of time; seconds from 1970 on the meter's clock.</param>
/// <param name="StepS">Seconds from one level to the next.</param>
public sealed record LogBesideTyped(string Sha256, ImmutableArray<LoggedLevel> Levels, double StepS)
{
    private const double WindowS = 8;
    private const double TypingS = 2;
    private const double NearS = 30;
    private const double FarS = 900;
    private const double GivenHalfRangeS = 1;

    // up to here a log is fine enough to show the display of F, and S can be made of it
    private const double FineStepS = 0.3;

    /// <summary>What the log says about the readings of a study; or why it can say nothing, and what to do.</summary>
    /// <param name="study">The study.</param>
    /// <param name="offsetS">The meter's clock minus the laptop's, as somebody gave it, s; null: the log and the typed levels have to say
    /// it.</param>
    public (LogComparison? Comparison, Objection? Objection) Of(Study study, double? offsetS)
    {
        ArgumentNullException.ThrowIfNull(study);
        TypedRange[] typed =
        [
            .. from run in study.Runs
            from window in HeardWindow.Of(run, study.Plan!.Route, Same)
            where !window.IsImpact
            select new TypedRange(window.StoredS, window.Reading.Levels.LowDb, window.Reading.Levels.HighDb),
        ];
        ClockOffset clock = offsetS is { } given ? new(given, GivenHalfRangeS, ClockSource.Given) : ClockOf(typed);
        Entry[] entries =
        [
            .. study.Runs.SelectMany(run => HeardWindow.Of(run, study.Plan!.Route, clock).Select(window => Beside(run, window))),
        ];
        return Array.TrueForAll(entries, entry => entry.Beside.LevelsDb.IsEmpty)
            ? (null, new Objection(ListeningWords.LogHoldsNoReading, ListeningWords.GiveOffset))
            : (Compared(entries, clock), null);
    }

    private static ClockOffset Same => new(0, 0, ClockSource.FileTime);

    // the log's own times, where the typed levels don't contradict them; else the typed levels, nearby first
    private ClockOffset ClockOf(TypedRange[] typed)
    {
        ClockOffset told = new(0, ClockOffset.FileTimeHalfRangeS, ClockSource.FileTime);
        TypedAlignment? near = TypedAlignment.Of(typed, Levels, WindowS, -NearS, NearS);
        bool isAtEdge = near is not null && (near.LowS <= -NearS + 1 || near.HighS >= NearS - 1);
        TypedAlignment? best = near is null || isAtEdge ? TypedAlignment.Of(typed, Levels, WindowS, -FarS, FarS) ?? near : near;
        return best is not null && told.Contradicts(best.Offset, 0) ? best.Offset with { OffsetS = best.Offset.OffsetS + TypingS } : told;
    }

    private Entry Beside(Run run, HeardWindow window)
    {
        double[] levels =
        [
            .. Levels
                .SkipWhile(level => level.AtS < window.Window.FromS)
                .TakeWhile(level => level.AtS < window.Window.ToS)
                .Select(level => level.LevelDb),
        ];
        TypedRange typed = new(window.StoredS, window.Reading.Levels.LowDb, window.Reading.Levels.HighDb);

        // off an impact the highest level is read
        return new(run, window, new BesideLog(typed, window.IsImpact && levels.Length > 0 ? [levels.Max()] : [.. levels]));
    }

    private LogComparison Compared(Entry[] entries, ClockOffset clock)
    {
        Entry[] steady = [.. entries.Where(entry => !entry.Window.IsImpact)];
        Entry[] impacts = [.. entries.Where(entry => entry.Window.IsImpact)];
        TypedBesideLog ofSteady = TypedBesideLog.Of([.. steady.Select(entry => entry.Beside)], StepS);
        TypedBesideLog ofImpacts = TypedBesideLog.Of([.. impacts.Select(entry => entry.Beside)], StepS);
        return new(Sha256, [.. Found(steady, ofSteady), .. Found(impacts, ofImpacts)])
        {
            OffsetS = Math.Round(clock.OffsetS, 3),
            HalfRangeS = Math.Round(clock.HalfRangeS, 3),
            ClockBy = clock.Source,
            MedianDb = ofSteady.MedianDb,
            LimitDb = ofSteady.LimitDb,
            IsLikeSlow = IsLikeSlow(steady),
        };
    }

    private static IEnumerable<LoggedReading> Found(Entry[] entries, TypedBesideLog beside) =>
        entries.Zip(
            beside.Entries,
            (entry, found) =>
                new LoggedReading(
                    entry.Run.Number,
                    entry.Window.Reading.Mark.Number,
                    found.Fit,
                    found.ResidualDb is { } residual ? Math.Round(residual, 2) : null,
                    found.HasTraffic
                )
        );

    private bool? IsLikeSlow(Entry[] steady)
    {
        Entry[] ranges = [.. steady.Where(entry => !entry.Window.Reading.Levels.IsSingle && entry.Beside.LevelsDb.Length > 1)];
        return StepS > FineStepS || ranges.Length == 0
            ? null
            : MeterSetting.IsLikeSlow(
                [.. ranges.Select(entry => entry.Window.Reading.Levels.WidthDb)],
                [.. ranges.Select(entry => WidthOf(entry.Beside.LevelsDb))],
                [.. ranges.Select(entry => WidthOf(Slowed(entry.Beside.LevelsDb)))]
            );
    }

    private static double WidthOf(IEnumerable<double> levels)
    {
        double[] sorted = [.. levels.Order()];
        return Quantile.OfSorted(sorted, 0.9) - Quantile.OfSorted(sorted, 0.1);
    }

    // time weighting S on the power that F has shown
    private IEnumerable<double> Slowed(ImmutableArray<double> levels)
    {
        double keep = Math.Exp(-StepS);
        double power = Math.Pow(10, levels[0] / 10);
        foreach (double level in levels)
        {
            power = (keep * power) + ((1 - keep) * Math.Pow(10, level / 10));
            yield return 10 * Math.Log10(power);
        }
    }

    /// <summary>A reading with its window and what the log holds there.</summary>
    private sealed record Entry(Run Run, HeardWindow Window, BesideLog Beside);
}
