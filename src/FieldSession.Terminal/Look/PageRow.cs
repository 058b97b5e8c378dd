using System.Collections.Immutable;
using FieldSession.Reviewing;

namespace FieldSession.Terminal.Look;

/// <summary>A piece of text in one ink.</summary>
/// <param name="Text">The text.</param>
/// <param name="Ink">What it is for.</param>
internal readonly record struct Stroke(string Text, Ink Ink);

/// <summary>One row of a page, made of strokes from left to right.</summary>
/// <param name="Strokes">The pieces.</param>
internal sealed record PageRow(ImmutableArray<Stroke> Strokes)
{
    /// <summary>A row without text.</summary>
    public static PageRow Blank { get; } = new([]);

    /// <summary>A row of one stroke.</summary>
    public static PageRow Of(string text, Ink ink = Ink.Plain) => new([new Stroke(text, ink)]);

    /// <summary>How many columns the row takes.</summary>
    public int Width => Strokes.Sum(stroke => Columns.Of(stroke.Text));

    /// <summary>The row without its inks.</summary>
    public string Text => string.Concat(Strokes.Select(stroke => stroke.Text));

    /// <summary>The row with one more stroke.</summary>
    public PageRow And(string text, Ink ink = Ink.Plain) => new(Strokes.Add(new Stroke(text, ink)));

    /// <summary>The row with another after it.</summary>
    public PageRow And(PageRow other) => new(Strokes.AddRange(other.Strokes));

    /// <summary>The row in exactly so many columns, cut or filled.</summary>
    public PageRow Fit(int columns)
    {
        ImmutableArray<Stroke>.Builder kept = ImmutableArray.CreateBuilder<Stroke>();
        int left = columns;
        Ink last = Ink.Plain;
        foreach (Stroke stroke in Strokes)
        {
            string cut = Columns.Cut(stroke.Text, left);
            left -= Columns.Of(cut);
            last = stroke.Ink;
            kept.Add(stroke with { Text = cut });
            if (left == 0)
            {
                break;
            }
        }

        if (left > 0)
        {
            kept.Add(new Stroke(new string(' ', left), last == Ink.Bar ? Ink.Bar : Ink.Plain));
        }

        return new PageRow(kept.ToImmutable());
    }

    /// <summary>The row with a text at the right edge of so many columns; the text wins where both do not fit.</summary>
    public PageRow WithRight(PageRow right, int columns) => Fit(Math.Max(0, columns - right.Width)).And(right);
}

/// <summary>A message in two rows, always, so that nothing below it jumps.</summary>
internal static class MessageRows
{
    /// <summary>The rows; what does not fit into them ends with a mark.</summary>
    /// <param name="message">The message; null: two blank rows.</param>
    /// <param name="columns">Columns of its words; a blank is on either side.</param>
    /// <param name="ink">What it is for.</param>
    public static IEnumerable<PageRow> Of(string? message, int columns, Ink ink)
    {
        string[] lines = message is null ? [] : [.. Wrapped.Lines(message, columns)];
        string rest = Columns.Cut(string.Join(' ', lines.Skip(1)), columns);
        return
        [
            lines.Length > 0 ? PageRow.Of($" {lines[0]} ", ink) : PageRow.Blank,
            rest.Length > 0 ? PageRow.Of($" {rest} ", ink) : PageRow.Blank,
        ];
    }
}

/// <summary>What a piece of text is for. A palette says how that looks; the words alone must say everything.</summary>
internal enum Ink
{
    /// <summary>Ordinary text.</summary>
    Plain,

    /// <summary>What the eye should find first: names and figures.</summary>
    Strong,

    /// <summary>What can wait: labels, covered rows.</summary>
    Quiet,

    /// <summary>What must be seen: not saved, refused, doubtful.</summary>
    Alarm,

    /// <summary>Header and footer.</summary>
    Bar,
}
