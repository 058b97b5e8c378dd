namespace FieldSession.Store.Recordings;

/// <summary>
/// Reads WAV: RIFF, RF64 and BW64; whole numbers of 16 to 32 bits and floating point of 32 and 64. What a recorder left unclosed, or what is shorter than it
/// says, is read as far as whole frames go, with a remark. Needs no way back, so a pipe will do.
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
