using System.Collections.Immutable;

namespace FieldSession.Acoustics;

/// <summary>Finds the impact in a stretch that holds one: the second around its loudest twentieth of a second is what the ring's decay is looked for in.</summary>
public static class ImpactPiece
{
    private const double BlockS = 0.05;
    private const double BeforeS = 0.8;
    private const double BehindS = 1.4;

    /// <summary>The piece around the impact; null: the stretch ends too near to it.</summary>
    /// <param name="samples">The low branch of the stretch.</param>
    /// <param name="rateHz">Samples a second.</param>
    public static IReadOnlyList<double>? Of(ImmutableArray<double> samples, double rateHz)
    {
        int block = (int)(BlockS * rateHz);
        int blocks = samples.Length / block;
        if (blocks == 0)
        {
            return null;
        }

        int top = Enumerable.Range(0, blocks).MaxBy(b => samples.AsSpan(b * block, block).ToArray().Sum(sample => sample * sample)) * block;
        int from = top - (int)(BeforeS * rateHz);
        int to = top + (int)(BehindS * rateHz);
        return from >= 0 && to <= samples.Length ? samples[from..to] : null;
    }
}
