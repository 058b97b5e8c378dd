using System.Collections.Immutable;
using FieldSession.Acoustics;
using FieldSession.Signals;
using FieldSession.State;
using FieldSession.Statistics;
using MathNet.Numerics.Statistics;

namespace FieldSession.Comparing;

/// <summary>The recordings of a day, compared part by part.</summary>
internal sealed class RingDay
{
    private static readonly ImmutableArray<(string Name, int Band)> ThirdOctaves = [("160", -8), ("200", -7), ("250", -6), ("315", -5)];

    private readonly Study _study;
    private readonly ComparisonTerms _terms;
    private readonly Func<MeasuredDay, MeasuredDay> _merged;

    /// <summary>The recordings of a study whose ring is uncovered.</summary>
    public RingDay(Study study, string? reference, Func<MeasuredDay, MeasuredDay> merged)
    {
        _study = study;
        _merged = merged;
        ComparisonTerms terms = StudyTerms.Of(study);
        _terms = terms with
        {
            Reference = reference ?? terms.Reference,
            MarginDb = study.Plan!.RingMarginDb,
            ImpactMarginDb = study.Plan.RingMarginDb,
            Archive = study.Archive is { } archive ? StudyTerms.RingLinesOf(archive.Lines) : null,
            MainSegments = null,
            MainMeasure = MainMeasure.Steady,
        };
        Spectra = [.. SpectraOf()];
        Found = Spectra.IsEmpty ? null : RingSearch.Find(Grid, [.. Spectra.Select((line, code) => new SearchedLine(code, line.LevelsDb))]);
    }

    /// <summary>The mean spectra, by code.</summary>
    public ImmutableArray<RingSpectrum> Spectra { get; }

    /// <summary>Where the ring was found; null: nowhere.</summary>
    public FoundRing? Found { get; }

    /// <summary>The pairs.</summary>
    public IEnumerable<RingPair> Pairs()
    {
        Comparison main = BlindComparison.InFull(Steady((heard, gain) => heard.RingDb + gain), _terms);
        Comparison median = BlindComparison.Of(Steady((heard, gain) => heard.RingMedianDb + gain), _terms);
        (string Name, Comparison Compared)[] explored =
        [
            .. Explored().Select(one => (one.Name, BlindComparison.Of(Steady(one.Level), _terms))),
        ];
        Comparison lasting = BlindComparison.Of(
            _merged(HeardDay.Of(_study, MeasureClass.Impact, (heard, _) => heard.RingLastsS is { } time ? Math.Log(time) : null)),
            _terms
        );
        foreach (CodeComparison pair in main.Comparisons.Where(pair => pair.Classes.Steady is not null))
        {
            yield return new(pair.Code, pair.Reference, pair.Classes.Steady!)
            {
                HangsOnShortEvents = Of(median, pair.Code)?.Steady is { } other && other.Conclusion != pair.Classes.Steady!.Conclusion,
                Explored = ExploredOf(explored, pair.Code),
                Lasting = LastingOf(Of(lasting, pair.Code)?.Impact),
            };
        }
    }

    private static ImmutableArray<double> Grid { get; } =
    [.. Enumerable.Range(0, HeardSegment.SpectrumLength).Select(i => HeardSegment.SpectrumFromHz + (i * HeardSegment.SpectrumStepHz))];

    private static ClassComparisons? Of(Comparison comparison, string code) =>
        comparison.Comparisons.FirstOrDefault(pair => pair.Code == code)?.Classes;

    private MeasuredDay Steady(Func<HeardSegment, double, double?> level) => _merged(HeardDay.Of(_study, MeasureClass.Steady, level));

    private IEnumerable<(string Name, Func<HeardSegment, double, double?> Level)> Explored()
    {
        foreach ((string name, int band) in ThirdOctaves)
        {
            yield return (name, (heard, gain) => heard.BandDb(band) + gain);
        }

        if (Found is { } found)
        {
            yield return ("searched", (heard, gain) => InBand(heard, found.Band) + gain);
        }

        yield return ("prominence", (heard, _) => heard.ProminenceDb);
    }

