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
