using FieldSession.Driving;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>
/// How keys and box work together. An empty box has one-key acts, figures take a cause letter behind them, and what begins with
/// <c>;</c>, <c>:</c> or, at a stop, a letter is free until Enter. Letters that come as fast as those of a word are a word.
/// </summary>
internal static class Typing
{
    private const int FewestFiguresGlued = 3;
    private const int FiguresOfOneEnd = 2;

    /// <summary>What a character does to the box.</summary>
    /// <param name="text">What is in the box.</param>
    /// <param name="typed">The character.</param>
    /// <param name="moment">What it meets besides.</param>
    public static TypedKey Press(string text, char typed, TypingMoment moment)
    {
        if (text.Length == 0)
        {
            return OnEmpty(typed, moment);
        }

        return char.IsAsciiDigit(text[0]) ? OnReading(text, typed, moment) : OnWords(text, typed, moment);
    }

    /// <summary>The entry line that the box's text means: the sign that begins words is not part of it.</summary>
    public static string LineOf(string text) => text.TrimStart().StartsWith(':') ? text.TrimStart()[1..].Trim() : text.Trim();

    /// <summary>Whether a note ends in a reading that is glued to a word: a reading typed while a note was still in the box.</summary>
    public static bool EndsInReading(string note)
    {
        int begin = note.Length;
        while (begin > 0 && IsFigure(note[begin - 1]) && note[begin - 1] != ' ')
        {
            begin--;
        }

        return note.StartsWith(';')
            && begin > 1
            && char.IsLetter(note[begin - 1])
            && note.Length - begin >= FewestFiguresGlued
            && ReadingText.Parse(note[begin..])?.Entry is not null;
    }

    private static TypedKey OnEmpty(char typed, TypingMoment moment)
    {
        if (moment.Burst.MakesWordWith(typed))
        {
            return new TypedKey(TypedKind.Corrects, moment.Burst.Keys + typed);
        }

        if (BeginsVerb(typed, moment))
        {
            return new TypedKey(TypedKind.Corrects, moment.JustWritten + typed);
        }

        KeyRow? act = ActOf(typed, moment);
        return act is not null && moment.Burst.Repeats(typed) && moment.Since < Burst.Bounce
            ? Again(typed, moment)
            : OnEmpty(act, typed, moment);
    }

    // The first time it bounced; where it had already been taken twice, it is held down.
    private static TypedKey Again(char typed, TypingMoment moment) =>
        new(moment.Burst.Lines.Length > 1 ? TypedKind.IsHeld : TypedKind.Nothing, DrivingScreenWords.KeyBounced(typed), $"{typed}");

    private static TypedKey OnEmpty(KeyRow? act, char typed, TypingMoment moment) =>
        act is not null && !BeginsWord(act, moment.Study)
            ? new TypedKey(TypedKind.Writes, act.Line, $"{typed}")
            : OnEmptyWithoutAct(typed, moment);

    private static KeyRow? ActOf(char typed, TypingMoment moment)
    {
        KeyRow? speaker = moment.Keys.SpeakerOf(ScreenName.Drive, typed) is { } row && row.ObjectionIn(moment.Study) is null ? row : null;
        return speaker ?? moment.Keys.ActOf(ScreenName.Drive, typed);
    }

    /// <summary>
    /// Whether a letter that acted begins a word with the next. At a stop words are typed as on standard input, and some of their first
    /// letters are acts. Nobody means road and then undo, or wind and then entry doubt, in any other way.
    /// </summary>
    public static bool BeginsVerb(char typed, TypingMoment moment) =>
        moment.Study.RunOn is null
        && moment.JustWritten.Length > 0
        && VerbTable.All.Any(verb => verb.Word.StartsWith(moment.JustWritten + typed, StringComparison.OrdinalIgnoreCase));

    private static TypedKey OnEmptyWithoutAct(char typed, TypingMoment moment)
    {
        if (moment.Keys.AsksHelp(typed))
        {
            return new TypedKey(TypedKind.AsksHelp);
        }

        return typed switch
        {
            '-' or '.' or ',' or ' ' => new TypedKey(TypedKind.Nothing),
            _ when char.IsLetter(typed) && moment.Study.RunOn is not null => new TypedKey(
                TypedKind.Nothing,
                DrivingScreenWords.KeyDoesNothing(typed),
                $"{typed}"
            ),
            _ => new TypedKey(TypedKind.Goes),
        };
    }

