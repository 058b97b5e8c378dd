using System.Security.Cryptography;
using System.Text;

namespace FieldSession.Sealing;

/// <summary>
/// What the custodian publishes before the first run: the SHA-256 (FIPS 180-4) of one canonical line. It tells nobody who
/// is who, and after the reveal it shows that the key was not changed. The line is
/// <c>study=QW-0114|417=STANDARD|862=STIFFENED|nonce=8f1d6c0b2a4e49579d03c7e1b6a85f42</c>, codes in rising order,
/// hashed as UTF-8 without a line break. Where marks were drawn, <c>marks=417:KTX,862:MFD</c> is before the nonce.
/// </summary>
public static class Commitment
{
    /// <summary>The canonical line. It holds the spec names: secret until the reveal.</summary>
    public static string CanonicalLine(KeySheet key)
    {
        ArgumentNullException.ThrowIfNull(key);
        KeyLine[] lines = [.. key.Places.OrderBy(place => place.Code.Digits, StringComparer.Ordinal)];
        string pairs = string.Join('|', lines.Select(line => $"{line.Code.Digits}={line.Spec}"));
        string marks = key.HasDrawnMarks ? $"|marks={string.Join(',', lines.Select(line => $"{line.Code.Digits}:{line.Mark}"))}" : "";
        return $"study={key.StudyName}|{pairs}{marks}|nonce={key.Nonce}";
    }

    /// <summary>The commitment: 64 lower-case hex digits. It may be shown to everybody.</summary>
    public static string Of(KeySheet key) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(CanonicalLine(key))));
}
