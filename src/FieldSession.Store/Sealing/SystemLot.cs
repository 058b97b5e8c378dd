using System.Security.Cryptography;
using FieldSession.Measures;

namespace FieldSession.Store.Sealing;

/// <summary>The lot of a real study: the operating system's cryptographic source, which nobody can foresee or repeat.</summary>
public sealed class SystemLot : ILot
{
    /// <inheritdoc/>
    public int Below(int exclusiveMax) => RandomNumberGenerator.GetInt32(exclusiveMax);

    /// <inheritdoc/>
    public byte[] Bytes(int count) => RandomNumberGenerator.GetBytes(count);
}
