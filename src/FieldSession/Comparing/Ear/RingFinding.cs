using System.Collections.Immutable;
using FieldSession.Acoustics;
using FieldSession.Signals;
using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>
/// What recordings say about the ring of the air in the tyres, by code: the level of the ring band on the steady segments by the very run
/// model of the readings, as a class of its own with a margin of its own. Other bands, the search and the time after impacts are looked at
/// beside it, and carry no verdict.
/// </summary>
public sealed record RingFinding
{
    /// <summary>The band.</summary>
    public required FrequencyBand Band { get; init; }

    /// <summary>Largest difference that does not matter, dB.</summary>
    public required double MarginDb { get; init; }

    /// <summary>Whether the levels are sound pressure levels; else they are good for differences only.</summary>
    public required bool IsCalibrated { get; init; }

    /// <summary>Why no verdict can rest on the recordings; null: it can.</summary>
    public string? WhyNone { get; init; }

    /// <summary>How many runs have a recording that was taken.</summary>
    public int RunsHeard { get; init; }

    /// <summary>How many runs were driven.</summary>
    public int RunsDriven { get; init; }

    /// <summary>One entry for every code that is not the reference.</summary>
    public IReadOnlyList<RingPair> Pairs { get; init; } = [];

    /// <summary>Windows in which the recorder clipped, by code; they don't count.</summary>
    public IReadOnlyDictionary<string, int> Overloaded { get; init; } = ImmutableDictionary<string, int>.Empty;

    /// <summary>Where the ring was found without telling codes apart; null: none rises 3 dB out of the noise.</summary>
    public FoundRing? Found { get; init; }

    /// <summary>The mean spectra on the steady segments, by code.</summary>
    public IReadOnlyList<RingSpectrum> Spectra { get; init; } = [];

    /// <summary>The finding on a pair; null: nothing can be compared.</summary>
    public RingPair? Of(string code) => Pairs.FirstOrDefault(pair => pair.Code == code);

    /// <summary>What the recordings of a study say; null: there is none, or the ring is still covered (<see cref="RingCover"/>).</summary>
    /// <param name="study">The study.</param>
    /// <param name="reference">The code the others are compared with; null: the plan's.</param>
    /// <param name="merged">What makes one of the codes of different fittings that meant one spec; null: each code for itself.</param>
    public static RingFinding? Of(Study study, string? reference = null, Func<MeasuredDay, MeasuredDay>? merged = null)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.Plan is not { } plan || study.Recordings.IsEmpty || !RingCover.IsOpen(study))
        {
            return null;
        }

        RingDay day = new(study, reference, merged ?? (plain => plain));
        return new()
        {
            Band = plan.RingBand,
            MarginDb = plan.RingMarginDb,
            IsCalibrated = study.Recordings.TrueForAll(recording => ChainCalibration.Of(study, recording.Chain).GainDb is not null),
            WhyNone = RecordingsTrusted.WhyNot(study),
            RunsHeard = study.Recordings.Count,
            RunsDriven = study.Runs.Count,
            Overloaded = study
                .Recordings.GroupBy(recording => study.Runs[recording.Run - 1].Code.Digits)
                .ToImmutableDictionary(
                    ofCode => ofCode.Key,
                    ofCode => ofCode.Sum(recording => recording.Segments.Count(heard => heard.IsOverloaded))
                ),
            Found = day.Found,
            Spectra = day.Spectra,
            Pairs = [.. day.Pairs()],
        };
    }
}

/// <summary>The ring of one code against the reference.</summary>
/// <param name="Code">The code.</param>
/// <param name="Reference">The reference code.</param>
/// <param name="Main">The ring band on the steady segments.</param>
public sealed record RingPair(string Code, string Reference, ClassComparison Main)
{
    /// <summary>Whether the median over 1.28 s gives another word: then the result hangs on short events.</summary>
    public bool HangsOnShortEvents { get; init; }

    /// <summary>Other bands, each with an interval of its own; explored, no verdict.</summary>
    public IReadOnlyList<ExploredBand> Explored { get; init; } = [];

    /// <summary>How much longer the ring lasts after impacts; null: not determinable.</summary>
    public RingLasting? Lasting { get; init; }
}

/// <summary>A band that was looked at beside the planned one.</summary>
/// <param name="Name">What it is called: "200" for the third-octave band, "searched", "prominence".</param>
/// <param name="Estimate">The difference, dB.</param>
/// <param name="PHolm">p after Holm over all explored bands of the pair; null: not known.</param>
public sealed record ExploredBand(string Name, Estimate Estimate, double? PHolm);

/// <summary>How long the ring lasts after impacts, code over reference: from the run model of ln T.</summary>
/// <param name="Ratio">Ratio of the times; above 1: it lasts longer.</param>
/// <param name="Low95">Lower end of its 95 % interval; null: not known.</param>
/// <param name="High95">Upper end.</param>
/// <param name="P">p of "the same"; null: not known.</param>
/// <param name="Runs">Runs behind it.</param>
public sealed record RingLasting(double Ratio, double? Low95, double? High95, double? P, int Runs);

/// <summary>The mean spectrum of a code on the steady segments.</summary>
/// <param name="Code">The code.</param>
/// <param name="LevelsDb">dB per Hz at 100, 103.125, ... 400 Hz.</param>
/// <param name="HalfWidthsDb">Half the 95 % interval of each level over the code's runs, dB, one frequency at a time; empty: one run
/// alone.</param>
public sealed record RingSpectrum(string Code, ImmutableArray<double> LevelsDb, ImmutableArray<double> HalfWidthsDb);
