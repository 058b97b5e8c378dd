using System.Buffers.Binary;

namespace FieldSession.Store.Recordings;

/// <summary>
/// Reads WAV: RIFF, RF64 and BW64; whole numbers of 16 to 32 bits and floating point of 32 and 64. What a recorder left unclosed, or what
/// is shorter than it says, is read as far as whole frames go, with a remark. Needs no way back, so a pipe will do.
/// </summary>
public sealed class WavReader : ISoundReader
{
    private readonly ByteSource _bytes;
    private readonly WavHeader _header;
    private readonly int _frameBytes;
    private readonly List<string> _remarks = [];
    private byte[] _read = [];
    private long _left;
    private bool _ended;

    /// <summary>Reads the header.</summary>
    /// <param name="bytes">The file from its first byte.</param>
    /// <exception cref="RecordingRefusedException">The file is no WAV that levels can be taken from.</exception>
    public WavReader(ByteSource bytes)
    {
        _bytes = bytes;
        _header = WavHeader.Read(bytes);
        _frameBytes = _header.SampleBytes * _header.Format.Channels;
        _left = _header.SoundBytes ?? long.MaxValue;
        if (_header.SoundBytes is null)
        {
            _remarks.Add(RecordingWords.NotClosed);
        }
    }

    /// <inheritdoc/>
    public SoundFormat Format => _header.Format;

    /// <inheritdoc/>
    public SoundClock? Clock => _header.Clock;

    /// <inheritdoc/>
    public IReadOnlyList<string> Remarks => _remarks;

    /// <inheritdoc/>
    public int Read(Span<double> samples)
    {
        long frames = Math.Min(samples.Length / Format.Channels, _left / _frameBytes);
        int wanted = (int)frames * _frameBytes;
        if (_read.Length < wanted)
        {
            _read = new byte[wanted];
        }

        int got = _bytes.Read(_read.AsSpan(0, wanted));
        if (got < wanted && _header.SoundBytes is not null && !_ended)
        {
            _ended = true;
            _remarks.Add(RecordingWords.CutShort((double)((_left / _frameBytes) - (got / _frameBytes)) / Format.RateHz));
        }

        int whole = got / _frameBytes;
        _left -= got;
        PcmSamples.Take(_read.AsSpan(0, whole * _frameBytes), _header.SampleBytes, Format.IsFloat, samples);
        return whole;
    }
}

/// <summary>Samples as WAV and pipes write them, low byte first, made numbers of full scale.</summary>
internal static class PcmSamples
{
    /// <summary>Makes numbers of bytes.</summary>
    /// <param name="bytes">Whole samples.</param>
    /// <param name="sampleBytes">2, 3 or 4 of whole numbers; 4 or 8 of floating point.</param>
    /// <param name="isFloat">Whether they are floating point.</param>
    /// <param name="samples">Room for all of them.</param>
    /// <exception cref="RecordingRefusedException">A floating-point sample is not a number.</exception>
    public static void Take(ReadOnlySpan<byte> bytes, int sampleBytes, bool isFloat, Span<double> samples)
    {
        switch (sampleBytes)
        {
            case 2:
                Of16(bytes, samples);
                break;
            case 3:
                Of24(bytes, samples);
                break;
            case 4 when !isFloat:
                Of32(bytes, samples);
                break;
            default:
                OfFloat(bytes, sampleBytes, samples);
                break;
        }
    }

    private static void Of16(ReadOnlySpan<byte> bytes, Span<double> samples)
    {
        for (int i = 0; i < bytes.Length / 2; i++)
        {
            samples[i] = BinaryPrimitives.ReadInt16LittleEndian(bytes[(2 * i)..]) / 32768.0;
        }
    }

    private static void Of24(ReadOnlySpan<byte> bytes, Span<double> samples)
    {
        for (int i = 0; i < bytes.Length / 3; i++)
        {
            int at = 3 * i;
            samples[i] = ((bytes[at] << 8) | (bytes[at + 1] << 16) | (bytes[at + 2] << 24)) / 2147483648.0;
        }
    }

    private static void Of32(ReadOnlySpan<byte> bytes, Span<double> samples)
    {
        for (int i = 0; i < bytes.Length / 4; i++)
        {
            samples[i] = BinaryPrimitives.ReadInt32LittleEndian(bytes[(4 * i)..]) / 2147483648.0;
        }
    }

    private static void OfFloat(ReadOnlySpan<byte> bytes, int sampleBytes, Span<double> samples)
    {
        for (int i = 0; i < bytes.Length / sampleBytes; i++)
        {
            ReadOnlySpan<byte> at = bytes[(sampleBytes * i)..];
            double sample = sampleBytes == 4 ? BinaryPrimitives.ReadSingleLittleEndian(at) : BinaryPrimitives.ReadDoubleLittleEndian(at);
            samples[i] = double.IsFinite(sample) ? sample : throw new RecordingRefusedException(RecordingWords.NotANumber);
        }
    }
}

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
