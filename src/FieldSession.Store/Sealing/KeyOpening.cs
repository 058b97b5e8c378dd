using FieldSession.Sealing;

namespace FieldSession.Store.Sealing;

/// <summary>Why a key file does not open. None of them tells anything of what is in it.</summary>
public enum KeyFault
{
    /// <summary>There is no such file.</summary>
    NoSuchFile,

    /// <summary>The file is there and can't be read: access is denied, or the drive fails.</summary>
    Unreadable,

    /// <summary>The file is no key file, or a damaged one.</summary>
    Damaged,

    /// <summary>It is the key file of another study, or of another sealing of this one.</summary>
    AnotherStudy,

    /// <summary>
    /// It was made in a way that is not accepted: another cipher, too few rounds, or so many that opening would take an hour.
    /// </summary>
    OtherParameters,

    /// <summary>The passphrase is wrong or the file was changed; which of the two can't be told.</summary>
    WrongPassphraseOrChanged,

    /// <summary>Two people hold it, and only one passphrase was given.</summary>
    NeedsTwoPassphrases,
}

/// <summary>What a key file says of itself without a passphrase.</summary>
/// <param name="StudyName">The study whose key it is.</param>
/// <param name="Commitment">The commitment of its fitting.</param>
/// <param name="People">How many people's passphrases open it.</param>
public sealed record KeyLabel(string StudyName, string Commitment, int People);

/// <summary>The passphrases of two people as one: neither opens the key alone.</summary>
public static class TwoPassphrases
{
    private const char Between = '\0';

    /// <summary>Both as one.</summary>
    public static string Joined(string first, string second) => $"{first}{Between}{second}";

    /// <summary>The passphrases that one text holds, one or two.</summary>
    public static string[] In(string passphrase)
    {
        ArgumentNullException.ThrowIfNull(passphrase);
        return passphrase.Split(Between);
    }
}

/// <summary>What came of opening a key file: the key, or why not.</summary>
/// <param name="Key">The key; null where the file did not open.</param>
/// <param name="Fault">What kind of no it is; null where the file opened.</param>
/// <param name="Words">The no in a sentence that says what to do, without the file's name; empty where the file opened.</param>
public sealed record KeyOpening(KeySheet? Key, KeyFault? Fault, string Words)
{
    internal static KeyOpening Of(KeySheet key) => new(key, null, "");

    internal static KeyOpening Refused(KeyFault fault, string words) => new(null, fault, words);
}
