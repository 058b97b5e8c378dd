using System.CommandLine;
using System.Reflection;
using FieldSession.Reporting;
using FieldSession.Revealing;
using FieldSession.State;
using FieldSession.Store.Exports;
using FieldSession.Store.Exports.Html;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'report': writes the report of a study, or the template that its page is made with.</summary>
internal static class ReportCommand
{
    // the usual word for standard output
    private const string Printed = "-";

    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string?> study = new("STUDY") { Description = "the study file", Arity = ArgumentArity.ZeroOrOne };
        Option<string?> folder = new("--out") { Description = "the folder to write into; - prints the Markdown", HelpName = "DIR" };
        Option<bool> onePage = new("--one-page") { Description = "the answer on one page, to hand over" };
        Option<string?> template = new("--template")
        {
            Description = "a template of your own for the page, or a folder with a logo",
            HelpName = "FILE",
        };
        Option<string?> templateOut = new("--template-out")
        {
            Description = "writes the program's template to start from",
            HelpName = "FILE",
        };
        Command command = new("report", "writes the report, as Markdown and as one page of HTML")
        {
            study,
            folder,
            onePage,
            template,
            templateOut,
        };

        // on a thread of its own, so that Ctrl-C is heard while it writes
        command.SetAction(
            (typed, stop) =>
                Task.Run(
                    () =>
                        Run(
                            new ReportWords(
                                typed.GetValue(study),
                                typed.GetValue(folder),
                                typed.GetValue(template),
                                typed.GetValue(templateOut),
                                typed.GetValue(onePage)
                            ),
                            outside,
                            stop
                        ),
                    CancellationToken.None
                )
        );
        return command;
    }

    /// <summary>Writes what was asked for and prints the paths, one a line.</summary>
    /// <returns>An exit code.</returns>
    public static int Run(ReportWords words, Surroundings outside, CancellationToken stop)
    {
        try
        {
            return words switch
            {
                { TemplateOut: { } file, Study: null, IsOnePage: false } => WriteTemplate(file, outside),
                { TemplateOut: null, Template: null, IsOnePage: false, Study: { } printed, Folder: Printed } => Print(printed, outside),
                { TemplateOut: null, Study: not null, Folder: { } folder } when File.Exists(folder) => IsFile(folder, outside),
                { TemplateOut: null, Study: { } study, Folder: { } folder } => Write(study, folder, words, outside, stop),
                _ => Wrong(outside),
            };
        }
        catch (TemplateRefusedException refused)
        {
            outside.Error.WriteLine(refused.Message);
            return ExitCode.Wrong;
        }
        catch (OperationCanceledException)
        {
            outside.Error.WriteLine($"{words.Folder}: stopped; nothing was changed there");
            return ExitCode.No;
        }
    }

    /// <summary>
    /// Writes the report with the program's template and gives the path of its Markdown. An unopened key leaves it blind.
    /// </summary>
    public static string Write(Logbook logbook, string folder) =>
        NumberForm.OfFiles(() =>
            ReportFolder.Write(folder, Of(logbook, Logbook.Fold(logbook.Lines)), ReportTemplate.Default, CancellationToken.None)[0]
        );

    /// <summary>The report as Markdown.</summary>
    public static string Markdown(Logbook logbook) => ReportMarkdown.Of(Of(logbook));

    /// <summary>Version of the program.</summary>
    public static string ProgramVersion =>
        typeof(ReportCommand).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0]
        ?? "0";

    private static Report Of(Logbook logbook) => Of(logbook, logbook.Study);

    private static Report Of(Logbook logbook, Study study) =>
        DayReport.Of(study, OpenedKey.In(logbook.Entries), new Provenance(logbook.Lines.Count, logbook.HeadHash, ProgramVersion));

    private static int Write(string study, string folder, ReportWords words, Surroundings outside, CancellationToken stop)
    {
        ReportTemplate template = words.Template is null ? ReportTemplate.Default : ReportTemplate.At(words.Template);
        using OpenedStudy opened = OpenedStudy.ToRead(study, outside);
        Report report = Of(opened.Logbook);
        foreach (
            string written in words.IsOnePage
                ? ReportFolder.WriteOnePage(folder, report, template, stop)
                : ReportFolder.Write(folder, report, template, stop)
        )
        {
            outside.Output.WriteLine(written);
        }

        return ExitCode.Done;
    }

    private static int Print(string study, Surroundings outside)
    {
        using OpenedStudy opened = OpenedStudy.ToRead(study, outside);
        outside.Output.Write(Markdown(opened.Logbook));
        return ExitCode.Done;
    }

    private static int WriteTemplate(string file, Surroundings outside)
    {
        ReportFolder.WriteTemplate(file);
        outside.Output.WriteLine(file);
        return ExitCode.Done;
    }

    private static int IsFile(string folder, Surroundings outside)
    {
        outside.Error.WriteLine($"--out {folder}: this is a file; give a folder to write into");
        return ExitCode.Wrong;
    }

    private static int Wrong(Surroundings outside)
    {
        outside.Error.WriteLine("fieldsession: give 'report STUDY --out DIR', or 'report --template-out FILE' alone");
        return ExitCode.Wrong;
    }
}

/// <summary>What was typed behind 'report'.</summary>
/// <param name="Study">The study file; null: none.</param>
/// <param name="Folder">The folder to write into; null: none.</param>
/// <param name="Template">A template of the team's own; null: the program's.</param>
/// <param name="TemplateOut">Where the program's template is to go; null: nowhere.</param>
/// <param name="IsOnePage">Whether only the sheet to hand over is wanted.</param>
internal sealed record ReportWords(string? Study, string? Folder, string? Template, string? TemplateOut, bool IsOnePage);
