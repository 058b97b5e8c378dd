using System.Security.Cryptography;
using System.Text;

namespace FieldSession.Store.Sealing;

/// <summary>Makes the 256-bit key that locks the custodian's file out of a passphrase, slowly on purpose.</summary>
/// <param name="passphrase">What the custodian typed.</param>
/// <param name="salt">16 bytes drawn by lot for this file.</param>
/// <param name="rounds">How often it is stirred.</param>
/// <returns>32 bytes.</returns>
public delegate byte[] KeyStretch(string passphrase, byte[] salt, int rounds);

/// <summary>
/// PBKDF2 with HMAC-SHA-256 (RFC 8018). 600,000 rounds is what a public guide on storing passwords advises (from memory);
/// the upper limit keeps a hostile file from costing an hour.
/// </summary>
public static class Pbkdf2Stretch
{
    /// <summary>Name of the method in the key file.</summary>
    public const string Name = "PBKDF2-HMAC-SHA256";

    /// <summary>Fewest rounds that are accepted, and the rounds of a new file.</summary>
    public const int FewestRounds = 600_000;

    /// <summary>Most rounds that are accepted.</summary>
    public const int MostRounds = 10_000_000;

    /// <summary>Bytes of the salt.</summary>
    public const int SaltBytes = 16;

    private const int KeyBytes = 32;

    /// <summary>The key, 32 bytes.</summary>
    public static byte[] Derive(string passphrase, byte[] salt, int rounds)
    {
        byte[] typed = Encoding.UTF8.GetBytes(passphrase);
        byte[] key = Rfc2898DeriveBytes.Pbkdf2(typed, salt, rounds, HashAlgorithmName.SHA256, KeyBytes);
        CryptographicOperations.ZeroMemory(typed);
        return key;
    }
}
