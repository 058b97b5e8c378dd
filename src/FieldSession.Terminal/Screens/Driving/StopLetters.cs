using System.Text;
using FieldSession.State;
using Terminal.Gui.Input;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>What a character on the empty box of the stop is.</summary>
internal enum StopLetter
{
    /// <summary>A key like any other: it acts, or goes into the box.</summary>
    Key,

    /// <summary>It shows that the keys before were letters of a word, which is now in the box.</summary>
    Word,

    /// <summary>It came again too soon: it bounced, or is held down.</summary>
    Bounce,
}

/// <summary>
/// Tells letters of a word from the stop's one-key acts, as the drive screen does: letters that come as fast as those of a word are one.
/// </summary>
/// <param name="desk">The keys, the clock and the study.</param>
/// <param name="pen">The hand that writes.</param>
internal sealed class StopLetters(Desk desk, Pen pen)
{
    private readonly Rhythm _rhythm = new(desk.Clock);

    /// <summary>Whether a letter now may belong to a word that was begun.</summary>
    public bool IsOfWord => _rhythm.Before.Keys.Length > 0 && (_rhythm.Since < Burst.Gap || Moment.JustWritten.Length > 0);

    private TypingMoment Moment => new(desk.Logbook.Study, desk.Keys) { Before = _rhythm.Before, Since = _rhythm.Since };

    /// <summary>Whether a key types a character.</summary>
    public static bool IsTyped(Key key, out char typed)
    {
        Rune rune = default;
        bool isTyped = !key.IsCtrl && !key.IsAlt && key.TryGetPrintableRune(out rune) && rune.IsBmp;
        typed = (char)(isTyped ? rune.Value : 0);
        return isTyped;
    }

    /// <summary>What a character is, and the word or words about it.</summary>
    public (StopLetter Kind, string Text) Press(char typed)
    {
        TypingMoment moment = Moment;
        if (moment.Burst.MakesWordWith(typed) || Typing.BeginsVerb(typed, moment))
        {
            return (StopLetter.Word, moment.Before.Keys + typed);
        }

        bool acts = Acts(typed);
        bool isBounce = acts && Bounced(typed, moment);
        _rhythm.Take(typed, acts ? new TypedKey(TypedKind.Writes, "", $"{typed}") : new TypedKey(TypedKind.Goes));
        return isBounce ? (StopLetter.Bounce, DrivingScreenWords.KeyBounced(typed)) : (StopLetter.Key, "");
    }

    private bool Acts(char typed) => desk.Keys.On(ScreenName.Stop).Any(row => row.Where == ScreenName.Stop && row.Has(typed));

    // where it had already been taken twice, it is held down and counts once
    private bool Bounced(char typed, TypingMoment moment)
    {
        bool isBounce = moment.Burst.Repeats(typed) && moment.Since < Burst.Bounce;
        if (isBounce)
        {
            _ = _rhythm.TakeBack(1, pen);
        }

        return isBounce;
    }

    /// <summary>Takes notice of what the last key wrote: the lines since there were so many.</summary>
    public void Wrote(int linesBefore)
    {
        if (desk.Logbook.Lines.Count > linesBefore && _rhythm.Before.Keys.Length > 0)
        {
            _rhythm.Wrote(desk.Logbook.LastFacts[^1].Line.Number);
        }
    }

    /// <summary>Takes back what the letters of the word wrote.</summary>
    /// <returns>Whether there was something.</returns>
    public bool TakeBack()
    {
        bool wasWritten = _rhythm.TakeBack(0, pen);
        _rhythm.End();
        return wasWritten;
    }

    /// <summary>Ends the row of keys that may be a word.</summary>
    public void End() => _rhythm.End();
}

/// <summary>What a key meets beside the text in the box.</summary>
/// <param name="Study">The study.</param>
/// <param name="Keys">The keys that act.</param>
internal sealed record TypingMoment(Study Study, KeyTable Keys)
{
    /// <summary>The keys right before, however long ago.</summary>
    public Burst Before { get; init; } = Burst.None;

    /// <summary>Time since the last key.</summary>
    public TimeSpan Since { get; init; } = TimeSpan.MaxValue;

    /// <summary>Whether the note in the box began by itself, from letters without a sign.</summary>
    public bool IsDraft { get; init; }

    /// <summary>The keys right before, where no thought lies between.</summary>
    public Burst Burst => Since < Burst.Gap ? Before : Burst.None;

    /// <summary>The one key before, where it wrote a line; else empty.</summary>
    public string JustWritten => Before is { Keys.Length: 1, Lines.Length: 1 } ? Before.Keys : "";
}
