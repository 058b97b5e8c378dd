using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>What becomes of a typed character.</summary>
internal enum TypedKind
{
    /// <summary>It goes into the box where the cursor stands.</summary>
    Goes,

    /// <summary>The box holds another text now.</summary>
    Becomes,

    /// <summary>A line is written at once, without Enter.</summary>
    Writes,

    /// <summary>It shows that the act before was the beginning of a word: the act is taken back and the word stands in the box.</summary>
    Corrects,

    /// <summary>It asks for the help.</summary>
    AsksHelp,

    /// <summary>It means nothing here; there may be words about it.</summary>
    Nothing,
}

/// <summary>What becomes of a typed character, and the text, the line or the words about it.</summary>
/// <param name="Kind">What becomes of it.</param>
/// <param name="Text">The box's new text, the line to write, or words for the crew.</param>
/// <param name="Begun">The character, where it may yet turn out to be the beginning of a word; empty: it can't.</param>
internal readonly record struct TypedKey(TypedKind Kind, string Text = "", string Begun = "");

/// <summary>
/// How keys and box work together, without any mode beside the text in the box: an empty box has one-key acts, figures
/// take a cause letter behind them, and what begins with <c>;</c>, <c>:</c> or a letter is free until Enter.
/// </summary>
internal static class Typing
{
    // At a stop words are typed as on standard input. Right after a reading or a note some of their first letters are acts,
    // so the second letter takes the act back: "run", "rate", "weather", "shift", "extra", "calibration", "choose", "confirm".
    // Nobody means road and then undo, or wind and then entry doubt, in any other way.
    private static readonly ImmutableArray<string> WordsAtAStop = ["ru", "ra", "we", "sh", "ex", "ca", "ch", "co"];

    /// <summary>What a character does to the box.</summary>
    /// <param name="text">What stands in the box.</param>
    /// <param name="typed">The character.</param>
    /// <param name="study">The study, for the plan's phrases.</param>
    /// <param name="keys">The keys that act.</param>
    /// <param name="justWritten">The character before, where it wrote a line at once; empty: none.</param>
    public static TypedKey Press(string text, char typed, Study study, KeyTable keys, string justWritten = "")
    {
        if (text.Length == 0)
        {
            return study.RunOn is null && WordsAtAStop.Contains((justWritten + typed).ToLowerInvariant())
                ? new TypedKey(TypedKind.Corrects, justWritten + typed)
                : OnEmpty(typed, study, keys);
        }

        return char.IsAsciiDigit(text[0]) ? OnReading(text, typed, keys) : OnWords(text, typed, study);
    }

    /// <summary>The entry line that the box's text means: the sign that begins words is not part of it.</summary>
    public static string LineOf(string text) => text.TrimStart().StartsWith(':') ? text.TrimStart()[1..].Trim() : text.Trim();

    private static TypedKey OnEmpty(char typed, Study study, KeyTable keys)
    {
        KeyRow? speaker = keys.SpeakerOf(KeyTable.Drive, typed) is { } row && row.ObjectionIn(study) is null ? row : null;
        KeyRow? act = speaker ?? keys.ActOf(KeyTable.Drive, typed);
        return act is not null && !BeginsWord(act, study)
            ? new TypedKey(TypedKind.Writes, act.Line, $"{typed}")
            : OnEmptyWithoutAct(typed, study, keys);
    }

    private static TypedKey OnEmptyWithoutAct(char typed, Study study, KeyTable keys)
    {
        if (keys.AsksHelp(typed))
        {
            return new TypedKey(TypedKind.AsksHelp);
        }

        return typed switch
        {
            '-' or '.' or ',' or ' ' => new TypedKey(TypedKind.Nothing),
            _ when char.IsLetter(typed) && study.RunOn is not null => new TypedKey(TypedKind.Nothing, DrivingScreenWords.KeyDoesNothing(typed)),
            _ => new TypedKey(TypedKind.Goes),
        };
    }

    // At a stop a flag is no act before there is a reading, or once other acts came after it.
    private static bool BeginsWord(KeyRow act, Study study) => study.RunOn is null && IsFlag(act.Line) && act.ObjectionIn(study) is not null;

    private static TypedKey OnWords(string text, char typed, Study study) => text == ";" && PhraseOf(typed, study) is { } phrase
        ? new TypedKey(TypedKind.Writes, phrase)
        : new TypedKey(TypedKind.Goes);

    private static TypedKey OnReading(string text, char typed, KeyTable keys)
    {
        int end = EndOfFigures(text);
        string flag = text[end..];
        return flag.Length > 0 && !IsFlag(flag)
            ? new TypedKey(TypedKind.Goes)
            : OnFigures(text[..end].TrimEnd(), flag, typed, keys);
    }

    private static TypedKey OnFigures(string figures, string flag, char typed, KeyTable keys)
    {
        if (IsFigure(typed))
        {
            // Behind a flag figures still belong to the reading, but a blank begins the words about it.
            return flag.Length == 0 || typed == ' '
                ? new TypedKey(TypedKind.Goes)
                : new TypedKey(TypedKind.Becomes, $"{figures}{typed} {flag}");
        }

        if (keys.ActOf(KeyTable.Drive, typed) is { } act && IsFlag(act.Line))
        {
            return new TypedKey(TypedKind.Becomes, act.Line == flag ? figures : $"{figures} {act.Line}");
        }

        return keys.AsksHelp(typed)
            ? new TypedKey(TypedKind.AsksHelp)
            : new TypedKey(TypedKind.Nothing, DrivingScreenWords.KeyWaitsForEmptyBox(typed));
    }

    private static bool IsFlag(string text) => text.Length == 1 && SpoiltCauses.FromLetter(text[0]) is not null;

    private static bool IsFigure(char typed) => char.IsAsciiDigit(typed) || typed is '-' or '.' or ',' or ' ';

    private static string? PhraseOf(char typed, Study study) =>
        typed is >= '1' and <= '9' && typed - '0' <= (study.Plan?.Phrases.Count ?? 0) ? $";{typed}" : null;

    private static int EndOfFigures(string text)
    {
        int end = 0;
        while (end < text.Length && IsFigure(text[end]))
        {
            end++;
        }

        return end;
    }
}
