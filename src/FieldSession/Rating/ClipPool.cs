using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>A stretch of a run's recording that can be played.</summary>
/// <param name="Run">Number of the run.</param>
/// <param name="Sha256">SHA-256 of the recording's file, 64 hex digits.</param>
/// <param name="Channel">The channel, from 1.</param>
/// <param name="FromS">Where it begins, s from the first sample.</param>
/// <param name="Seconds">How long it is, s.</param>
public sealed record Clip(int Run, string Sha256, int Channel, double FromS, double Seconds);

/// <summary>The clips of one segment, all of one length.</summary>
/// <param name="Segment">Number of the segment.</param>
/// <param name="First">Clips of the pair's first code.</param>
/// <param name="Second">Clips of its second code.</param>
public sealed record SegmentClips(int Segment, ImmutableArray<Clip> First, ImmutableArray<Clip> Second)
{
    // what one keeps in the ear while the next one plays (own choice)
    private const double LongestS = 8;

    /// <summary>All of them.</summary>
    public IEnumerable<Clip> All => First.Concat(Second);

    /// <summary>Whether each code has so many runs.</summary>
    public bool Has(int runs) => RunsIn(First) >= runs && RunsIn(Second) >= runs;

    /// <summary>How many runs clips are of.</summary>
    public static int RunsIn(IEnumerable<Clip> clips) => clips.Select(clip => clip.Run).Distinct().Count();

    /// <summary>The same, each as long as the shortest of them, from its middle: a longer one would tell itself.</summary>
    public SegmentClips Evened()
    {
        double seconds = All.Select(clip => clip.Seconds).Append(LongestS).Min();
        Clip Cut(Clip clip) => clip with { FromS = clip.FromS + ((clip.Seconds - seconds) / 2), Seconds = seconds };
        return this with { First = [.. First.Select(Cut)], Second = [.. Second.Select(Cut)] };
    }
}

/// <summary>What a set's trials can be played from: the windows of clean readings, on segments that both codes have.</summary>
/// <param name="Segments">The clips by segment.</param>
/// <param name="Objection">Why nothing can be played, and what to do; null: something can.</param>
public sealed record ClipPool(ImmutableArray<SegmentClips> Segments, Objection? Objection)
{
    /// <summary>The clips that a pair can be played from.</summary>
    /// <param name="study">The study.</param>
    /// <param name="terms">Pair, kind and segment.</param>
    /// <param name="found">The recordings that are there, by the SHA-256 of their files; null: all.</param>
    public static ClipPool Of(Study study, ChoiceTerms terms, IReadOnlyCollection<string>? found = null)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(terms);
        RunRecording[] recordings = [.. RecordingsOf(study, terms).Where(recording => found?.Contains(recording.Sha256) ?? true)];
        SegmentClips[] segments =
        [
            .. study.Plan!.Route.Where(segment => terms.Segment is null || terms.Segment == segment.Number)
                .Select(segment => new SegmentClips(segment.Number, ClipsOf(study, recordings, terms.First, segment), ClipsOf(study, recordings, terms.Second, segment))),
        ];

        // two of one recording in a triangle would show which one is the odd one
        int needed = terms.Kind == ChoiceKind.Triangle ? 2 : 1;
        ImmutableArray<SegmentClips> usable = [.. segments.Where(segment => segment.Has(needed)).Select(segment => segment.Evened())];
        return new(usable, recordings.Select(recording => (recording.Chain, recording.RateHz)).Distinct().Skip(1).Any()
            ? new Objection(RatingWords.TwoChains(terms.First, terms.Second), RatingWords.OneChainForAll)
            : usable.IsEmpty
                ? new Objection(RatingWords.TooFewRunsHeard(Lacking(segments, terms, needed), needed, terms.Segment), RatingWords.ListenBeforePredicting)
                : null);
    }

    /// <summary>The recordings of the runs on a pair of codes, in the order of the runs.</summary>
    public static IEnumerable<RunRecording> RecordingsOf(Study study, ChoiceTerms terms)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(terms);
        return study.Recordings.Where(recording => study.Runs[recording.Run - 1].Code is var code && (code == terms.First || code == terms.Second))
            .OrderBy(recording => recording.Run);
    }

    private static ImmutableArray<Clip> ClipsOf(Study study, RunRecording[] recordings, SpecCode code, Segment segment) =>
    [
        .. from recording in recordings
           let run = study.Runs[recording.Run - 1]
           where run.Code == code
           from reading in run.Readings
           where reading is { Spoilt: null } && reading.Segment == segment.Number
           let heard = recording.During(reading)
           where heard is { IsOverloaded: false, HasSpeech: false }
           select new Clip(run.Number, recording.Sha256, recording.Channel, heard.FromS, heard.Seconds),
    ];

    private static SpecCode Lacking(SegmentClips[] segments, ChoiceTerms terms, int needed) =>
        Array.TrueForAll(segments, segment => SegmentClips.RunsIn(segment.First) < needed) ? terms.First : terms.Second;
}
