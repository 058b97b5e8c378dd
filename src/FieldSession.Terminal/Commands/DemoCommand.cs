using System.CommandLine;
using FieldSession.Terminal.Demonstration;

namespace FieldSession.Terminal.Commands;

/// <summary>
/// The command 'demo': lays the demo study and opens it on its last run; replayed, it plays the whole day through the
/// same entry lines and prints the blind summary, the reveal and the report.
/// </summary>
internal static class DemoCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Option<bool> replay = new("--replay") { Description = "plays the demo day and prints summary, reveal and report" };
        Option<string?> folder = new("--out") { Description = "where to lay the demo's files", HelpName = "DIR" };
        Command command = new("demo", "lays the demo study and opens it") { replay, folder };
        command.SetAction(typed =>
        {
            DemoFolder files = DemoFolder.At(typed.GetValue(folder), outside);
            return typed.GetValue(replay) || !outside.HasTerminal ? Replay(files, outside) : Open(files, outside);
        });
        return command;
    }

    private static int Open(DemoFolder files, Surroundings outside)
    {
        DemoClock clock = new();
        using (OpenedStudy laid = OpenedStudy.New(files.Study, outside with { Clock = clock, Output = TextWriter.Null, Error = TextWriter.Null }))
        {
            int code = DemoDay.Lay(laid.Logbook, files.Key, outside with { Output = TextWriter.Null, Error = TextWriter.Null });
            if (code != ExitCode.Done)
            {
                return code;
            }

            DemoDay.Type(laid.Logbook, "quillmere/day.txt", clock, DemoDay.RunsDriven);
        }

        Surroundings later = outside with { Clock = new LaterClock(outside.Clock, clock.GetUtcNow()) };
        using OpenedStudy opened = OpenedStudy.At(files.Study, later);
        int ended = DriveCommand.OpenScreens(opened, later, files.Folder);
        outside.Error.WriteLine($"the demo lies in {files.Folder}; its key file opens with the passphrase '{DemoDay.Passphrase}'");
        return ended;
    }

    private static int Replay(DemoFolder files, Surroundings outside)
    {
        DemoClock clock = new();
        Surroundings then = outside with { Clock = clock };
        int code;
        using (OpenedStudy opened = OpenedStudy.New(files.Study, then))
        {
            code = Play(opened.Logbook, files, clock, then);
        }

        files.Leave();
        return code;
    }

    private static int Play(Logbook logbook, DemoFolder files, DemoClock clock, Surroundings outside)
    {
        int code = DemoDay.Lay(logbook, files.Key, outside);
        if (code != ExitCode.Done)
        {
            return code;
        }

        DemoDay.Type(logbook, "quillmere/day.txt", clock, int.MaxValue);
        DemoDay.Type(logbook, "quillmere/energy.txt", clock, int.MaxValue);
        outside.Output.WriteLine();
        ReviewCommand.Print(logbook, outside);
        DemoDay.Type(logbook, "quillmere/evening.txt", clock, int.MaxValue);
        outside.Output.WriteLine();
        RevealWords words = new(files.Study, files.Key, ["417=STANDARD", "862=STIFFENED"], ["Ro", "Ilse"]);
        code = RevealCommand.Run(logbook, words, outside with { Passphrase = DemoDay.Passphrase });
        outside.Output.WriteLine();
        outside.Output.Write(ReportCommand.Markdown(logbook));
        if (files.IsKept)
        {
            outside.Error.WriteLine($"report: {ReportCommand.Write(logbook, files.Folder)}");
        }

        return code;
    }
}
