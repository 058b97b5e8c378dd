using System.CommandLine;
using System.Text;
using FieldSession.Sealing;
using FieldSession.Store.Sealing;
using FieldSession.Terminal.Custodian;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Commands;

/// <summary>What was typed behind 'fitting'.</summary>
/// <param name="Key">The key file.</param>
/// <param name="Earlier">The key of the fitting before it, which says what is on the cars; null: not given.</param>
/// <param name="Out">The sheet to write; null: none.</param>
/// <param name="IsCsv">Whether the table is wanted.</param>
/// <param name="IsPrinted">Whether the list goes to standard output although that is no terminal.</param>
internal sealed record FittingWords(string Key, string? Earlier, string? Out, bool IsCsv, bool IsPrinted)
{
    /// <summary>Whether the list is shown page by page and wiped.</summary>
    public bool IsShown => Out is null && !IsCsv && !IsPrinted;
}

/// <summary>The custodian's command 'fitting': what goes on the car for each run, which mark is written, what changes.</summary>
internal static class FittingCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> key = new("KEYFILE") { Description = "the custodian's key file" };
        Option<string?> earlier = new("--earlier")
        {
            Description = "after a re-fit: the key of the fitting before, which says what is on the car",
            HelpName = "KEYFILE",
        };
        Option<string?> sheet = new("--out")
        {
            Description = "writes a private sheet to print, with a slip for each run that names the code alone",
            HelpName = "FILE",
        };
        Option<bool> csv = new("--csv") { Description = "prints fitting, place, code, spec and mark as CSV, specs named" };
        Option<bool> print = new("--print")
        {
            Description = "prints the list to standard output, specs named, even where that is not a terminal",
        };
        Command command = new("fitting", "the custodian's: what goes on the car for each run, and the marks; alone, it names the specs")
        {
            key,
            earlier,
            sheet,
            csv,
            print,
        };
        command.SetAction(typed =>
            Run(
                new FittingWords(
                    typed.GetRequiredValue(key),
                    typed.GetValue(earlier),
                    typed.GetValue(sheet),
                    typed.GetValue(csv),
                    typed.GetValue(print)
                ),
                outside
            )
        );
        return command;
    }

    /// <summary>Shows, prints or writes the list.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(FittingWords words, Surroundings outside)
    {
        if (KeyFile.LabelOf(words.Key, out KeyOpening? refusal) is not { } label)
        {
            return Said($"{words.Key}: {refusal!.Words}", KeyPhrases.CodeOf(refusal.Fault), outside);
        }

        if (WhyNot(words, label.StudyName, outside) is { } why)
        {
            return Said($"fitting: {why}", ExitCode.Wrong, outside);
        }

        bool isSeen = outside.HasTerminal && words.Out is null;
        return isSeen && outside.Ask(CustodianWords.CanCrewSeeScreen)?.Trim() != CustodianWords.Alone
            ? Said(CustodianWords.NotAlone, ExitCode.No, outside)
            : Opened(words, outside);
    }

    private static int Opened(FittingWords words, Surroundings outside)
    {
        KeySheet? earlier = null;
        int code = Open(words.Key, outside, out KeySheet? key);
        code = code == ExitCode.Done && words.Earlier is { } path ? Open(path, outside, out earlier) : code;
        return code == ExitCode.Done ? Tell(key!, earlier, words, outside) : code;
    }

    private static string? WhyNot(FittingWords words, string studyName, Surroundings outside)
    {
        if (words.IsShown && !outside.HasTerminal)
        {
            return CustodianWords.NeedsFurtherWord;
        }

        if (words.Out is { } path)
        {
            return (KeyFile.ObjectionToPlace(path) ?? SecretPlace.ObjectionTo(path, studyName))?.ToString();
        }

        return outside.OutputFile switch
        {
            null => null,
            { Length: 0 } => CustodianWords.WhereOutputGoesIsUnknown,
            { } file => SecretPlace.ObjectionTo(file, studyName)?.ToString(),
        };
    }

    private static int Open(string path, Surroundings outside, out KeySheet? key)
    {
        KeyFile file = outside.KeyFile;
        KeyOpening opening = KeyPhrases.Open(path, phrase => file.Open(path, phrase), outside);
        key = opening.Key;
        return key is null ? Said($"{path}: {opening.Words}", KeyPhrases.CodeOf(opening.Fault), outside) : ExitCode.Done;
    }

    private static int Tell(KeySheet key, KeySheet? earlier, FittingWords words, Surroundings outside)
    {
        if (words.IsShown)
        {
            Palette palette = Palette.For(Environment.GetEnvironmentVariable("NO_COLOR"));
            int code = UsersOwn.Show(
                outside,
                own => TerminalProgram.Run(() => new FittingShell(key, earlier, palette, own.Habits.Letters))
            );
            TerminalSettings.WriteWipingCodes();
            return code == ExitCode.Done ? Said(CustodianWords.AfterList, code, outside) : code;
        }

        IEnumerable<string> lines =
            words.IsCsv ? FittingSheet.Table(key)
            : words.Out is null ? FittingSheet.List(key, earlier)
            : FittingSheet.Of(key, earlier);
        if (words.Out is not { } path)
        {
            foreach (string line in lines)
            {
                outside.Output.WriteLine(line);
            }

            return ExitCode.Done;
        }

        SecretSheet.Write(path, Encoding.UTF8.GetBytes(string.Join('\n', lines) + "\n"));
        outside.Error.WriteLine(CustodianWords.Written(path));
        return ExitCode.Done;
    }

    private static int Said(string what, int code, Surroundings outside)
    {
        outside.Error.WriteLine(what);
        return code;
    }
}
