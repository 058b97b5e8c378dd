using System.CommandLine;
using System.Reflection;
using FieldSession.Reporting;
using FieldSession.Revealing;
using FieldSession.Store.Exports;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'report': writes the report of a study.</summary>
internal static class ReportCommand
{
    private const string FileName = "report.md";

    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file" };
        Option<string> folder = new("--out") { Description = "the folder to write into", Required = true, HelpName = "DIR" };
        Command command = new("report", "writes the report") { study, folder };
        command.SetAction(typed =>
        {
            using OpenedStudy opened = OpenedStudy.At(typed.GetRequiredValue(study), outside);
            outside.Output.WriteLine(Write(opened.Logbook, typed.GetRequiredValue(folder)));
            return ExitCode.Done;
        });
        return command;
    }

    /// <summary>Writes the report and gives its path. An unopened key leaves it blind.</summary>
    public static string Write(Logbook logbook, string folder)
    {
        Directory.CreateDirectory(folder);
        string path = Path.Combine(folder, FileName);
        string beside = path + ".part";
        File.WriteAllText(beside, Markdown(logbook));
        File.Move(beside, path, overwrite: true);
        return path;
    }

    /// <summary>The report as Markdown.</summary>
    public static string Markdown(Logbook logbook)
    {
        Provenance provenance = new(logbook.Lines.Count, logbook.HeadHash, ProgramVersion);
        return ReportMarkdown.Of(DayReport.Of(logbook.Study, OpenedKey.In(logbook.Entries), provenance));
    }

    /// <summary>Version of the program.</summary>
    public static string ProgramVersion =>
        typeof(ReportCommand).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0] ?? "0";
}
