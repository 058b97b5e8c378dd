namespace FieldSession.Signals;

/// <summary>Takes a block from a stream of samples.</summary>
/// <param name="block">The samples; good until the next block.</param>
internal delegate void BlockTaker(ReadOnlySpan<double> block);

/// <summary>Cuts a stream into blocks of one second that begin every half second.</summary>
/// <param name="rateHz">Samples a second; need not be a whole number.</param>
/// <param name="into">Where the blocks go.</param>
internal sealed class HalfOverlap(double rateHz, BlockTaker into) : ISampleTaker
{
    private readonly double[] _block = new double[(int)rateHz];
    private int _filled;
    private long _begun;

    /// <summary>A Hann window as long as a block.</summary>
    public static double[] Hann(double rateHz)
    {
        int length = (int)rateHz;
        return [.. Enumerable.Range(0, length).Select(i => 0.5 - (0.5 * Math.Cos(2 * Math.PI * i / length)))];
    }

    /// <inheritdoc/>
    public void Take(ReadOnlySpan<double> samples)
    {
        while (samples.Length > 0)
        {
            int taken = Math.Min(samples.Length, _block.Length - _filled);
            samples[..taken].CopyTo(_block.AsSpan(_filled));
            _filled += taken;
            samples = samples[taken..];
            if (_filled == _block.Length)
            {
                into(_block);
                int hop = (int)(StartOf(_begun + 1) - StartOf(_begun));
                _begun++;
                _block.AsSpan(hop).CopyTo(_block);
                _filled -= hop;
            }
        }
    }

    private long StartOf(long block) => (long)Math.Round(block * rateHz / 2);
}

/// <summary>Takes samples one block after the other; a block has any length.</summary>
public interface ISampleTaker
{
    /// <summary>Takes the next samples, as numbers of full scale.</summary>
    void Take(ReadOnlySpan<double> samples);
}
