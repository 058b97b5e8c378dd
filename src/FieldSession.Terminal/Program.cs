using FieldSession.Store.Journaling;
using FieldSession.Terminal.Commands;

namespace FieldSession.Terminal;

/// <summary>The program: its words go to a command; what breaks is said here, once.</summary>
internal static class Program
{
    private static int Main(string[] words)
    {
        Surroundings outside = Surroundings.OfThisProcess();
        try
        {
            return CommandLine.Run(words, outside);
        }
        catch (Exception wrong) when (wrong is StudyMissingException or StudyNameException or StudyExistsException)
        {
            outside.Error.WriteLine($"fieldsession: {wrong.Message}");
            return ExitCode.Wrong;
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            outside.Error.WriteLine($"fieldsession: {broken.Message}");
            return ExitCode.Damaged;
        }
    }
}
