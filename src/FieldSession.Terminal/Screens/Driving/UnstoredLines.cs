using System.Collections.Immutable;
using FieldSession.Journal;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>Lines that were typed and are not stored: the last one that was refused, and those that wait for the disk, in order.</summary>
/// <param name="pen">The hand that writes.</param>
internal sealed class UnstoredLines(Pen pen)
{
    private ImmutableArray<string> _waiting = [];

    /// <summary>The line that was refused or set aside last; null: none.</summary>
    public HeldLine? Held { get; private set; }

    /// <summary>How many lines wait for the disk.</summary>
    public int Waiting => _waiting.Length;

    /// <summary>Keeps a line in sight that was not stored; an empty one is none.</summary>
    public void Hold(string text, Objection objection) => Held = text.Length > 0 ? HeldLine.Of(text, objection) : Held;

    /// <summary>Lets the refused line go.</summary>
    /// <returns>Its text; null: there was none.</returns>
    public string? Release()
    {
        string? text = Held?.Text;
        Held = null;
        return text;
    }

    /// <summary>Puts a line behind those that wait for the disk.</summary>
    public void Wait(string text) => _waiting = _waiting.Add(Typing.LineOf(text));

    /// <summary>Writes what waits for the disk, then one more.</summary>
    public Outcome Write(Func<Outcome> write) => WriteWaiting() ?? write();

    /// <summary>Writes what waits for the disk.</summary>
    /// <returns>Why the disk would not take it; null: nothing waits any more.</returns>
    public Outcome? WriteWaiting()
    {
        while (_waiting.Length > 0)
        {
            Outcome outcome = pen.Write(_waiting[0]);
            if (outcome is { Objection: null, IsWritten: false })
            {
                return outcome;
            }

            if (outcome.Objection is { } objection)
            {
                Hold(_waiting[0], objection);
            }

            _waiting = _waiting[1..];
        }

        return null;
    }
}
