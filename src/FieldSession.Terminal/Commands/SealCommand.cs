using System.Collections.Immutable;
using System.CommandLine;
using FieldSession.Journal;
using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Store;
using FieldSession.Store.Sealing;

namespace FieldSession.Terminal.Commands;

/// <summary>What was typed behind 'seal'.</summary>
/// <param name="Study">The study file.</param>
/// <param name="Specs">The custodian's list; null: a paper key.</param>
/// <param name="Key">The key file to write; null: a paper key.</param>
/// <param name="IsPaper">Whether the custodian keeps the key on paper.</param>
internal sealed record SealWords(string Study, string? Specs, string? Key, bool IsPaper);

/// <summary>
/// The custodian's command 'seal': draws the codes of a fitting by lot and locks the key away, or leaves the key to the
/// custodian's paper. It never says a spec's name.
/// </summary>
internal static class SealCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file" };
        Option<string?> specs = new("--specs") { Description = "file with one spec name a line, the control first", HelpName = "FILE" };
        Option<string?> key = new("--key") { Description = "the key file to write; keep it away from the crew", HelpName = "KEYFILE" };
        Option<bool> paper = new("--paper") { Description = "no key file: the custodian writes the key on paper, and there is no commitment" };
        Command command = new("seal", "the custodian's: draws codes by lot and writes the encrypted key file; again after every re-fit")
        {
            study, specs, key, paper,
        };
        command.SetAction(typed => Run(
            new SealWords(typed.GetRequiredValue(study), typed.GetValue(specs), typed.GetValue(key), typed.GetValue(paper)), outside));
        return command;
    }

    /// <summary>Seals a fitting of the study.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(SealWords words, Surroundings outside)
    {
        bool isWhole = words.IsPaper ? words is { Specs: null, Key: null } : words is { Specs: not null, Key: not null };
        if (!isWhole)
        {
            outside.Error.WriteLine("seal: give '--specs FILE --key KEYFILE', or '--paper' alone");
            return ExitCode.Wrong;
        }

        using OpenedStudy opened = OpenedStudy.At(words.Study, outside);
        if (SpecsSealed.ObjectionNow(opened.Logbook.Study) is { } against)
        {
            outside.Error.WriteLine(against);
            return ExitCode.No;
        }

        try
        {
            return words.IsPaper ? OnPaper(opened.Logbook, outside) : InFile(opened.Logbook, words.Specs!, words.Key!, outside);
        }
        catch (InvalidOperationException noneLeft)
        {
            outside.Error.WriteLine(noneLeft.Message);
            return ExitCode.No;
        }
    }

    /// <summary>Writes the key file, then puts codes and commitment into the study.</summary>
    /// <returns>An exit code.</returns>
    public static int Seal(Logbook logbook, KeySheet key, string keyPath, string passphrase, Surroundings outside)
    {
        SpecsSealed fact = new(key.Codes, Commitment.Of(key));
        if (fact.ObjectionIn(logbook.Study) is { } against)
        {
            outside.Error.WriteLine(against);
            return ExitCode.No;
        }

        KeyFile keyFile = new(outside.Lot);
        if ((KeyFile.ObjectionTo(keyPath, passphrase) ?? keyFile.Seal(keyPath, key, passphrase)) is { } refused)
        {
            outside.Error.WriteLine(refused);
            return ExitCode.Wrong;
        }

        int code = Answer.To(logbook.Write(fact), outside);
        if (code == ExitCode.Done)
        {
            outside.Output.WriteLine($"commitment {fact.Commitment}");
            outside.Error.WriteLine("write the commitment down before the next run; the key file stays with the custodian");
        }

        return code;
    }

    private static int InFile(Logbook logbook, string specsPath, string keyPath, Surroundings outside)
    {
        if (!File.Exists(specsPath))
        {
            outside.Error.WriteLine($"{specsPath}: there is no such file; give a text file with one spec name a line");
            return ExitCode.Wrong;
        }

        Study study = logbook.Study;
        if (SpecList.Parse(SmallText.Read(specsPath), study.Plan!.SpecCount, out Objection? refusal) is not { } specs)
        {
            outside.Error.WriteLine($"{specsPath}: {refusal}");
            return ExitCode.Wrong;
        }

        if (Passphrase(outside) is not { } passphrase)
        {
            outside.Error.WriteLine("the two passphrases are not the same; nothing was sealed, begin again");
            return ExitCode.Wrong;
        }

        return Seal(logbook, KeySheet.Drawn(study.Plan.StudyName, specs, [.. study.Codes], outside.Lot), keyPath, passphrase, outside);
    }

    private static int OnPaper(Logbook logbook, Surroundings outside)
    {
        Study study = logbook.Study;
        ImmutableList<SpecCode> codes = [.. CodeLot.Draw(study.Plan!.SpecCount, [.. study.Codes], outside.Lot)];
        int code = Answer.To(logbook.Write(new SpecsSealed(codes, null)), outside);
        if (code != ExitCode.Done)
        {
            return code;
        }

        outside.Output.WriteLine($"codes in the order of a lot: {string.Join(" ", CodeLot.Shuffled(codes, outside.Lot))}");
        outside.Error.WriteLine("write the specs on paper in any order of your own, these codes beside them, and show it to nobody; there is no commitment, and the report says so");
        return code;
    }

    // A slip in a passphrase that nobody sees while typing would lose the key: it is typed twice.
    private static string? Passphrase(Surroundings outside)
    {
        string first = outside.Passphrase ?? outside.AskSecret("passphrase of the key file: ") ?? "";
        bool isTyped = outside.Passphrase is null && outside.ReadKeyUnseen is not null;
        return !isTyped || outside.AskSecret("the same passphrase again: ") == first ? first : null;
    }
}
