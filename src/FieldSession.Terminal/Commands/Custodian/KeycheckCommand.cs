using System.CommandLine;
using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Store.Journaling;
using FieldSession.Store.Sealing;
using FieldSession.Terminal.Custodian;

namespace FieldSession.Terminal.Commands;

/// <summary>What was typed behind 'keycheck'.</summary>
/// <param name="Key">The key file.</param>
/// <param name="Study">The study whose key it should be; null: not asked.</param>
/// <param name="Public">The public file whose key it should be; null: not asked.</param>
/// <param name="Copy">A second copy; null: not asked.</param>
internal sealed record KeycheckWords(string Key, string? Study, string? Public, string? Copy);

/// <summary>The custodian's command 'keycheck': whether a key file is whole, opens, and is the one of a study. It names no spec.</summary>
internal static class KeycheckCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> key = new("KEYFILE") { Description = "the custodian's key file" };
        Option<string?> study = new("--study") { Description = "the study whose key it should be; it is only read", HelpName = "STUDY" };
        Option<string?> codes = new("--public") { Description = "the public file whose key it should be", HelpName = "FILE" };
        Option<string?> copy = new("--copy") { Description = "a second copy that should hold the same key", HelpName = "KEYFILE" };
        Command command = new("keycheck", "the custodian's: whether a key file is whole, opens, and is the right one; names no spec")
        {
            key,
            study,
            codes,
            copy,
        };
        command.SetAction(typed =>
            Run(new KeycheckWords(typed.GetRequiredValue(key), typed.GetValue(study), typed.GetValue(codes), typed.GetValue(copy)), outside)
        );
        return command;
    }

    /// <summary>Checks the key; changes nothing.</summary>
    /// <returns>0 where all holds, 1 where something does not; the code of the fault where the file does not open.</returns>
    public static int Run(KeycheckWords words, Surroundings outside)
    {
        KeyFile file = outside.KeyFile;
        KeyOpening opening = KeyPhrases.Open(words.Key, phrase => file.Open(words.Key, phrase), outside);
        if (opening.Key is not { } key)
        {
            outside.Error.WriteLine($"{words.Key}: {opening.Words}");
            return KeyPhrases.CodeOf(opening.Fault);
        }

        outside.Output.WriteLine(CustodianWords.KeyIsWhole(key));
        bool holds = words.Study is null || IsOfStudy(key, words.Study, outside);
        holds &= words.Public is null || IsOfPublicFile(key, words.Public, outside);
        holds &= words.Copy is null || IsCopied(key, words.Copy, file, outside);
        return holds ? ExitCode.Done : ExitCode.No;
    }

    private static bool IsOfStudy(KeySheet key, string path, Surroundings outside)
    {
        Study study = Logbook.Fold(StudyGlance.LinesOf(path));
        string commitment = Commitment.Of(key);
        int fitting =
            study.Plan?.StudyName == key.StudyName
                ? study.Fittings.FindIndex(one => one.Commitment == commitment && one.Codes.SequenceEqual(key.Codes))
                : -1;
        outside.Output.WriteLine(fitting < 0 ? CustodianWords.KeyIsOfNoFitting(path) : CustodianWords.KeyIsOfFitting(path, fitting + 1));
        return fitting >= 0;
    }

    private static bool IsOfPublicFile(KeySheet key, string path, Surroundings outside)
    {
        PublicCodesRead read = PublicCodesFile.Read(path);
        bool isOf =
            read.Codes is { } codes
            && codes.StudyName == key.StudyName
            && codes.Commitment == Commitment.Of(key)
            && codes.Codes.SequenceEqual(key.Codes);
        outside.Output.WriteLine(
            read.Refusal is { } refusal ? CustodianWords.CopyDoesNotOpen(path, refusal.ToString())
            : isOf ? CustodianWords.KeyIsThatOfPublicFile(path)
            : CustodianWords.KeyIsNotThatOfPublicFile(path)
        );
        return isOf;
    }

    private static bool IsCopied(KeySheet key, string path, KeyFile file, Surroundings outside)
    {
        KeyOpening copy = KeyPhrases.Open(path, phrase => file.Open(path, phrase), outside);
        bool isSame =
            copy.Key is { } other
            && Commitment.CanonicalLine(other) == Commitment.CanonicalLine(key)
            && other.Codes.SequenceEqual(key.Codes);
        outside.Output.WriteLine(
            copy.Key is null ? CustodianWords.CopyDoesNotOpen(path, copy.Words)
            : isSame ? CustodianWords.CopyIsEqual(path)
            : CustodianWords.CopyDiffers(path)
        );
        return isSame;
    }
}

/// <summary>Asks for the passphrases of key files and tries them. Nothing of them is shown.</summary>
internal static class KeyPhrases
{
    /// <summary>How often a passphrase may be typed.</summary>
    public const int Tries = 3;

    /// <summary>Opens a key file with the passphrases that are given or asked for.</summary>
    /// <param name="path">The key file.</param>
    /// <param name="open">Opens it with a passphrase, of two people both as one.</param>
    /// <param name="outside">The world outside.</param>
    public static KeyOpening Open(string path, Func<string, KeyOpening> open, Surroundings outside)
    {
        if (KeyFile.LabelOf(path, out KeyOpening? refusal) is not { } label)
        {
            return refusal!;
        }

        for (int attempt = 1; ; attempt++)
        {
            KeyOpening opening = open(Asked(Path.GetFileName(path), label.People, outside));
            bool isAskedAgain =
                opening.Fault == KeyFault.WrongPassphraseOrChanged && outside.ReadKeyUnseen is not null && outside.Passphrase is null;
            if (!isAskedAgain || attempt == Tries)
            {
                return opening;
            }

            outside.Error.WriteLine(opening.Words);
        }
    }

    /// <summary>The exit code for a key file that does not open.</summary>
    public static int CodeOf(KeyFault? fault) =>
        fault switch
        {
            KeyFault.NoSuchFile => ExitCode.Wrong,
            KeyFault.Unreadable or KeyFault.Damaged => ExitCode.Damaged,
            _ => ExitCode.No,
        };

    private static string Asked(string name, int people, Surroundings outside)
    {
        string first = outside.Passphrase ?? outside.AskSecret(CommandWords.AskForPassphrase(name)) ?? "";
        return people < 2
            ? first
            : TwoPassphrases.Joined(first, outside.SecondPassphrase ?? outside.AskSecret(CommandWords.AskForSecondPassphrase(name)) ?? "");
    }
}
