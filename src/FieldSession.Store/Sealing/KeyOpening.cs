using FieldSession.Sealing;

namespace FieldSession.Store.Sealing;

/// <summary>Why a key file does not open. None of them tells anything of what stands in it.</summary>
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

    /// <summary>It was made in a way that is not accepted: another cipher, too few rounds, or so many that opening would take an hour.</summary>
    OtherParameters,

    /// <summary>The passphrase is wrong or the file was changed; which of the two can't be told.</summary>
    WrongPassphraseOrChanged,
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
