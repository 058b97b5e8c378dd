using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Driving;

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
        PageRow[] words = [PageRow.Of(DrivingScreenWords.NotStored, Ink.Alarm), PageRow.Of(Columns.Cut(Cure, WordColumns), Ink.Strong), PageRow.Of(DrivingScreenWords.BackspaceBringsBack, Ink.Quiet)];
        if (!large)
        {
            return [words[0].And($" {Columns.Cut(Text, columns / 2)}  ", Ink.Strong).And(words[1]), words[2]];
        }

        ImmutableArray<string> letters = LargeText.Of(Text, columns - WordColumns - 3, LetterRows, form);
        int gap = letters.Max(Columns.Of) + 3;
        return Enumerable.Range(0, LetterRows).Select(row => PageRow
            .Of(Columns.Left(row < letters.Length ? letters[row] : "", gap), Ink.Strong)
            .And(words[row]));
    }
}
