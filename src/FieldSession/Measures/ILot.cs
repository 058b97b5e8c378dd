namespace FieldSession.Measures;

/// <summary>
/// Chance, from outside: the lot that draws codes, orders and nonces. The program's own lot draws from the operating
/// system's cryptographic source; a test brings a lot that can be repeated.
/// </summary>
public interface ILot
{
    /// <summary>A whole number drawn by lot, each of 0..<paramref name="exclusiveMax"/>-1 equally likely.</summary>
    /// <param name="exclusiveMax">How many numbers are in the lot; at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="exclusiveMax"/> is less than 1.</exception>
    int Below(int exclusiveMax);

    /// <summary>Bytes drawn by lot, each of 0..255 equally likely.</summary>
    /// <param name="count">How many bytes; at least 0.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is negative.</exception>
    byte[] Bytes(int count);
}
