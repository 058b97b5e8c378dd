using System.Security.Cryptography;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.Sealing;
using FieldSession.Store.Disks;

namespace FieldSession.Store.Sealing;

/// <summary>
/// The custodian's file: the key, locked by a passphrase. Only locked bytes are ever written; the file appears whole or
/// not at all, is readable by its owner alone (on Unix), and is never written over.
/// </summary>
public sealed class KeyFile
{
    /// <summary>Fewest characters of a passphrase.</summary>
    public const int ShortestPassphrase = 8;

    private readonly ILot _lot;
    private readonly KeyStretch _stretch;

    /// <summary>Key files that are sealed and opened in one way.</summary>
    /// <param name="lot">Where salt and nonce come from.</param>
    /// <param name="stretch">Makes 32 bytes out of passphrase, salt and rounds.</param>
    public KeyFile(ILot lot, KeyStretch stretch)
    {
        _lot = lot;
        _stretch = stretch;
    }

    /// <summary>What rules out writing a key file there with that passphrase; null: nothing. Nothing is written.</summary>
    public static Objection? ObjectionTo(string path, string passphrase)
    {
        ArgumentNullException.ThrowIfNull(passphrase);
        return ObjectionToPassphrase(passphrase) ?? ObjectionToPlace(path);
    }

    /// <summary>What rules out a passphrase, or against one of two; null: nothing.</summary>
    public static Objection? ObjectionToPassphrase(string passphrase)
    {
        string[] all = TwoPassphrases.In(passphrase);
        return all.All(one => !string.IsNullOrWhiteSpace(one) && one.EnumerateRunes().Count() >= ShortestPassphrase)
            ? null
            : new Objection(
                all.Length > 1 ? KeyFileWords.HoldsNoSecondPassphrase : KeyFileWords.PassphraseIsTooShort,
                KeyFileWords.PassphraseForm(ShortestPassphrase)
            );
    }

    /// <summary>What rules out writing a new file there; null: nothing.</summary>
    public static Objection? ObjectionToPlace(string path)
    {
        string folder = FolderOf(path);
        if (!Directory.Exists(folder))
        {
            return new Objection(KeyFileWords.NoSuchFolder(folder), KeyFileWords.MakeFolderFirst);
        }

        return Path.Exists(path) ? new Objection(KeyFileWords.NameIsTaken(path), KeyFileWords.NameAnotherFile) : null;
    }

    /// <summary>Locks a key and writes it durably. Nothing is written where it is refused.</summary>
    /// <param name="path">The file to write; it must not exist.</param>
    /// <param name="key">The key.</param>
    /// <param name="passphrase">At least 8 characters.</param>
    /// <returns>What rules it out; null: the file is written.</returns>
    /// <exception cref="IOException">The file could not be written; nothing was left behind.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written to.</exception>
    public Objection? Seal(string path, KeySheet key, string passphrase)
    {
        ArgumentNullException.ThrowIfNull(key);
        if (ObjectionTo(path, passphrase) is Objection objection)
        {
            return objection;
        }

        byte[] salt = _lot.Bytes(Pbkdf2Stretch.SaltBytes);
        byte[] secret = _stretch(passphrase, salt, Pbkdf2Stretch.FewestRounds);
        byte[] text = KeyPlaintext.Of(key);
        KeyEnvelope envelope = KeyEnvelope.Lock(
            key.StudyName,
            Commitment.Of(key),
            TwoPassphrases.In(passphrase).Length,
            salt,
            _lot.Bytes(KeyEnvelope.NonceBytes),
            secret,
            text
        );
        CryptographicOperations.ZeroMemory(text);
        CryptographicOperations.ZeroMemory(secret);
        PrivateFile.Write(path, envelope.ToBytes());
        return null;
    }

    /// <summary>Opens a key file of a study.</summary>
    /// <param name="path">The custodian's file.</param>
    /// <param name="studyName">The study whose key it should be.</param>
    /// <param name="commitment">The commitment that is in the study; null: the study holds none.</param>
    /// <param name="passphrase">What the custodian types.</param>
    public KeyOpening Open(string path, string studyName, string? commitment, string passphrase) =>
        OpenOneOf(path, studyName, commitment is null ? [] : [commitment], passphrase);

