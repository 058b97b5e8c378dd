using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using FieldSession.Journal;
using FieldSession.Measures;
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
            .. study
                .Plan!.Route.Where(segment => terms.Segment is null || terms.Segment == segment.Number)
                .Select(segment => new SegmentClips(
                    segment.Number,
                    ClipsOf(study, recordings, terms.First, segment),
                    ClipsOf(study, recordings, terms.Second, segment)
                )),
        ];

        // two of one recording in a triangle would show which one is the odd one
        int needed = terms.Kind == ChoiceKind.Triangle ? 2 : 1;
        ImmutableArray<SegmentClips> usable = [.. segments.Where(segment => segment.Has(needed)).Select(segment => segment.Evened())];
        return new(
            usable,
            recordings.Select(recording => (recording.Chain, recording.RateHz)).Distinct().Skip(1).Any()
                    ? new Objection(RatingWords.TwoChains(terms.First, terms.Second), RatingWords.OneChainForAll)
                : usable.IsEmpty
                    ? new Objection(
                        RatingWords.TooFewRunsHeard(Lacking(segments, terms, needed), needed, terms.Segment),
                        RatingWords.ListenBeforePredicting
                    )
                : null
        );
    }

    /// <summary>The recordings of the runs on a pair of codes, in the order of the runs.</summary>
    public static IEnumerable<RunRecording> RecordingsOf(Study study, ChoiceTerms terms)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(terms);
        return study
            .Recordings.Where(recording => study.Runs[recording.Run - 1].Code is var code && (code == terms.First || code == terms.Second))
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

/// <summary>One trial from recordings as the lot drew it.</summary>
/// <param name="Heard">What the journal keeps of it, once somebody has chosen.</param>
/// <param name="Clips">The clip of each place.</param>
public sealed record DrawnTrial(ClipsHeard Heard, ImmutableArray<Clip> Clips)
{
    /// <summary>
    /// Draws order, segment and runs, each alike likely and apart from every other trial: so a guess is right with the chance of the exact
    /// test whatever habit or memory it follows, and nothing that could be read before is anywhere.
    /// </summary>
    /// <param name="pool">What can be played.</param>
    /// <param name="terms">Pair and kind.</param>
    /// <param name="lot">Where chance comes from.</param>
    public static DrawnTrial Of(ClipPool pool, ChoiceTerms terms, ILot lot)
    {
        ArgumentNullException.ThrowIfNull(pool);
        ArgumentNullException.ThrowIfNull(terms);
        ArgumentNullException.ThrowIfNull(lot);
        ImmutableArray<string> orders = Counterbalance.Orders(terms.Places);
        string order = orders[lot.Below(orders.Length)];
        SegmentClips segment = pool.Segments[lot.Below(pool.Segments.Length)];
        List<Clip> drawn = [];
        foreach (char code in order)
        {
            Clip[] left = [.. (code == 'A' ? segment.First : segment.Second).Where(clip => !drawn.Exists(other => other.Run == clip.Run))];
            drawn.Add(left[lot.Below(left.Length)]);
        }

        return new(new ClipsHeard(order, segment.Segment, [.. drawn.Select(clip => clip.Run)]), [.. drawn]);
    }
}

/// <summary>
/// The order in which codes are presented in a set of forced choices: every order equally often, in blocks that hold each
/// once, shuffled inside the block by the bytes of a SHA-256 hash. The same set gets the same order wherever it is planned, and no
/// one in the car can tell the next one in the head. Equal use of all orders: common practice of sensory testing (from memory).
/// </summary>
public static class Counterbalance
{
    private static ImmutableArray<string> Pairs => ["AB", "BA"];

    private static ImmutableArray<string> Triangles => ["AAB", "ABA", "BAA", "BBA", "BAB", "ABB"];

    /// <summary>Every order of a trial.</summary>
    /// <param name="places">2: a pair; 3: a triangle.</param>
    public static ImmutableArray<string> Orders(int places) => places == 3 ? Triangles : Pairs;

    /// <summary>The presentations of a set.</summary>
    /// <param name="places">2: a pair; 3: a triangle.</param>
    /// <param name="trials">How many trials, 1 or more.</param>
    /// <param name="seed">What names the set: study, number of the set, codes.</param>
    public static ImmutableList<string> Of(int places, int trials, string seed)
    {
        ImmutableArray<string> orders = Orders(places);
        ImmutableList<string>.Builder made = ImmutableList.CreateBuilder<string>();
        for (int block = 0; made.Count < trials; block++)
        {
            made.AddRange(Shuffled(orders, SHA256.HashData(Encoding.UTF8.GetBytes($"{seed}|{block}"))).Take(trials - made.Count));
        }

        return made.ToImmutable();
    }

    private static IEnumerable<string> Shuffled(ImmutableArray<string> orders, byte[] bytes) =>
        orders
            .Select(
                (order, place) => (Order: order, Lot: (bytes[place * 4] << 16) + (bytes[(place * 4) + 1] << 8) + bytes[(place * 4) + 2])
            )
            .OrderBy(drawn => drawn.Lot)
            .Select(drawn => drawn.Order);
}