    private static double? InBand(HeardSegment heard, FrequencyBand band) =>
        heard.SpectrumDb is { } levels
            ? new PowerSpectrum(
                HeardSegment.SpectrumStepHz,
                [
                    .. Enumerable.Repeat(0.0, (int)(HeardSegment.SpectrumFromHz / HeardSegment.SpectrumStepHz)),
                    .. levels.Select(level => Math.Pow(10, level / 10)),
                ]
            ).LevelDb(band)
            : null;

    private static ImmutableArray<ExploredBand> ExploredOf((string Name, Comparison Compared)[] explored, string code)
    {
        (string Name, Estimate? Overall)[] found = [.. explored.Select(one => (one.Name, Of(one.Compared, code)?.Steady?.Overall))];
        double[] p = Holm.Adjust([.. found.Select(one => one.Overall?.P).OfType<double>()]);
        int at = 0;
        return
        [
            .. found
                .Where(one => one.Overall is not null)
                .Select(one => new ExploredBand(one.Name, one.Overall!, one.Overall!.P is null ? null : p[at++])),
        ];
    }

    // the model is that of the readings; the difference of ln T is a ratio of times
    private static RingLasting? LastingOf(ClassComparison? compared) =>
        compared?.Overall is { } overall
            ? new(
                Math.Exp(overall.DifferenceDb),
                overall.Lo95Db is { } low ? Math.Exp(low) : null,
                overall.Hi95Db is { } high ? Math.Exp(high) : null,
                overall.P,
                compared.RunsCounted
            )
            : null;

    // mean of the runs' means in dB: each run of a code weighs the same
    private IEnumerable<RingSpectrum> SpectraOf()
    {
        MeasuredDay cells = Steady((heard, _) => heard.SpectrumDb is null ? null : 0);
        Dictionary<int, string> codes = cells
            .Levels.Where(level => !level.Spoilt)
            .Select(level => (level.Run, level.Code))
            .Distinct()
            .ToDictionary(pair => pair.Run, pair => pair.Code);
        return from recording in _study.Recordings
            where codes.ContainsKey(recording.Run)
            let lines = LinesOf(recording)
            where lines.Length > 0
            group MeanOf(lines) by codes[recording.Run] into ofCode
            let runs = ofCode.ToArray()
            select new RingSpectrum(ofCode.Key, MeanOf(runs), HalfWidthsOf(runs));
    }

    private ImmutableArray<double>[] LinesOf(RunRecording recording)
    {
        double gain = ChainCalibration.Of(_study, recording.Chain).GainDb ?? 0;
        return
        [
            .. from reading in _study.Runs[recording.Run - 1].Readings
            where !reading.LeftOut && !_study.Plan!.Route[reading.Segment - 1].Kind.IsImpact
            let heard = recording.During(reading)
            where heard is { SpectrumDb: not null, IsOverloaded: false }
            select heard.SpectrumDb!.Select(level => level + gain).ToImmutableArray(),
        ];
    }

    // Student's interval of a mean: t s / sqrt(n)
    private static ImmutableArray<double> HalfWidthsOf(ImmutableArray<double>[] runs)
    {
        if (runs.Length < 2)
        {
            return [];
        }

        double times = StudentT.Quantile(0.975, runs.Length - 1) / Math.Sqrt(runs.Length);
        return
        [
            .. Enumerable
                .Range(0, HeardSegment.SpectrumLength)
                .Select(i => times * ArrayStatistics.StandardDeviation([.. runs.Select(run => run[i])])),
        ];
    }

    private static ImmutableArray<double> MeanOf(ImmutableArray<double>[] lines) =>
        [.. Enumerable.Range(0, HeardSegment.SpectrumLength).Select(i => lines.Average(line => line[i]))];
}
