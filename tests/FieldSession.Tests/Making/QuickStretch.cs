using System.Security.Cryptography;
using System.Text;

namespace FieldSession.Tests.Making;

/// <summary>Makes a key out of a passphrase at once, where the test is not about how slowly it is guessed.</summary>
internal static class QuickStretch
{
    public static byte[] Derive(string passphrase, byte[] salt, int rounds) =>
        SHA256.HashData([.. Encoding.UTF8.GetBytes(passphrase), .. salt, .. BitConverter.GetBytes(rounds)]);
}
