using FieldSession.Journal;
using FieldSession.State;
using FieldSession.Terminal.Screens.Driving;

namespace FieldSession.Terminal.Commands;

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
        string levels = row.Passage switch
        {
            Reading reading => $"{reading.Levels}",
            Missed => "missed",
            _ => DrivingScreenWords.NotRead,
        };
        string spoilt = row.Reading?.Spoilt is { } flag ? $", spoilt: {flag.Cause.Word()}" : "";
        string doubt = row.IsOpenDoubt ? $" ? {row.Reading!.Doubt}" : "";
        return $"{row.Place} {row.Segment.Name} {levels}{spoilt}{doubt}";
    }
}

/// <summary>What 'enter' answers to questions.</summary>
internal static class EnterWords
{
    public static string WordsNow(string words) =>
        $"a question writes nothing; words that work now: {words}; 'fieldsession help words' has an example of each";

    public static string RunReadBack(string run, string readings) => $"a question writes nothing; {run}: {readings}";
}
