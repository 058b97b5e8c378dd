namespace FieldSession.Store.Recordings.Flac;

/// <summary>What a FLAC stream says of itself (RFC 9639, section 8.2).</summary>
/// <param name="Format">How the samples are written.</param>
/// <param name="Samples">Samples of every channel; 0: not told.</param>
/// <param name="LargestBlock">Samples of the largest block; of every block where they are alike.</param>
internal sealed record FlacStreamHeader(SoundFormat Format, long Samples, int LargestBlock)
{
    private const int StreamInfoBytes = 34;

    /// <summary>Reads to the first frame; what else is there is passed over.</summary>
    /// <exception cref="InvalidDataException">The stream does not begin as FLAC has to.</exception>
    /// <exception cref="EndOfStreamException">The stream ends within it.</exception>
    public static FlacStreamHeader Read(FlacBits bits)
    {
        if (bits.Read(32) != 0x664C6143)
        {
            throw new InvalidDataException();
        }

        (bool last, int kind, int size) = BlockHead(bits);
        if (kind != 0 || size != StreamInfoBytes)
        {
            throw new InvalidDataException();
        }

        bits.Read(16);
        int largest = (int)bits.Read(16);
        bits.Read(24);
        bits.Read(24);
        int rate = (int)bits.Read(20);
        int channels = (int)bits.Read(3) + 1;
        int width = (int)bits.Read(5) + 1;
        long samples = ((long)bits.Read(4) << 32) | (long)bits.Read(32);
        Pass(bits, 16);
        while (!last)
        {
            (last, _, size) = BlockHead(bits);
            Pass(bits, size);
        }

        return largest >= 16 && width >= 4
            ? new(new(rate, width, channels, IsFloat: false), samples, largest)
            : throw new InvalidDataException();
    }

    private static (bool Last, int Kind, int Size) BlockHead(FlacBits bits) => (bits.Read(1) == 1, (int)bits.Read(7), (int)bits.Read(24));

    private static void Pass(FlacBits bits, int size)
    {
        for (int i = 0; i < size; i++)
        {
            bits.Begin();
            bits.Read(8);
        }
    }
}
