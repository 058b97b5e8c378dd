using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace FieldSession.Terminal.Commands;

/// <summary>The help of a command: its words, then an example, what usually comes next and the exit codes.</summary>
/// <param name="words">What the library says of the command's words.</param>
internal sealed class GuidedHelp(HelpAction words) : SynchronousCommandLineAction
{
    /// <summary>Adds the guide to the help of a command and of all below it.</summary>
    public static RootCommand For(RootCommand root)
    {
        HelpOption help = root.Options.OfType<HelpOption>().Single();
        help.Action = new GuidedHelp((HelpAction)help.Action!);
        return root;
    }

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        ArgumentNullException.ThrowIfNull(parseResult);
        int code = words.Invoke(parseResult);
        TextWriter output = parseResult.InvocationConfiguration.Output;
        if (CommandGuide.Of(parseResult.CommandResult.Command.Name) is { } guide)
        {
            output.WriteLine($"Example:\n  {guide.Example}\n");
            output.Write(guide.Next is { } next ? $"Next:\n  {next}\n\n" : "");
        }
        else
        {
            output.WriteLine($"{CommandWords.WhereTopicsAre}\n");
        }

        output.WriteLine("Exit codes:");
        foreach ((string number, string meaning) in ExitCode.Meanings)
        {
            output.WriteLine($"  {number}  {meaning}");
        }

        return code;
    }
}
