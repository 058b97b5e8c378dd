using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Reviewing;
using FieldSession.Terminal.Look;

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

/// <summary>A line that was not stored: it left the box free for the next one, and is kept in sight until a reading is stored.</summary>
/// <param name="Text">What was typed.</param>
/// <param name="Cure">What to do about it, in a few words.</param>
internal sealed record HeldLine(string Text, string Cure)
{
    private const int LetterRows = 3;
    private const int WordColumns = 36;

    /// <summary>A refused line.</summary>
    public static HeldLine Of(string text, Objection objection) => new(text, objection.Cure ?? objection.Instead);

    /// <summary>The rows: three beside large figures, or two of plain words.</summary>
    public IEnumerable<PageRow> Rows(int columns, bool large, LetterForm form)
    {
        PageRow[] words =
        [
            PageRow.Of(DrivingScreenWords.NotStored, Ink.Alarm),
            PageRow.Of(Columns.Cut(Cure, WordColumns), Ink.Strong),
            PageRow.Of(DrivingScreenWords.BackspaceBringsBack, Ink.Quiet),
        ];
        if (!large)
        {
            return [words[0].And($" {Columns.Cut(Text, columns / 2)}  ", Ink.Strong).And(words[1]), words[2]];
        }

        ImmutableArray<string> letters = LargeText.Of(Text, columns - WordColumns - 3, LetterRows, form);
        int gap = letters.Max(Columns.Of) + 3;
        return Enumerable
            .Range(0, LetterRows)
            .Select(row => PageRow.Of(Columns.Left(row < letters.Length ? letters[row] : "", gap), Ink.Strong).And(words[row]));
    }
}