    // At a stop a flag is no act before there is a reading, or once other acts came after it; nor is a key that only the road knows, where
    // a word begins so.
    private static bool BeginsWord(KeyRow act, Study study) =>
        study.RunOn is null
        && act.ObjectionIn(study) is not null
        && (IsFlag(act.Line) || VerbTable.All.Any(verb => verb.Word.StartsWith(act.Line, StringComparison.Ordinal)));

    // A figure right behind ';' is a phrase or refused; after a while it is the next reading, and what was begun is left to itself.
    private static TypedKey OnWords(string text, char typed, TypingMoment moment)
    {
        if (!char.IsAsciiDigit(typed) || text[0] != ';')
        {
            return new TypedKey(TypedKind.Goes);
        }

        return (text, moment) switch
        {
            (";", _) => new TypedKey(TypedKind.Writes, $";{typed}"),
            (_, { IsDraft: true }) when moment.Since >= Burst.Gap => new TypedKey(TypedKind.SetsAside, $"{typed}"),
            (_, { IsDraft: false }) when moment.Since >= Burst.Later && !text.EndsWith(' ') => new TypedKey(
                TypedKind.StoresFirst,
                $"{typed}"
            ),
            _ => new TypedKey(TypedKind.Goes),
        };
    }

    private static TypedKey OnReading(string text, char typed, TypingMoment moment)
    {
        int end = EndOfFigures(text);
        string flag = text[end..];
        string figures = text[..end].TrimEnd();
        if (char.IsAsciiDigit(typed) && moment.Since >= Burst.Later && IsMoreThanBegun(figures))
        {
            return new TypedKey(IsWhole(text, moment.Study) ? TypedKind.StoresFirst : TypedKind.SetsAside, $"{typed}");
        }

        return flag.Length == 0 || IsFlag(flag) ? OnFlagged(figures, flag, typed, moment) : new TypedKey(TypedKind.Goes);
    }

    private static TypedKey OnFlagged(string figures, string flag, char typed, TypingMoment moment) =>
        char.IsLetter(typed) && moment.Burst.MakesWordWith(typed)
            ? new TypedKey(TypedKind.Becomes, $"{figures} {moment.Burst.Keys}{typed}")
            : OnFigures(figures, flag, typed, moment.Keys);

    private static TypedKey OnFigures(string figures, string flag, char typed, KeyTable keys)
    {
        if (IsFigure(typed))
        {
            // Behind a flag figures still belong to the reading, but a blank begins the words about it.
            return flag.Length == 0 || typed == ' '
                ? new TypedKey(TypedKind.Goes)
                : new TypedKey(TypedKind.Becomes, $"{figures}{typed} {flag}");
        }

        if (keys.ActOf(ScreenName.Drive, typed) is { } act && IsFlag(act.Line))
        {
            return new TypedKey(TypedKind.Becomes, act.Line == flag ? figures : $"{figures} {act.Line}", $"{typed}");
        }

        return keys.AsksHelp(typed)
            ? new TypedKey(TypedKind.AsksHelp)
            : new TypedKey(TypedKind.Nothing, DrivingScreenWords.KeyWaitsForEmptyBox(typed), $"{typed}");
    }

    // One end of a range may wait for the other as long as the segment takes.
    private static bool IsMoreThanBegun(string figures) => figures.Length > FiguresOfOneEnd && char.IsAsciiDigit(figures[^1]);

    // A reading as the segment asks for it: a peak on an impact, a range anywhere else.
    private static bool IsWhole(string text, Study study) =>
        study.NextSegment is { } segment
        && EntryText.Parse(text, study).Entry is ReadingTaken reading
        && reading.Levels.IsSingle == segment.Kind.IsImpact;

    private static bool IsFlag(string text) => text.Length == 1 && SpoiltCauses.FromLetter(text[0]) is not null;

    private static bool IsFigure(char typed) => char.IsAsciiDigit(typed) || typed is '-' or '.' or ',' or ' ';

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
