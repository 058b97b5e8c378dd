using FieldSession.Signals;

namespace FieldSession.Acoustics;

/// <summary>Gathers what one window of a recording holds, while the recording goes by.</summary>
internal sealed class WindowMeter
{
    private readonly TimeWindow _window;
    private readonly MeterScale _scale;
    private readonly WelchMean _low;
    private readonly WelchMean _full;
    private readonly ClippedSamples _clipped;
    private readonly List<double> _fast = [];
    private double _a;
    private double _c;
    private double _z;
    private double _fastMost;
    private double _fastLeast = double.PositiveInfinity;
    private double _slowMost;
    private long _samples;

    /// <summary>A meter that has heard nothing yet.</summary>
    public WindowMeter(TimeWindow window, MeterScale scale)
    {
        _window = window;
        _scale = scale;
        _low = new(scale.Low, scale.Ring);
        _full = new(scale.Full);
        _clipped = new(scale.FullScale);
    }

    /// <summary>Takes a piece of the window.</summary>
    /// <param name="piece">Samples and what the filters made of them.</param>
    /// <param name="gridAt">Which sample of the piece is the first on the grid of 0.125 s, and past the first second; may lie behind the
    /// piece.</param>
    /// <param name="settledAt">Which sample of the piece is past the first second of the recording; may lie behind the piece.</param>
    public void Take(WeightedPiece piece, int gridAt, int settledAt)
    {
        _samples += piece.Samples.Length;
        _z += SumOfSquares(piece.Samples);
        _full.Take(piece.Samples);
        _clipped.Take(piece.Samples);
        if (!_scale.HasWeightings)
        {
            return;
        }

        _a += SumOfSquares(piece.A);
        _c += SumOfSquares(piece.C);
        _fastMost = Math.Max(_fastMost, Most(piece.Fast));
        _slowMost = Math.Max(_slowMost, Most(piece.Slow));
        for (int i = settledAt; i < piece.Fast.Length; i++)
        {
            _fastLeast = Math.Min(_fastLeast, piece.Fast[i]);
        }

        for (int i = gridAt; i < piece.Fast.Length; i += _scale.GridStep)
        {
            _fast.Add(piece.Fast[i]);
        }
    }

    /// <summary>Takes a piece of the low branch of the window.</summary>
    public void TakeLow(ReadOnlySpan<double> samples) => _low.Take(samples);

    /// <summary>What the window held.</summary>
    public WindowLevels Finish()
    {
        double[] sorted = [.. _fast.Order()];
        PowerSpectrum? low = _low.Spectrum;
        return new()
        {
            Window = double.IsFinite(_window.ToS) ? _window : _window with { ToS = (double)_samples / _scale.RateHz },
            HeardS = (double)_samples / _scale.RateHz,
            LAeqDb = Mean(_a),
            LCeqDb = Mean(_c),
            LZeqDb = Mean(_z),
            LAFmaxDb = Level.OfMeanSquare(_fastMost),
            LAFminDb = double.IsFinite(_fastLeast) ? Level.OfMeanSquare(_fastLeast) : null,
            LASmaxDb = Level.OfMeanSquare(_slowMost),
            L5Db = Exceeded(sorted, 0.05),
            L10Db = Exceeded(sorted, 0.10),
            L50Db = Exceeded(sorted, 0.50),
            L90Db = Exceeded(sorted, 0.90),
            L95Db = Exceeded(sorted, 0.95),
            SwingDb = Swing(),
            Bands = low is null ? [] : [.. BandLevels(low)],
            RingDb = low?.LevelDb(_scale.Ring),
            RingMedianDb = _low.FollowedMedianDb,
            ProminenceDb = low is null ? null : RingBand.ProminenceDb(low, _scale.Ring),
            ClipEvents = _clipped.Events,
            Spectrum = low,
        };
    }

    private static double SumOfSquares(ReadOnlySpan<double> samples)
    {
        double sum = 0;
        foreach (double sample in samples)
        {
            sum += sample * sample;
        }

        return sum;
    }

    private static double Most(ReadOnlySpan<double> numbers)
    {
        double most = 0;
        foreach (double number in numbers)
        {
            most = Math.Max(most, number);
        }

        return most;
    }

    private static double? Exceeded(double[] sorted, double share) =>
        sorted.Length == 0 ? null : Level.OfMeanSquare(Quantile.OfSorted(sorted, 1 - share));

    private double? Mean(double sum) => _samples == 0 ? null : Level.OfMeanSquare(sum / _samples);

    private double? Swing() =>
        _fast.Count < 2 || _fast.Contains(0)
            ? null
            : Quantile.Median(_fast.Zip(_fast.Skip(1), (one, next) => Math.Abs(10 * Math.Log10(next / one))));

    private IEnumerable<BandLevel> BandLevels(PowerSpectrum low)
    {
        PowerSpectrum? full = _full.Spectrum;
        for (int n = MeterScale.LowestBand; n <= _scale.HighestBand; n++)
        {
            PowerSpectrum? spectrum = n <= MeterScale.HighestLowBand ? low : full;
            if (spectrum is not null)
            {
                yield return new(n, spectrum.LevelDb(ThirdOctave.Band(n)));
            }
        }
    }
}

/// <summary>
/// Counts where a recorder clipped: three and more neighbouring samples that are equal and at full scale. Common practice, no source.
/// </summary>
/// <param name="fullScale">The largest positive sample that the format knows, as a number of full scale.</param>
public sealed class ClippedSamples(double fullScale) : ISampleTaker
{
    private const int Fewest = 3;
    private double _last;
    private int _equal;

    /// <summary>Events so far.</summary>
    public int Events { get; private set; }

    /// <inheritdoc/>
    public void Take(ReadOnlySpan<double> samples)
    {
        foreach (double sample in samples)
        {
            if (Math.Abs(sample) < fullScale)
            {
                _equal = 0;
            }
            else
            {
                _equal = _equal > 0 && sample == _last ? _equal + 1 : 1;
                Events += _equal == Fewest ? 1 : 0;
                _last = sample;
            }
        }
    }
}
