using System.Buffers;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace FieldSession.Store.Sealing;

/// <summary>
/// The key file as it stands on disk: one JSON object with how the key was locked, whose it is, and the locked bytes
/// (AES-256-GCM, NIST SP 800-38D). Everything that is not locked is bound to the locked bytes as associated data, so that
/// no member can be changed unseen. Bytes are written in base64.
/// </summary>
internal sealed record KeyEnvelope(string Study, string Commitment, int Rounds, byte[] Salt, byte[] Nonce, byte[] Cipher, byte[] Tag)
{
    public const string Format = "fieldsession-key-1";
    public const string Kdf = Pbkdf2Stretch.Name;
    public const int NonceBytes = 12;
    public const int TagBytes = 16;

    /// <summary>Locks a text with a key of 32 bytes.</summary>
    public static KeyEnvelope Lock(string study, string commitment, byte[] salt, byte[] nonce, byte[] key, byte[] text)
    {
        KeyEnvelope envelope = new(study, commitment, Pbkdf2Stretch.FewestRounds, salt, nonce, new byte[text.Length], new byte[TagBytes]);
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
            json.WriteString("format", Format);
            json.WriteString("study", Study);
            json.WriteString("commitment", Commitment);
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

    private byte[] Associated() => Encoding.UTF8.GetBytes(
        $"{Format}\n{Study}\n{Commitment}\n{Kdf}\n{Rounds}\n{Convert.ToBase64String(Salt)}\n{Convert.ToBase64String(Nonce)}");
}
