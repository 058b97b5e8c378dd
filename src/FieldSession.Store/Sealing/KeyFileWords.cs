namespace FieldSession.Store.Sealing;

/// <summary>What is said of the custodian's key file.</summary>
internal static class KeyFileWords
{
    // making one
    public const string PassphraseIsTooShort = "the passphrase is too short";

    public static string PassphraseForm(int fewestCharacters) => $"take at least {fewestCharacters} characters, better four words";

    public static string NoSuchFolder(string folder) => $"there is no folder {folder}";

    public const string MakeFolderFirst = "make it first, or name another one";

    public static string NameIsTaken(string path) => $"{path} is already there, and is never written over";

    public const string NameAnotherFile = "name another file, or move that one away";

    public const string HoldsNoSecondPassphrase = "one of the two passphrases is too short";

    // reading one
    public const string NoSuchFile = "no such file; say where the custodian's key file is";
    public const string FileCantBeRead = "the file can't be read; check that it is a file and that you may read it";

    public static string NotKeyFile(string fault) => $"not a key file, or damaged: {fault}; take the custodian's own copy";

    public const string IsEmpty = "it is empty";
    public const string IsTooLarge = "it is too large";
    public const string IsNotText = "it is not UTF-8 text";
    public const string HoldsBrokenCharacter = "it holds a broken character";

    public static string LineIsBroken(string line) => $"line {line} is not a line of a key file, or the end is missing";

    public const string HoldsNoJsonObject = "it holds no JSON object";

    public static string MemberIsMissingOrTwice(string member) => $"'{member}' is missing, twice there, or of another kind";

    public const string HoldsUnknownMembers = "it holds members that no key file has";

    public static string MemberIsOfWrongForm(string member) => $"'{member}' is not of the right length or form";

    public const string StudyOrCommitmentIsNone = "'study' or 'commitment' is not valid";

    public static string ParametersAreNotAccepted(string allowed) =>
        $"the key file uses settings that are not accepted: {allowed}; take the file that 'seal' wrote";

    public static string AcceptedFormat =>
        $"format '{KeyEnvelope.FirstFormat}' or '{KeyEnvelope.Format}' with '{KeyEnvelope.Kdf}' is what this program opens";

    public const string AcceptedPeople = "'people' is 1 or 2";

    public static string AcceptedRounds => $"'rounds' is {Pbkdf2Stretch.FewestRounds}..{Pbkdf2Stretch.MostRounds}";

    // the public file
    public const string IsNoPublicFile = "this is not a file of public codes, or its end is missing";
    public const string PublicFileIsOfOtherFormat = "the file of public codes was written by another program";
    public const string PublicFileWasChanged = "the file of public codes was changed on the way";
    public const string TakeCustodiansPublicFile = "take the custodian's own copy, the one that 'seal --public' wrote";

    // where secrets are written
    public static string StudyLiesBeside(string study) => $"the study {study} is in that folder";

    public static string StudyLiesAbove(string study) => $"that folder is inside the folder of the study {study}";

    public const string NameFolderAwayFromStudy = "name a folder that the crew never opens, best on the custodian's own stick";

    // opening one
    public static string KeyOfAnotherStudy(KeyEnvelope envelope, string studyName) =>
        $"the key file of another study, {envelope.Study}; take the one of {studyName}";

    public const string KeyOfAnotherSealing =
        "the key file belongs to another sealing of this study: its commitment is not one of the study's; take the file "
        + "written with these codes";
    public const string WrongPassphraseOrChanged =
        "wrong passphrase, or the file was changed; every try is slow on purpose; type it again; another copy has the same passphrase";
    public const string NeedsTwoPassphrases =
        "two people hold this key; give both passphrases, the second in FIELDSESSION_PASSPHRASE_2 or when asked";
    public const string ContentsDoNotGiveCommitment = "what it holds does not give its own commitment";
}
