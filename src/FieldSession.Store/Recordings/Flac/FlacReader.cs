namespace FieldSession.Store.Recordings.Flac;

/// <summary>
/// Reads FLAC by RFC 9639: all block sizes, stereo modes, predictors and 4 to 32 bits. Both check sums of every frame are held, and frames
/// must follow without a gap: a damaged file is refused. One that ends too early, as a dead battery leaves it, is read as far as whole
/// frames go, with a remark.
/// </summary>
public sealed class FlacReader : ISoundReader
{
    private readonly FlacBits _bits;
    private readonly long _total;
    private readonly int _usualBlock;
    private readonly List<string> _remarks = [];
    private long[][] _block;
    private int _blockSize;
    private int _blockAt;
    private long _decoded;
    private bool _ended;

    /// <summary>Reads the stream's header.</summary>
    /// <param name="bytes">The file from its first byte.</param>
    /// <exception cref="RecordingRefusedException">The file is no FLAC that levels can be taken from.</exception>
    public FlacReader(ByteSource bytes)
    {
        _bits = new(bytes);
        try
        {
            FlacStreamHeader header = FlacStreamHeader.Read(_bits);
            Format = SoundRates.Accepted(header.Format);
            _total = header.Samples;
            _usualBlock = header.LargestBlock;
        }
        catch (Exception broken) when (broken is EndOfStreamException or InvalidDataException)
        {
            throw new RecordingRefusedException(RecordingWords.FlacHeaderWrong);
        }

        _block = [.. Enumerable.Range(0, Format.Channels).Select(_ => new long[_usualBlock])];
    }

    /// <inheritdoc/>
    public SoundFormat Format { get; }

    /// <inheritdoc/>
    public SoundClock? Clock => null;

    /// <inheritdoc/>
    public IReadOnlyList<string> Remarks => _remarks;

    /// <inheritdoc/>
    public int Read(Span<double> samples)
    {
        if (_blockAt == _blockSize && !Next())
        {
            return 0;
        }

        int frames = Math.Min(samples.Length / Format.Channels, _blockSize - _blockAt);
        double scale = Math.ScaleB(1, 1 - Format.Bits);
        for (int channel = 0; channel < Format.Channels; channel++)
        {
            ReadOnlySpan<long> from = _block[channel].AsSpan(_blockAt, frames);
            for (int i = 0; i < from.Length; i++)
            {
                samples[(i * Format.Channels) + channel] = from[i] * scale;
            }
        }

        _blockAt += frames;
        return frames;
    }

    private bool IsWhole => _total > 0 ? _decoded >= _total : _bits.IsAtEnd;

    private bool Next()
    {
        if (_ended || IsWhole)
        {
            return false;
        }

        try
        {
            ReadFrame();
            return true;
        }
        catch (EndOfStreamException)
        {
            _ended = true;
            _remarks.Add(_total > 0 ? RecordingWords.CutShort((double)(_total - _decoded) / Format.RateHz) : RecordingWords.NotClosed);
            return false;
        }
        catch (InvalidDataException)
        {
            throw new RecordingRefusedException(RecordingWords.FlacDamaged((double)_decoded / Format.RateHz));
        }
    }

    private void Accept(FlacFrame frame)
    {
        if (!frame.Keeps(Format))
        {
            throw new RecordingRefusedException(RecordingWords.FlacFormatChanges);
        }

        if (frame.Number * (frame.CountsSamples ? 1 : _usualBlock) != _decoded)
        {
            throw new RecordingRefusedException(RecordingWords.FlacOutOfStep((double)_decoded / Format.RateHz));
        }

        if (frame.BlockSize > _block[0].Length)
        {
            _block = [.. _block.Select(_ => new long[frame.BlockSize])];
        }
    }

    private void ReadFrame()
    {
        FlacFrame frame = FlacFrame.Read(_bits);
        Accept(frame);
        for (int channel = 0; channel < Format.Channels; channel++)
        {
            bool isSide = (frame.Assignment, channel) is (8, 1) or (9, 0) or (10, 1);
            FlacSubframe.Read(_bits, Format.Bits + (isSide ? 1 : 0), _block[channel].AsSpan(0, frame.BlockSize));
        }

        _bits.Align();
        _bits.Read(16);
        if (FlacChecks.Crc16(_bits.SinceBegin) != 0)
        {
            throw new InvalidDataException();
        }

        FlacStereo.Undo(frame.Assignment, _block, frame.BlockSize);
        (_blockSize, _blockAt) = (frame.BlockSize, 0);
        _decoded += frame.BlockSize;
    }
}

/// <summary>Two channels that FLAC wrote as one and a difference (RFC 9639, section 4.2).</summary>
internal static class FlacStereo
{
    /// <summary>Makes left and right again.</summary>
    /// <param name="assignment">8 left and side, 9 side and right, 10 middle and side; others stay.</param>
    /// <param name="block">The channels.</param>
    /// <param name="length">Samples of each.</param>
    public static void Undo(int assignment, long[][] block, int length)
    {
        if (assignment < 8)
        {
            return;
        }

        Span<long> one = block[0].AsSpan(0, length);
        Span<long> other = block[1].AsSpan(0, length);
        for (int i = 0; i < length; i++)
        {
            switch (assignment)
            {
                case 8:
                    other[i] = one[i] - other[i];
                    break;
                case 9:
                    one[i] += other[i];
                    break;
                default:
                    long middle = (one[i] << 1) | (other[i] & 1);
                    (one[i], other[i]) = ((middle + other[i]) >> 1, (middle - other[i]) >> 1);
                    break;
            }
        }
    }
}