    /// <summary>What a key file says of itself without a passphrase; null, with the reason, where it is none.</summary>
    public static KeyLabel? LabelOf(string path, out KeyOpening? refusal) =>
        Envelope(path, out refusal) is { } envelope ? new KeyLabel(envelope.Study, envelope.Commitment, envelope.People ?? 1) : null;

    /// <summary>Opens a key file of any study.</summary>
    /// <param name="path">The custodian's file.</param>
    /// <param name="passphrase">What the custodian types; of two people both, as one.</param>
    public KeyOpening Open(string path, string passphrase)
    {
        ArgumentNullException.ThrowIfNull(passphrase);
        return Envelope(path, out KeyOpening? refusal) is { } envelope ? Unlock(envelope, passphrase) : refusal!;
    }

    /// <summary>Opens the key file of one of a study's fittings.</summary>
    /// <param name="path">The custodian's file.</param>
    /// <param name="studyName">The study whose key it should be.</param>
    /// <param name="commitments">The commitments that are in the study, one of which the file must be of; empty: the study holds
    /// none.</param>
    /// <param name="passphrase">What the custodian types.</param>
    public KeyOpening OpenOneOf(string path, string studyName, IReadOnlyCollection<string> commitments, string passphrase)
    {
        ArgumentNullException.ThrowIfNull(commitments);
        ArgumentNullException.ThrowIfNull(passphrase);
        if (Envelope(path, out KeyOpening? refusal) is not { } envelope)
        {
            return refusal!;
        }

        if (envelope.Study != studyName || (commitments.Count > 0 && !commitments.Contains(envelope.Commitment)))
        {
            return KeyOpening.Refused(
                KeyFault.AnotherStudy,
                envelope.Study == studyName ? KeyFileWords.KeyOfAnotherSealing : KeyFileWords.KeyOfAnotherStudy(envelope, studyName)
            );
        }

        return Unlock(envelope, passphrase);
    }

    private static KeyEnvelope? Envelope(string path, out KeyOpening? refusal)
    {
        byte[]? bytes = Read(path, out refusal);
        KeyEnvelope? envelope = bytes is null ? null : KeyEnvelopeText.Parse(bytes, out refusal);
        refusal = envelope is null ? refusal ?? KeyEnvelopeText.Damaged(KeyFileWords.IsEmpty) : null;
        return envelope;
    }

    private KeyOpening Unlock(KeyEnvelope envelope, string passphrase)
    {
        if (envelope.People == 2 && TwoPassphrases.In(passphrase).Length < 2)
        {
            return KeyOpening.Refused(KeyFault.NeedsTwoPassphrases, KeyFileWords.NeedsTwoPassphrases);
        }

        byte[] secret = _stretch(passphrase, envelope.Salt, envelope.Rounds);
        byte[]? text = envelope.Unlock(secret);
        CryptographicOperations.ZeroMemory(secret);
        if (text is null)
        {
            return KeyOpening.Refused(KeyFault.WrongPassphraseOrChanged, KeyFileWords.WrongPassphraseOrChanged);
        }

        KeySheet? key = KeyPlaintext.Parse(text);
        CryptographicOperations.ZeroMemory(text);
        bool agrees = key is not null && key.StudyName == envelope.Study && Commitment.Of(key) == envelope.Commitment;
        return agrees ? KeyOpening.Of(key!) : KeyEnvelopeText.Damaged(KeyFileWords.ContentsDoNotGiveCommitment);
    }

    private static byte[]? Read(string path, out KeyOpening? refusal)
    {
        refusal = null;
        try
        {
            using FileStream file = FileKind.OpenToRead(path);
            byte[] bytes = new byte[KeyEnvelopeText.MostBytes + 1];
            int length = file.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            refusal = length == bytes.Length ? KeyEnvelopeText.Damaged(KeyFileWords.IsTooLarge) : null;
            return refusal is null ? bytes[..length] : null;
        }
        catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException)
        {
            refusal = KeyOpening.Refused(KeyFault.NoSuchFile, KeyFileWords.NoSuchFile);
        }
        catch (Exception denied) when (denied is IOException or UnauthorizedAccessException)
        {
            refusal = KeyOpening.Refused(KeyFault.Unreadable, KeyFileWords.FileCantBeRead);
        }

        return null;
    }

    private static string FolderOf(string path) => Path.GetDirectoryName(Path.GetFullPath(path)) ?? Path.GetFullPath(path);
}
