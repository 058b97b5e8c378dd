using System.CommandLine;
using System.Text;
using FieldSession.Journal;
using FieldSession.State;
using FieldSession.Terminal.Screens.Driving;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'enter': entry lines from standard input, one act a line, each answered once it is safe on disk.</summary>
internal static class EnterCommand
{
    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> study = new("STUDY") { Description = "the study file" };
        Option<string> backup = Backup();
        Command command = new("enter", "reads entry lines from standard input, one act a line") { study, backup };
        command.SetAction(typed =>
        {
            using OpenedStudy opened = OpenedStudy.At(typed.GetRequiredValue(study), outside, typed.GetValue(backup));
            return Run(opened.Logbook, outside, opened.TakeTrouble);
        });
        return command;
    }

    /// <summary>The folder for a copy after each run.</summary>
    public static Option<string> Backup() =>
        new("--backup") { Description = "a folder, such as a stick's, that gets a copy of the study after each run", HelpName = "DIR" };

    /// <summary>Takes line after line until the input ends.</summary>
    /// <returns>0; 1 where a line was refused or asked a question; 3 where one could not be saved.</returns>
    public static int Run(Logbook logbook, Surroundings outside, Func<string?>? trouble = null)
    {
        int worst = ExitCode.Done;
        int number = 0;
        SayTrouble(trouble, outside);
        while (TypedLines.Next(outside.Input) is { } line)
        {
            number++;
            if (EntryText.IsPassedOver(line))
            {
                continue;
            }

            string? answer = EnterQuestions.AnswerTo(line, logbook.Study);
            Outcome? outcome = answer is null ? logbook.Write(line) : null;
            outside.Output.WriteLine(outcome is null ? $"no {number}: {answer}" : InWords(outcome, number));
            outside.Output.Flush();
            SayTrouble(trouble, outside);
            worst = Math.Max(worst, outcome is null ? ExitCode.No : ExitCode.Of(outcome));
        }

        return worst;
    }

    private static void SayTrouble(Func<string?>? trouble, Surroundings outside)
    {
        if (trouble?.Invoke() is { } said)
        {
            outside.Error.WriteLine(said);
        }
    }

    /// <summary>The answer to one line.</summary>
    /// <param name="outcome">What came of it.</param>
    /// <param name="line">Its number in the input, from 1.</param>
    public static string InWords(Outcome outcome, long line) =>
        outcome switch
        {
            { Number: { } entry, Echo: { Doubt: { } doubt } echo } => $"ok {entry} ? {doubt}; stored: {echo.Words}",
            { Number: { } entry, Echo: { } echo } => $"ok {entry} {echo.Words}",
            _ => $"no {line}: {ShellWords.NotWritten(outcome)}",
        };
}

/// <summary>
/// Lines from a stream that may be anything, also one without an end of line: of a line that is too long, no more is kept than shows it.
/// </summary>
internal static class TypedLines
{
    /// <summary>
    /// The next line, without its end; null: there is none. One longer than <see cref="Typed.LongestLine"/> is cut just beyond.
    /// </summary>
    public static string? Next(TextReader input)
    {
        StringBuilder line = new();
        int read = input.Read();
        bool isThere = read >= 0;
        for (; read >= 0 && read != '\n'; read = input.Read())
        {
            if (line.Length <= Typed.LongestLine)
            {
                line.Append((char)read);
            }
        }

        return isThere ? WithoutReturn(line).ToString() : null;
    }

    private static StringBuilder WithoutReturn(StringBuilder line) =>
        line.Length > 0 && line[^1] == '\r' ? line.Remove(line.Length - 1, 1) : line;
}

/// <summary>
/// What somebody who types at 'enter' may ask, as on the screen: which words work now, and how the last run was written down. Nothing is
/// written by it. Nobody's identity and no comparison is in the answers.
/// </summary>
internal static class EnterQuestions
{
    private const string Words = "?";

    /// <summary>The answer in one line; null: the line is no question.</summary>
    /// <param name="line">What was typed.</param>
    /// <param name="study">The study as it is.</param>
    public static string? AnswerTo(string line, Study study)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.Trim() switch
        {
            Words => EnterWords.WordsNow(string.Join(", ", VerbTable.UsableIn(study).Select(verb => verb.Word))),
            { } word when Typed.Is(word, Parking.Word) => ReadBack(study),
            _ => null,
        };
    }

    private static string ReadBack(Study study) =>
        study.LastRun is { } run
            ? EnterWords.RunReadBack(DrivingScreenWords.RunAsTyped(run), string.Join("; ", StopRow.Of(study).Select(InWords)))
            : DrivingScreenWords.NoRunDrivenYet;

    private static string InWords(StopRow row)
    {
        string spoilt = row.Reading?.Spoilt is { } flag ? $", spoilt: {flag.Cause.Word()}" : "";
        string doubt = row.IsOpenDoubt ? $" ? {row.Reading!.Doubt}" : "";
        return $"{row.Place} {row.Segment.Name} {row.Levels}{spoilt}{doubt}";
    }
}

/// <summary>What 'enter' answers to questions.</summary>
internal static class EnterWords
{
    public static string WordsNow(string words) =>
        $"a question writes nothing; words that work now: {words}; 'fieldsession help words' has an example of each";

    public static string RunReadBack(string run, string readings) => $"a question writes nothing; {run}: {readings}";
}
