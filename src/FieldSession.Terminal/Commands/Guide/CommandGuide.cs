using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using FieldSession.Reviewing;

namespace FieldSession.Terminal.Commands;

/// <summary>What a command's help adds to its words: a line that can be typed, and what usually comes next.</summary>
/// <param name="Name">The command.</param>
/// <param name="Example">A whole line.</param>
/// <param name="Next">The command that usually follows; null: the study itself says what is due.</param>
internal sealed record CommandGuide(string Name, string Example, string? Next = null)
{
    /// <summary>The row of a command; null: it is no command of the program, but the program itself.</summary>
    public static CommandGuide? Of(string name) => GuideWords.Rows.FirstOrDefault(guide => guide.Name == name);
}

/// <summary>The lines that the help of each command shows: one that can be typed, and one that usually follows.</summary>
internal static class GuideWords
{
    private const string Sealing = "fieldsession seal winter --specs specs.txt --key a.key --public a.codes --draw-marks";

    /// <summary>A row for every command, in the order of the job.</summary>
    public static ImmutableArray<CommandGuide> Rows { get; } =
    [
        new("plan", "fieldsession plan winter", "fieldsession start winter day.study"),
        new("orders", "fieldsession orders winter", "fieldsession start winter day.study"),
        new("tyre", "fieldsession tyre 225/45R18", "fieldsession plan winter"),
        new("paper", "fieldsession paper winter --out sheets", "fieldsession start winter day.study"),
        new("start", "fieldsession start winter day.study", Sealing),
        new("seal", Sealing, "fieldsession codes day.study a.codes"),
        new(CodesCommand.Name, "fieldsession codes day.study a.codes"),
        new("fitting", "fieldsession fitting a.key", "fieldsession reveal day.study --key a.key"),
        new("keycheck", "fieldsession keycheck a.key", "fieldsession fitting a.key"),
        new(ScreenName.Drive, "fieldsession drive day.study --backup /media/stick"),
        new("enter", "fieldsession enter day.study"),
        new("legs", "fieldsession legs day.study legs.csv"),
        new("slip", "fieldsession slip day.study --for Kim"),
        new("listen", "fieldsession listen day.study run1.wav run2.wav"),
        new("log", "fieldsession log day.study meter.csv"),
        new("play", "fieldsession play day.study recordings --player aplay --for Kim"),
        new("compare", "fieldsession compare day.study", "fieldsession review day.study"),
        new("merge", "fieldsession merge day.study other.study"),
        new(ScreenName.Review, "fieldsession review day.study"),
        new(ScreenName.Predict, "fieldsession predict day.study"),
        new(ScreenName.Reveal, "fieldsession reveal day.study --key a.key"),
        new(ScreenName.Report, "fieldsession report day.study --out report", "fieldsession export day.study --out tables"),
        new("export", "fieldsession export day.study --out tables", "fieldsession archive studies"),
        new("schema", "fieldsession schema postgresql", "fieldsession export day.study --out tables"),
        new("score", "fieldsession score day.study", "fieldsession archive studies"),
        new("archive", "fieldsession archive studies", "fieldsession plan summer"),
        new("verify", "fieldsession verify day.study"),
        new("rescue", "fieldsession rescue day.study --out whole.study", "fieldsession verify day.study"),
        new("size", "fieldsession size --runs 6 --margin 1", "fieldsession plan winter"),
        new("levels", "fieldsession levels run1.wav --tone 94", "fieldsession listen day.study run1.wav"),
        new("demo", "fieldsession demo --replay", "fieldsession plan winter"),
        new("help", "fieldsession help why-blind", "fieldsession demo"),
        new("completion", "fieldsession completion bash", "fieldsession demo"),
        new("man", "fieldsession man | man -l -", "fieldsession demo"),
        new("licences", "fieldsession licences", "fieldsession demo"),
    ];
}

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
            foreach (string line in PlainLines.Wrapped($"  {number}  ", meaning))
            {
                output.WriteLine(line);
            }
        }

        return code;
    }
}
