namespace FieldSession.Store.Recordings.Flac;

/// <summary>The samples of one channel in one frame of FLAC (RFC 9639, section 9.2).</summary>
internal static class FlacSubframe
{
    private const int LargestOrder = 32;

    /// <summary>Reads the samples of one channel.</summary>
    /// <param name="bits">The stream, at the channel's first bit.</param>
    /// <param name="width">Bits of a sample, 4 to 33.</param>
    /// <param name="samples">Room for the block.</param>
    /// <exception cref="InvalidDataException">The stream breaks the rules of the format.</exception>
    public static void Read(FlacBits bits, int width, Span<long> samples)
    {
        int kind = (int)bits.Read(7);
        int wasted = bits.Read(1) == 0 ? 0 : (int)bits.ReadUnary() + 1;
        width -= wasted;
        if (width < 1)
        {
            throw new InvalidDataException();
        }

        ReadKind(bits, width, kind, samples);
        if (wasted > 0)
        {
            foreach (ref long sample in samples)
            {
                sample <<= wasted;
            }
        }
    }

    private static void ReadKind(FlacBits bits, int width, int kind, Span<long> samples)
    {
        switch (kind)
        {
            case 0:
                samples.Fill(bits.ReadSigned(width));
                break;
            case 1:
                ReadPlain(bits, width, samples);
                break;
            case >= 8 and <= 12:
                ReadFixed(bits, width, kind - 8, samples);
                break;
            case >= 32 and < 64:
                ReadPredicted(bits, width, kind - 31, samples);
                break;
            default:
                throw new InvalidDataException();
        }
    }

    private static void ReadPlain(FlacBits bits, int width, Span<long> samples)
    {
        for (int i = 0; i < samples.Length; i++)
        {
            samples[i] = bits.ReadSigned(width);
        }
    }

    private static void ReadFixed(FlacBits bits, int width, int order, Span<long> samples)
    {
        ReadPlain(bits, width, samples[..Math.Min(order, samples.Length)]);
        FlacResidual.Read(bits, order, samples);
        ReadOnlySpan<long> coefficients = order switch
        {
            0 => [],
            1 => [1],
            2 => [2, -1],
            3 => [3, -3, 1],
            _ => [4, -6, 4, -1],
        };
        Predict(coefficients, 0, samples);
    }

    private static void ReadPredicted(FlacBits bits, int width, int order, Span<long> samples)
    {
        if (order > samples.Length)
        {
            throw new InvalidDataException();
        }

        ReadPlain(bits, width, samples[..order]);
        int precision = (int)bits.Read(4) + 1;
        int shift = (int)bits.ReadSigned(5);
        if (precision == 16 || shift < 0)
        {
            throw new InvalidDataException();
        }

        Span<long> coefficients = stackalloc long[LargestOrder];
        for (int i = 0; i < order; i++)
        {
            coefficients[i] = bits.ReadSigned(precision);
        }

        FlacResidual.Read(bits, order, samples);
        Predict(coefficients[..order], shift, samples);
    }

    // the residual is in the samples already
    private static void Predict(ReadOnlySpan<long> coefficients, int shift, Span<long> samples)
    {
        int order = coefficients.Length;
        for (int i = order; i < samples.Length; i++)
        {
            ReadOnlySpan<long> before = samples.Slice(i - order, order);
            long sum = 0;
            for (int j = 0; j < coefficients.Length; j++)
            {
                sum += coefficients[j] * before[before.Length - 1 - j];
            }

            samples[i] += sum >> shift;
        }
    }
}

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
