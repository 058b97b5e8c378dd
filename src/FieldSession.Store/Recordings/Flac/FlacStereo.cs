namespace FieldSession.Store.Recordings.Flac;

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
