using System.Buffers.Binary;

namespace FieldSession.Store.Recordings;

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
