using FieldSession.Terminal.Commands;

namespace FieldSession.Terminal;

/// <summary>The program: its words go to a command.</summary>
internal static class Program
{
    private static int Main(string[] words) => CommandLine.Run(words, Surroundings.OfThisProcess());
}
