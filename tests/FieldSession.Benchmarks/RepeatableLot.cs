namespace FieldSession.Benchmarks;

/// <summary>Chance that can be had again: SplitMix64 (G. L. Steele, D. Lea, C. H. Flood, OOPSLA 2014), one stream per seed.</summary>
internal sealed class RepeatableLot(ulong seed)
{
    private ulong _state = seed * 0x9E3779B97F4A7C15;

    /// <summary>A stream of its own for every row and day of a simulation.</summary>
    public static RepeatableLot For(int seed, int row, int day)
    {
        RepeatableLot mix = new(((ulong)(uint)seed << 32) ^ (uint)row);
        return new RepeatableLot(mix.Bits() ^ ((ulong)(uint)day << 20));
    }

    /// <summary>A number from 0 to below 1.</summary>
    public double Share() => (Bits() >> 11) * (1.0 / (1UL << 53));

    /// <summary>A standard normal number.</summary>
    public double Normal() => Math.Sqrt(-2 * Math.Log(1 - Share())) * Math.Cos(2 * Math.PI * Share());

    /// <summary>An exponential number of this mean.</summary>
    public double Exponential(double mean) => -mean * Math.Log(1 - Share());

    private ulong Bits()
    {
        ulong z = _state += 0x9E3779B97F4A7C15;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
