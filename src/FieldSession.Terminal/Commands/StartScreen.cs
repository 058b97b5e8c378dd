using FieldSession.Terminal.Look;
using FieldSession.Terminal.Starting;

namespace FieldSession.Terminal.Commands;

/// <summary>The program without words: the start screen, then the study that was chosen on it.</summary>
internal static class StartScreen
{
    /// <summary>Shows the start screen, and opens what is chosen.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(Surroundings outside) => UsersOwn.Show(outside, own => Run(own, outside));

    private static int Run(UsersOwn own, Surroundings outside)
    {
        RecentFile recent = new(outside.StateFolder);
        StartChoice? chosen = null;
        OpenedStudy? opened = null;
        StartDesk desk = new()
        {
            Recent = RecentStudies.At(recent.Paths),
            Keys = StartDesk.ForStart(own.Keys),
            Palette = Palette.For(Environment.GetEnvironmentVariable("NO_COLOR")),
            Open = choice =>
            {
                (opened, string? refusal) = Opened(choice, outside);
                chosen = refusal is null ? choice : null;
                return refusal;
            },
        };
        int code = TerminalProgram.Run(() => new StartShell(desk));
        using (opened)
        {
            return (chosen, opened) switch
            {
                ({ Kind: StartKind.Demo }, _) when code == ExitCode.Done => DemoCommand.Open(outside),
                ({ Kind: StartKind.Planning } folder, _) when code == ExitCode.Done => PlanCommand.Run(folder.Path, outside),
                ({ } choice, { } study) when code == ExitCode.Done => Show(study, StudyPath(choice, study), own, recent, outside),
                _ => code,
            };
        }
    }

    /// <summary>Opens what was chosen, or says why it can't be opened.</summary>
    public static (OpenedStudy? Opened, string? Refusal) Opened(StartChoice choice, Surroundings outside)
    {
        using StringWriter said = new();
        Surroundings quiet = outside with { Output = TextWriter.Null, Error = said };
        try
        {
            return choice.Kind switch
            {
                StartKind.Demo or StartKind.Planning => (null, null),
                StartKind.Study => (OpenedStudy.At(choice.Path, quiet), null),
                _ => StartCommand.Made(choice.Path, quiet) is { } made ? (made, null) : (null, InOneLine(said)),
            };
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            return (null, refused.Message);
        }
    }

    private static string InOneLine(StringWriter said) =>
        string.Join("; ", said.ToString().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));

    private static string StudyPath(StartChoice choice, OpenedStudy study) =>
        choice.Kind == StartKind.Plan ? StartCommand.PathIn(choice.Path, study.Logbook.Study.Plan!) : choice.Path;

    private static int Show(OpenedStudy study, string path, UsersOwn own, RecentFile recent, Surroundings outside)
    {
        recent.Remember(path);
        return DriveCommand.OpenScreens(
            study,
            own,
            outside,
            Path.GetDirectoryName(Path.GetFullPath(path))!,
            NextStep.Screen(study.Logbook.Study)
        );
    }
}
