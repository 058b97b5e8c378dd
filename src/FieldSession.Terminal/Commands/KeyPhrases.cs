using FieldSession.Store.Sealing;

namespace FieldSession.Terminal.Commands;

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
            bool isAskedAgain = opening.Fault == KeyFault.WrongPassphraseOrChanged && outside.ReadKeyUnseen is not null && outside.Passphrase is null;
            if (!isAskedAgain || attempt == Tries)
            {
                return opening;
            }

            outside.Error.WriteLine(opening.Words);
        }
    }

    /// <summary>The exit code for a key file that does not open.</summary>
    public static int CodeOf(KeyFault? fault) => fault switch
    {
        KeyFault.NoSuchFile => ExitCode.Wrong,
        KeyFault.Unreadable or KeyFault.Damaged => ExitCode.Damaged,
        _ => ExitCode.No,
    };

    private static string Asked(string name, int people, Surroundings outside)
    {
        string first = outside.Passphrase ?? outside.AskSecret(CommandWords.AskForPassphrase(name)) ?? "";
        return people < 2 ? first : TwoPassphrases.Joined(first, outside.SecondPassphrase ?? outside.AskSecret(CommandWords.AskForSecondPassphrase(name)) ?? "");
    }
}
