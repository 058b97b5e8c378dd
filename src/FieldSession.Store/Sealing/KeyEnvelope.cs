using System.Buffers;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace FieldSession.Store.Sealing;

/// <summary>
/// The key file as it is on disk: one JSON object with how the key was locked, whose it is, and the locked bytes
/// (AES-256-GCM, NIST SP 800-38D). Everything that is not locked is bound to the locked bytes as associated data, so that
/// no member can be changed unseen. Bytes are written in base64.
/// </summary>
/// <param name="Study">The study's short name.</param>
/// <param name="Commitment">What was published of the key, 64 hex digits.</param>
/// <param name="Rounds">How often the passphrase was stretched.</param>
/// <param name="Salt">Bytes the passphrase was stretched with.</param>
/// <param name="Nonce">Bytes used once for this locking, <see cref="NonceBytes"/> of them.</param>
/// <param name="Cipher">The locked bytes.</param>
/// <param name="Tag">What shows that nothing was changed, <see cref="TagBytes"/> bytes.</param>
/// <param name="People">How many people's passphrases open it, 1 or 2; null: the first form, which knew one only.</param>
internal sealed record KeyEnvelope(
    string Study,
    string Commitment,
    int Rounds,
    byte[] Salt,
    byte[] Nonce,
    byte[] Cipher,
    byte[] Tag,
    int? People = null
)
{
    /// <summary>
    /// Name of the form that is written, version included: it knows its order, its marks, and keys split between two people.
    /// </summary>
    public const string Format = "fieldsession-key-2";

    /// <summary>Name of the first form, which is still read.</summary>
    public const string FirstFormat = "fieldsession-key-1";

    /// <summary>How the passphrase becomes a key.</summary>
    public const string Kdf = Pbkdf2Stretch.Name;

    /// <summary>Bytes of the nonce: what AES-GCM takes best (NIST SP 800-38D, 8.2).</summary>
    public const int NonceBytes = 12;

    /// <summary>Bytes of the tag: the longest AES-GCM gives.</summary>
    public const int TagBytes = 16;

    /// <summary>Bytes of the locked text in a form.</summary>
    public static int CipherBytes(string format) =>
        format == FirstFormat ? KeyPlaintext.PaddedBytesOfFirstFormat : KeyPlaintext.PaddedBytes;

    /// <summary>Locks a text with a key of 32 bytes, in the form that is written.</summary>
    public static KeyEnvelope Lock(string study, string commitment, int people, byte[] salt, byte[] nonce, byte[] key, byte[] text)
    {
        KeyEnvelope envelope = new(
            study,
            commitment,
            Pbkdf2Stretch.FewestRounds,
            salt,
            nonce,
            new byte[text.Length],
            new byte[TagBytes],
            people
        );
        using AesGcm aes = new(key, TagBytes);
        aes.Encrypt(nonce, text, envelope.Cipher, envelope.Tag, envelope.Associated());
        return envelope;
    }

    /// <summary>The locked text; null where the key is not the one, or anything was changed.</summary>
    public byte[]? Unlock(byte[] key)
    {
        byte[] text = new byte[Cipher.Length];
        using AesGcm aes = new(key, TagBytes);
        try
        {
            aes.Decrypt(Nonce, Cipher, Tag, text, Associated());
            return text;
        }
        catch (AuthenticationTagMismatchException)
        {
            return null;
        }
    }

    /// <summary>The file's bytes.</summary>
    public byte[] ToBytes()
    {
        ArrayBufferWriter<byte> bytes = new();
        using (Utf8JsonWriter json = new(bytes, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("format", People is null ? FirstFormat : Format);
            json.WriteString("study", Study);
            json.WriteString("commitment", Commitment);
            if (People is { } people)
            {
                json.WriteNumber("people", people);
            }

            json.WriteString("kdf", Kdf);
            json.WriteNumber("rounds", Rounds);
            json.WriteBase64String("salt", Salt);
            json.WriteBase64String("nonce", Nonce);
            json.WriteBase64String("cipher", Cipher);
            json.WriteBase64String("tag", Tag);
            json.WriteEndObject();
        }

        bytes.Write("\n"u8);
        return bytes.WrittenSpan.ToArray();
    }

    private byte[] Associated() =>
        Encoding.UTF8.GetBytes(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{(People is { } people ? $"{Format}\n{people}" : FirstFormat)}\n{Study}\n{Commitment}\n{Kdf}\n{Rounds}"
                    + $"\n{Convert.ToBase64String(Salt)}\n{Convert.ToBase64String(Nonce)}"
            )
        );
}

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
