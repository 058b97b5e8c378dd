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
        Argument<string> name = new("NAME")
        {
            Description = $"which demo: {string.Join(", ", DemoStudy.All.Select(demo => demo.Name))}",
            DefaultValueFactory = _ => DemoStudy.All[0].Name,
        };
        name.CompletionSources.Add([.. DemoStudy.All.Select(demo => demo.Name)]);
        Option<bool> replay = new("--replay") { Description = "plays the demo day and prints summary, reveal and report" };
        Option<string?> folder = new("--out") { Description = "where to lay the demo's files", HelpName = "DIR" };
        Option<bool> recordings = new("--recordings") { Description = "makes recordings of the driven runs too, and listens to them" };
        Command command = new("demo", "lays a demo study and opens it") { name, replay, folder, recordings };
        command.SetAction(typed =>
        {
            if (DemoStudy.Named(typed.GetRequiredValue(name)) is not { } demo)
            {
                outside.Error.WriteLine(
                    $"demo: there is no demo '{typed.GetRequiredValue(name)}'; there are "
                        + $"{string.Join(", ", DemoStudy.All.Select(one => one.Name))}"
                );
                return ExitCode.Wrong;
            }

            DemoFolder files = DemoFolder.At(demo, typed.GetValue(folder), outside) with { IsRecorded = typed.GetValue(recordings) };
            if (files.IsRecorded)
            {
                outside.Error.WriteLine(DemoWords.MakesRecordings(files.Recordings));
            }

            return typed.GetValue(replay) || !outside.HasTerminal ? Replay(files, outside) : Open(files, outside);
        });
        return command;
    }

    /// <summary>Lays the first demo in a new folder and opens it.</summary>
    /// <returns>An exit code.</returns>
    public static int Open(Surroundings outside) => Open(DemoFolder.At(DemoStudy.All[0], null, outside), outside);

    /// <summary>Lays a demo's files: planned, sealed, and driven as far as is not left to whoever tries it.</summary>
    /// <param name="files">Where to.</param>
    /// <param name="clock">The day's clock; it is at the last act afterwards.</param>
    /// <param name="outside">The world outside.</param>
    /// <returns>An exit code.</returns>
    public static int Lay(DemoFolder files, DemoClock clock, Surroundings outside)
    {
        Surroundings unheard = outside with { Clock = clock, Output = TextWriter.Null, Error = TextWriter.Null };
        using OpenedStudy laid = OpenedStudy.New(files.Study, unheard);
        int code = DemoDay.Lay(files.Demo, laid.Logbook, files.Key, unheard);
        if (code == ExitCode.Done)
        {
            DemoDay.Type(laid.Logbook, files.Demo.Lines("day.txt"), clock, files.Demo.RunsDriven);
            code = Recorded(files, laid.Logbook, unheard);
        }

        return code;
    }

    private static int Recorded(DemoFolder files, Logbook logbook, Surroundings outside) =>
        files.IsRecorded ? DemoRecordings.Take(files, logbook, outside) : ExitCode.Done;

    private static int Open(DemoFolder files, Surroundings outside)
    {
        DemoClock clock = new();
        int code = Lay(files, clock, outside);
        if (code != ExitCode.Done)
        {
            return code;
        }

        Surroundings later = outside with { Clock = new LaterClock(outside.Clock, clock.GetUtcNow()) };
        int ended = UsersOwn.Show(
            outside,
            own =>
            {
                using OpenedStudy opened = OpenedStudy.At(files.Study, later);
                return DriveCommand.OpenScreens(opened, own, later, files.Folder, keyOfDemo: files.OpensKey);
            }
        );
        outside.Error.WriteLine(files.Farewell);
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
        int code = DemoDay.Lay(files.Demo, logbook, files.Key, outside);
        if (code != ExitCode.Done)
        {
            return code;
        }

        foreach (string file in files.Demo.DrivenFiles)
        {
            DemoDay.Type(logbook, files.Demo.Lines(file), clock, int.MaxValue);
        }

        code = Recorded(files, logbook, outside);
        outside.Output.WriteLine();
        ReviewCommand.Print(logbook, outside);
        DemoDay.Type(logbook, files.Demo.Lines("evening.txt"), clock, int.MaxValue);
        outside.Output.WriteLine();
        RevealWords words = new(files.Study, [files.Key], DemoDay.Marks(files.Demo), files.Demo.MarkReaders);
        code = RevealCommand.Run(logbook, words, outside with { Passphrase = files.Demo.Passphrase });
        outside.Output.WriteLine();
        outside.Output.Write(ReportCommand.Markdown(logbook));
        if (files.IsKept)
        {
            outside.Error.WriteLine($"report: {ReportCommand.Write(logbook, files.Folder)}, and as a page beside it");
        }

        return code;
    }
}
