using System.CommandLine;
using System.Reflection;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'licences': prints the notices of the packages that the program carries along.</summary>
internal static class LicencesCommand
{
    private const string Notices = "licences.md";

    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Command command = new("licences", "prints the licence notices of the packages in the program");
        command.SetAction(_ =>
        {
            using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Notices)
                ?? throw new FileNotFoundException($"{Notices} is not in the program", Notices);
            using StreamReader reader = new(stream);
            outside.Output.Write(reader.ReadToEnd());
            return ExitCode.Done;
        });
        return command;
    }
}
