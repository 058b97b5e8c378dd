namespace FieldSession.Store.Recordings;

/// <summary>Reads samples without any header, as recorder programs write them into a pipe: low byte first, channels side by side.</summary>
/// <param name="bytes">The samples from the first on.</param>
/// <param name="format">How they are written.</param>
public sealed class RawReader(ByteSource bytes, SoundFormat format) : ISoundReader
{
    private byte[] _read = [];

    /// <inheritdoc/>
    public SoundFormat Format { get; } = SoundRates.Accepted(format);

    /// <inheritdoc/>
    public SoundClock? Clock => null;

    /// <inheritdoc/>
    public IReadOnlyList<string> Remarks => [];

    /// <inheritdoc/>
    public int Read(Span<double> samples)
    {
        int sampleBytes = (Format.Bits + 7) / 8;
        int frameBytes = sampleBytes * Format.Channels;
        int wanted = samples.Length / Format.Channels * frameBytes;
        if (_read.Length < wanted)
        {
            _read = new byte[wanted];
        }

        int whole = bytes.Read(_read.AsSpan(0, wanted)) / frameBytes;
        PcmSamples.Take(_read.AsSpan(0, whole * frameBytes), sampleBytes, Format.IsFloat, samples);
        return whole;
    }
}
