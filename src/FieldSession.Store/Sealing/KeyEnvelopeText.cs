using System.Globalization;
using System.Text;
using System.Text.Json;
using FieldSession.Sealing;

namespace FieldSession.Store.Sealing;

/// <summary>
/// Reads a key file's bytes, which may be anything. Each member is there once and in the one form in which it is written,
/// so that no two files mean the same.
/// </summary>
internal static class KeyEnvelopeText
{
    /// <summary>Largest key file that is read at all; a real one has 22 kB.</summary>
    public const int MostBytes = 64 * 1024;

    private const string People = "people";

    private static string[] FirstMembers => ["format", "study", "commitment", "kdf", "rounds", "salt", "nonce", "cipher", "tag"];

    private static (string Member, int Length)[] Locked(JsonElement root) =>
        [
            ("salt", Pbkdf2Stretch.SaltBytes),
            ("nonce", KeyEnvelope.NonceBytes),
            ("tag", KeyEnvelope.TagBytes),
            ("cipher", KeyEnvelope.CipherBytes(Word(root, "format"))),
        ];

    private static string[] MembersOf(JsonElement root) => FormatOf(root) == KeyEnvelope.Format ? [.. FirstMembers, People] : FirstMembers;

    private static string? FormatOf(JsonElement root) =>
        root.ValueKind == JsonValueKind.Object
        && root.TryGetProperty("format", out JsonElement format)
        && format.ValueKind == JsonValueKind.String
            ? format.GetString()
            : null;

    /// <summary>The envelope; null with the reason where the bytes are none.</summary>
    public static KeyEnvelope? Parse(byte[] bytes, out KeyOpening? refusal)
    {
        try
        {
            string text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes);
            using JsonDocument document = JsonDocument.Parse(text, new JsonDocumentOptions { MaxDepth = 2 });
            return FromJson(document.RootElement, out refusal);
        }
        catch (ArgumentException)
        {
            refusal = Damaged(KeyFileWords.IsNotText);
        }
        catch (InvalidOperationException)
        {
            refusal = Damaged(KeyFileWords.HoldsBrokenCharacter);
        }
        catch (JsonException broken)
        {
            string line = ((broken.LineNumber ?? 0) + 1).ToString(CultureInfo.InvariantCulture);
            refusal = Damaged(KeyFileWords.LineIsBroken(line));
        }

        return null;
    }

    /// <summary>The no for a file that is no key file or a damaged one.</summary>
    public static KeyOpening Damaged(string what) => KeyOpening.Refused(KeyFault.Damaged, KeyFileWords.NotKeyFile(what));

    private static KeyEnvelope? FromJson(JsonElement root, out KeyOpening? refusal)
    {
        refusal = FaultInFormat(root) ?? FaultInMembers(root) ?? FaultInParameters(root);
        if (refusal is not null)
        {
            return null;
        }

        Dictionary<string, byte[]> parts = [];
        foreach ((string member, int length) in Locked(root))
        {
            if (BytesOf(root, member, length) is not { } part)
            {
                refusal = Damaged(KeyFileWords.MemberIsOfWrongForm(member));
                return null;
            }

            parts.Add(member, part);
        }

        return new KeyEnvelope(
            Word(root, "study"),
            Word(root, "commitment"),
            root.GetProperty("rounds").GetInt32(),
            parts["salt"],
            parts["nonce"],
            parts["cipher"],
            parts["tag"],
            Word(root, "format") == KeyEnvelope.Format ? root.GetProperty(People).GetInt32() : null
        );
    }

    private static KeyOpening? FaultInFormat(JsonElement root) =>
        FormatOf(root) is null or KeyEnvelope.Format or KeyEnvelope.FirstFormat ? null : NotAccepted(KeyFileWords.AcceptedFormat);

    private static KeyOpening? FaultInMembers(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            return Damaged(KeyFileWords.HoldsNoJsonObject);
        }

        string[] names = [.. root.EnumerateObject().Select(member => member.Name)];
        string[] members = MembersOf(root);
        foreach (string member in members)
        {
            JsonValueKind wanted = member is "rounds" or People ? JsonValueKind.Number : JsonValueKind.String;
            if (names.Count(name => name == member) != 1 || root.GetProperty(member).ValueKind != wanted)
            {
                return Damaged(KeyFileWords.MemberIsMissingOrTwice(member));
            }
        }

        return names.Length == members.Length ? null : Damaged(KeyFileWords.HoldsUnknownMembers);
    }

    private static KeyOpening? FaultInParameters(JsonElement root)
    {
        if (Word(root, "kdf") != KeyEnvelope.Kdf)
        {
            return NotAccepted(KeyFileWords.AcceptedFormat);
        }

        if (FormatOf(root) == KeyEnvelope.Format && !HasPeople(root))
        {
            return NotAccepted(KeyFileWords.AcceptedPeople);
        }

        if (!root.GetProperty("rounds").TryGetInt32(out int rounds) || rounds is < Pbkdf2Stretch.FewestRounds or > Pbkdf2Stretch.MostRounds)
        {
            return NotAccepted(KeyFileWords.AcceptedRounds);
        }

        return SealableText.FaultIn(Word(root, "study")) is null && IsHash(Word(root, "commitment"))
            ? null
            : Damaged(KeyFileWords.StudyOrCommitmentIsNone);
    }

    private static bool HasPeople(JsonElement root) => root.GetProperty(People).TryGetInt32(out int people) && people is (1 or 2);

    private static bool IsHash(string word) =>
        word.Length == 64 && word.All(digit => char.IsAsciiHexDigitLower(digit) || char.IsAsciiDigit(digit));

    private static KeyOpening NotAccepted(string allowed) =>
        KeyOpening.Refused(KeyFault.OtherParameters, KeyFileWords.ParametersAreNotAccepted(allowed));

    private static string Word(JsonElement root, string member) => root.GetProperty(member).GetString() ?? "";

    private static byte[]? BytesOf(JsonElement root, string member, int length) =>
        root.GetProperty(member).TryGetBytesFromBase64(out byte[]? bytes)
        && bytes.Length == length
        && Convert.ToBase64String(bytes) == Word(root, member)
            ? bytes
            : null;
}
