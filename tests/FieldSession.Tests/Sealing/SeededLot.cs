using FieldSession.Measures;

namespace FieldSession.Tests.Sealing;

/// <summary>A lot that can be drawn again: the same seed gives the same numbers.</summary>
internal sealed class SeededLot(int seed) : ILot
{
    private readonly Random _random = new(seed);

    public int Below(int exclusiveMax) => _random.Next(exclusiveMax);

    public byte[] Bytes(int count)
    {
        byte[] bytes = new byte[count];
        _random.NextBytes(bytes);
        return bytes;
    }
}
