using System.Collections.Immutable;
using FieldSession.Acoustics;
using FieldSession.Journal;
using FieldSession.Listening;
using FieldSession.Signals;
using FieldSession.State;
using FieldSession.Store.Disks;
using FieldSession.Store.Recordings;

namespace FieldSession.Terminal.Commands;

/// <summary>One file that was listened to: the facts it brings, and what was refused of it.</summary>
/// <param name="Path">The file, for the answer alone; it is nowhere else.</param>
/// <param name="Facts">What is to be written, in order.</param>
/// <param name="Refused">Why something was not taken, and what to do.</param>
/// <param name="Remarks">What is odd about it although it was taken.</param>
internal sealed record FileListened(
    string Path,
    ImmutableArray<Entry> Facts,
    ImmutableArray<string> Refused,
    ImmutableArray<string> Remarks
)
{
    /// <summary>The runs that it was taken for.</summary>
    public IEnumerable<int> Runs => Facts.OfType<RecordingTaken>().Select(taken => taken.Recording.Run);

    /// <summary>Listens to all files, each on a core of its own; nothing is written.</summary>
    public static FileListened[] Of(Study study, AskedListening asked)
    {
        // the order of the files stays; two of them at a time keep two cores busy
        Placed[] placed = [.. asked.Files.AsParallel().AsOrdered().Select(path => Place(study, asked, path))];
        int[] twice =
        [
            .. placed.SelectMany(file => file.Runs).GroupBy(run => run.Number).Where(runs => runs.Skip(1).Any()).Select(runs => runs.Key),
        ];
        return [.. placed.AsParallel().AsOrdered().Select(file => Listened(study, asked, file, twice))];
    }

    private static Placed Place(Study study, AskedListening asked, string path) =>
        Attempt(
            path,
            () =>
            {
                Survey survey = path == AskedLevels.Piped ? throw new NotAFileException(path) : RunSound.Survey(path, asked.Channel);
                RecordingClock clock = RecordingClock.Of(survey, asked.Terms, study.ClockMarks.Select(mark => mark.At));
                Objection? against = SurveyObjections.Of(survey) ?? clock.Objection;
                ChainCalibrated? gain = GainOf(study, asked, survey, clock);
                if (against is not null)
                {
                    return new Placed(
                        path,
                        survey,
                        clock,
                        [],
                        gain,
                        gain is not null && clock.Objection is not null ? null : against.ToString()
                    );
                }

                (ImmutableArray<Run> runs, Objection? none) = RunsHeard.Of(study, survey, clock, asked.Terms.Run);

                // a file with the calibrator's tone and no run is what was recorded before or after the driving
                return new Placed(path, survey, clock, runs, gain, gain is null ? none?.ToString() : null);
            }
        );

    private static ChainCalibrated? GainOf(Study study, AskedListening asked, Survey survey, RecordingClock clock) =>
        (survey, asked) switch
        {
            ({ Tone: { } tone }, _) => new ChainCalibrated(
                new ChainGain(
                    asked.Chain,
                    Math.Round(tone.GainDb(asked.ToneDb ?? study.Plan!.CalibratorDb), 3),
                    (clock.Offset is null ? survey.WrittenAt ?? DateTimeOffset.UnixEpoch : clock.BegunAt).AddSeconds(tone.FromS),
                    survey.Sha256
                )
            ),
            (_, { GainDb: { } given }) => new ChainCalibrated(new ChainGain(asked.Chain, given, DateTimeOffset.UnixEpoch, null)),
            _ => null,
        };

    private static FileListened Listened(Study study, AskedListening asked, Placed file, int[] twice)
    {
        string[] against =
        [
            .. file.Refused is { } why ? [why] : Array.Empty<string>(),
            .. file.Runs.Select(run => AgainstRun(study, asked, file, run, twice)).OfType<string>(),
        ];
        if (against.Length > 0 || file.Runs.IsEmpty)
        {
            return new(file.Path, file.Gain is { } tone && file.Refused is null ? [tone] : [], [.. against], []);
        }

        ImmutableArray<MeteredRun> metered = MeteredRun.Of(file.Runs, study.Plan!, asked.Chain, file.Clock!.Offset!);
        ImmutableArray<TimeWindow> windows = [.. metered.SelectMany(run => run.Windows).Select(window => window.Window)];
        ImmutableArray<TimeWindow> impacts = [.. metered.SelectMany(run => run.Impacts).Select(window => window.Window)];
        return Attempt(
            file.Path,
            () =>
            {
                RecordingLevels levels = RunSound.Levels(file.Path, asked.Channel, windows, impacts, study.Plan!.RingBand);
                HeardRun[] runs = [.. metered.Select(run => HeardRun.Of(run, file.Survey!, file.Clock, levels))];
                IEnumerable<Entry> taken = runs.Where(run => run.Objection is null)
                    .Select(run => new RecordingTaken(asked.IsSparse ? run.Recording.Sparse() : run.Recording));
                return new FileListened(
                    file.Path,
                    [.. file.Gain is { } gain ? [gain] : Array.Empty<Entry>(), .. taken],
                    [.. runs.Select(run => run.Objection?.ToString()).OfType<string>()],
                    [.. SurveyObjections.Remarks(file.Survey!)]
                );
            }
        );
    }

    private static string? AgainstRun(Study study, AskedListening asked, Placed file, Run run, int[] twice)
    {
        bool hasOther = study.Recordings.Exists(known => known.Run == run.Number && known.Sha256 != file.Survey!.Sha256);
        return twice.Contains(run.Number) ? ListenWords.TwoForOneRun(run.Number)
            : hasOther && !asked.Again ? ListenWords.AnotherIsThere(run.Number)
            : null;
    }

    private static Placed Attempt(string path, Func<Placed> read) => Attempt(read, why => new(path, null, null, [], null, why));

    private static FileListened Attempt(string path, Func<FileListened> read) => Attempt(read, why => new(path, [], [why], []));

    private static T Attempt<T>(Func<T> read, Func<string, T> refused)
    {
        try
        {
            return read();
        }
        catch (RecordingRefusedException damaged)
        {
            return refused(damaged.Message);
        }
        catch (NotAFileException)
        {
            return refused(ListenWords.PipeIsReadOnce);
        }
        catch (Exception missing) when (missing is IOException or UnauthorizedAccessException)
        {
            return refused(ListenWords.CantBeRead);
        }
    }

    /// <summary>A file with its place in time.</summary>
    private sealed record Placed(
        string Path,
        Survey? Survey,
        RecordingClock? Clock,
        ImmutableArray<Run> Runs,
        ChainCalibrated? Gain,
        string? Refused
    );
}
