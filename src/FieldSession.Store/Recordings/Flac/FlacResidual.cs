namespace FieldSession.Store.Recordings.Flac;

/// <summary>What the prediction of a FLAC frame left over, in Rice codes (RFC 9639, section 9.2.7).</summary>
internal static class FlacResidual
{
    /// <summary>Reads the residual behind the warm-up samples.</summary>
    /// <param name="bits">The stream.</param>
    /// <param name="order">Warm-up samples.</param>
    /// <param name="samples">Room for the block, warm-up samples included.</param>
    /// <exception cref="InvalidDataException">The stream breaks the rules of the format.</exception>
    public static void Read(FlacBits bits, int order, Span<long> samples)
    {
        int method = (int)bits.Read(2);
        int partitions = 1 << (int)bits.Read(4);
        int length = samples.Length / partitions;
        if (method > 1 || length * partitions != samples.Length || length < order)
        {
            throw new InvalidDataException();
        }

        int parameterBits = method == 0 ? 4 : 5;
        ulong escape = (1UL << parameterBits) - 1;
        for (int p = 0; p < partitions; p++)
        {
            ulong parameter = bits.Read(parameterBits);
            Span<long> part = samples[(p == 0 ? order : p * length)..((p + 1) * length)];
            if (parameter == escape)
            {
                ReadPlain(bits, (int)bits.Read(5), part);
            }
            else
            {
                ReadRice(bits, (int)parameter, part);
            }
        }
    }

    private static void ReadRice(FlacBits bits, int parameter, Span<long> part)
    {
        for (int i = 0; i < part.Length; i++)
        {
            long folded = (bits.ReadUnary() << parameter) | (long)bits.Read(parameter);
            part[i] = (folded >> 1) ^ -(folded & 1);
        }
    }

    private static void ReadPlain(FlacBits bits, int width, Span<long> part)
    {
        for (int i = 0; i < part.Length; i++)
        {
            part[i] = width == 0 ? 0 : bits.ReadSigned(width);
        }
    }
}
