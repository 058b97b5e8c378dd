using FieldSession.Signals;

namespace FieldSession.Acoustics;

/// <summary>Counts where a recorder clipped: three and more neighbouring samples that are equal and at full scale. Common practice, no source.</summary>
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
