using System.Collections.Immutable;
using FieldSession.Driving;
using FieldSession.Journal;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>Remembers the keys pressed right before, when they came, and what they wrote.</summary>
/// <param name="clock">Where the time comes from.</param>
internal sealed class Rhythm(TimeProvider clock)
{
    private long? _last;

    /// <summary>The keys right before.</summary>
    public Burst Before { get; private set; } = Burst.None;

    /// <summary>Time since the last key.</summary>
    public TimeSpan Since => _last is { } last ? clock.GetElapsedTime(last) : TimeSpan.MaxValue;

    /// <summary>Takes notice of a character and what became of it.</summary>
    public void Take(char typed, TypedKey pressed)
    {
        Before = (pressed.Begun.Length > 0, pressed.Kind) switch
        {
            (true, _) => Since < Burst.Gap ? Before with { Keys = Before.Keys + typed } : new Burst($"{typed}", []),
            (_, TypedKind.Corrects) => Before,
            _ => Burst.None,
        };
        _last = clock.GetTimestamp();
    }

    /// <summary>Takes notice that the last character wrote a line.</summary>
    public void Wrote(int line) => Before = Before with { Lines = Before.Lines.Add(line) };

    /// <summary>Takes back, as one act, what the keys right before wrote from one of their lines on.</summary>
    /// <returns>Whether there was something, and it is taken back.</returns>
    public bool TakeBack(int from, Pen pen)
    {
        if (Before.Lines.Length <= from)
        {
            return false;
        }

        Outcome outcome = pen.Write(new LettersTakenBack(Before.Lines[from]));
        Before = Before with { Lines = Before.Lines[..from] };
        return outcome.IsWritten;
    }

    /// <summary>Ends the row of keys: another key than a character was pressed, or a word was made of them.</summary>
    public void End()
    {
        Before = Burst.None;
        _last = clock.GetTimestamp();
    }
}

/// <summary>What becomes of a typed character.</summary>
internal enum TypedKind
{
    /// <summary>It goes into the box where the cursor is.</summary>
    Goes,

    /// <summary>The box holds another text now.</summary>
    Becomes,

    /// <summary>A line is written at once, without Enter.</summary>
    Writes,

    /// <summary>It shows that the keys before were letters of a word: what they did is taken back and the word is in the box.</summary>
    Corrects,

    /// <summary>It shows that a key is held down: it counts once.</summary>
    IsHeld,

    /// <summary>It begins the next reading: what is in the box is whole and is stored first.</summary>
    StoresFirst,

    /// <summary>It begins the next reading: what is in the box is set aside.</summary>
    SetsAside,

    /// <summary>It asks for the help.</summary>
    AsksHelp,

    /// <summary>It means nothing here; there may be words about it.</summary>
    Nothing,
}

/// <summary>What becomes of a typed character, and the text, the line or the words about it.</summary>
/// <param name="Kind">What becomes of it.</param>
/// <param name="Text">The box's new text, the line to write, or words for the crew.</param>
/// <param name="Begun">The character, where it may yet turn out to be a letter of a word; empty: it can't.</param>
internal readonly record struct TypedKey(TypedKind Kind, string Text = "", string Begun = "");

/// <summary>
/// Keys typed one right after the other while the box holds no words, and what they wrote. A hand that types a word does not stop to
/// think between its letters, a hand that does two acts does: 1.35 s (keystroke-level model of Card, Moran and Newell).
/// </summary>
/// <param name="Keys">The keys.</param>
/// <param name="Lines">Numbers of the journal lines that they wrote.</param>
internal sealed record Burst(string Keys, ImmutableArray<int> Lines)
{
    /// <summary>The longest gap between two letters of a word; a little less than a thought.</summary>
    public static readonly TimeSpan Gap = TimeSpan.FromSeconds(1);

    /// <summary>A key pressed again within this time bounced, or is held down.</summary>
    public static readonly TimeSpan Bounce = TimeSpan.FromMilliseconds(300);

    /// <summary>A figure after this time belongs to the next reading, where what is in the box is whole.</summary>
    public static readonly TimeSpan Later = TimeSpan.FromSeconds(4);

    /// <summary>No key.</summary>
    public static Burst None { get; } = new("", []);

    /// <summary>Whether a further key makes a word of the keys: another letter, or a sign of writing behind a letter.</summary>
    public bool MakesWordWith(char typed) =>
        Keys.Length > 0 && (IsOfWriting(typed) ? char.IsLetter(Keys[^1]) : char.IsLetter(typed) && Keys.Any(key => !IsSame(key, typed)));

    /// <summary>Whether a key is the last one once more.</summary>
    public bool Repeats(char typed) => Keys.Length > 0 && IsSame(Keys[^1], typed);

    private static bool IsOfWriting(char sign) => sign is ' ' or '-' or '.' or ',' or '\'' or '\u2019';

    private static bool IsSame(char one, char other) => char.ToLowerInvariant(one) == char.ToLowerInvariant(other);
}
