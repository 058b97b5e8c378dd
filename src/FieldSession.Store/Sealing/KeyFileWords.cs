namespace FieldSession.Store.Sealing;

/// <summary>What is said of the custodian's key file.</summary>
internal static class KeyFileWords
{
    public const string ItIsNotText = "it is not UTF-8 text";
    public const string ItHoldsBrokenCharacter = "it holds a broken character";
    public const string ItHoldsNoJsonObject = "it holds no JSON object";
    public const string ItHoldsMembersThatNoKeyFileHas = "it holds members that no key file has";
    public const string StudyOrCommitmentIsNone = "'study' or 'commitment' is none";
    public const string PassphraseIsTooShort = "the passphrase is too short";
    public const string MakeItFirst = "make it first, or name another one";
    public const string NameAnotherFile = "name another file, or move that one away";
    public const string ItIsEmpty = "it is empty";
    public const string KeyFileBelongsToAnotherSealingOfThisStudy = "the key file belongs to another sealing of this study: its commitment is none of the study's; take the file written with these codes";
    public const string WrongPassphraseOrFileWasChanged = "wrong passphrase, or the file was changed; every try is slow on purpose; type it again, or take the custodian's own copy";
    public const string WhatItHoldsDoesNotGiveItsOwn = "what it holds does not give its own commitment";
    public const string ItIsTooLarge = "it is too large";
    public const string NoSuchFile = "no such file; say where the custodian's key file is";
    public const string FileCantBeRead = "the file can't be read; look whether it is a file, and whether you may read it";

    public static string LineIsNotAsKeyFileIsWritten(string line) => $"line {line} is not as a key file is written, or the end is missing";

    public static string NotKeyFile(string what) => $"not a key file, or damaged: {what}; take the custodian's own copy";

    public static string IsNotOfRightLengthOrForm(string member) => $"'{member}' is not of the right length or form";

    public static string IsMissingTwiceThereOrOfAnother(string member) => $"'{member}' is missing, twice there, or of another kind";

    public static string FormatWithIsWhatThisProgramOpens => $"format '{KeyEnvelope.Format}' with '{KeyEnvelope.Kdf}' is what this program opens";

    public static string RoundsLiesIn => $"'rounds' lies in {Pbkdf2Stretch.FewestRounds}..{Pbkdf2Stretch.MostRounds}";

    public static string KeyFileWasMadeByOtherParametersThanAre(string allowed) => $"the key file was made by other parameters than are accepted: {allowed}; take the file that 'seal' wrote";

    public static string TakeAtLeastCharacters(int shortestPassphrase) => $"take at least {shortestPassphrase} characters, better four words";

    public static string ThereIsNoFolder(string folder) => $"there is no folder {folder}";

    public static string IsAlreadyThere(string path) => $"{path} is already there, and a key file is never written over";

    public static string KeyFileOfAnotherStudy(KeyEnvelope envelope, string studyName) => $"the key file of another study, {envelope.Study}; take the one of {studyName}";
}
