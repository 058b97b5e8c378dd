using System.CommandLine;
using FieldSession.Journal;
using FieldSession.Sealing;
using FieldSession.Store.Sealing;

namespace FieldSession.Terminal.Commands;

/// <summary>The custodian's command 'seal': draws the codes by lot and locks the key away. It never says a spec's name.</summary>
internal static class SealCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file" };
        Option<string> specs = new("--specs") { Description = "file with one spec name a line, the control first", Required = true, HelpName = "FILE" };
        Option<string> key = new("--key") { Description = "the key file to write; keep it away from the crew", Required = true, HelpName = "KEYFILE" };
        Command command = new("seal", "the custodian's: draws codes by lot and writes the encrypted key file") { study, specs, key };
        command.SetAction(typed => Run(typed.GetRequiredValue(study), typed.GetRequiredValue(specs), typed.GetRequiredValue(key), outside));
        return command;
    }

    /// <summary>Seals the study.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(string path, string specsPath, string keyPath, Surroundings outside)
    {
        using OpenedStudy opened = OpenedStudy.At(path, outside);
        if (opened.Logbook.Study.Plan is not { } plan)
        {
            outside.Error.WriteLine($"{path}: the study has no plan; make it with 'start' first");
            return ExitCode.No;
        }

        if (!File.Exists(specsPath))
        {
            outside.Error.WriteLine($"{specsPath}: there is no such file; give a text file with one spec name a line");
            return ExitCode.Wrong;
        }

        if (SpecList.Parse(File.ReadAllText(specsPath), plan.SpecCount, out Objection? refusal) is not { } specs)
        {
            outside.Error.WriteLine($"{specsPath}: {refusal}");
            return ExitCode.Wrong;
        }

        string passphrase = outside.Passphrase ?? outside.Ask("passphrase of the key file: ") ?? "";
        return Seal(opened.Logbook, KeySheet.Drawn(plan.StudyName, specs, [], outside.Lot), keyPath, passphrase, outside);
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
            outside.Error.WriteLine("write the commitment down before run 1; the key file stays with the custodian");
        }

        return code;
    }
}
