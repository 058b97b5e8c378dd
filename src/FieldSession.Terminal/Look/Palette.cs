using System.Collections.Immutable;
using FieldSession.Reviewing;
using Terminal.Gui.Drawing;
using Terminal.Gui.ViewBase;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace FieldSession.Terminal.Look;

/// <summary>
/// How each ink looks. Day leaves the terminal's own colours and adds contrast; night is dim on black; plain uses no
/// colour at all, only bold and reverse.
/// </summary>
/// <param name="Name">Its name on the screen.</param>
/// <param name="Plain">Ordinary text, and the ground of the screen.</param>
/// <param name="Strong">What the eye should find first.</param>
/// <param name="Quiet">What can wait.</param>
/// <param name="Alarm">What must be seen.</param>
/// <param name="Bar">Header and footer.</param>
internal sealed record Palette(string Name, Attribute Plain, Attribute Strong, Attribute Quiet, Attribute Alarm, Attribute Bar)
{
    /// <summary>High contrast on the terminal's own ground, light or dark.</summary>
    public static Palette Day { get; } =
        new(
            "day",
            OnOwnGround(),
            OnOwnGround(TextStyle.Bold),
            OnOwnGround(),
            new Attribute(Color.White, Color.Red, TextStyle.Bold),
            OnOwnGround(TextStyle.Reverse)
        );

    /// <summary>Dim on black, so that it neither blinds the seat nor lights the windscreen.</summary>
    public static Palette Night { get; } =
        new(
            "night",
            OnBlack(Color.Gray),
            OnBlack(Color.Yellow),
            OnBlack(Color.DarkGray),
            new Attribute(Color.Black, Color.Red),
            OnBlack(Color.DarkGray)
        );

    /// <summary>No colour: bold and reverse only.</summary>
    public static Palette Colourless { get; } =
        new(
            "plain",
            OnOwnGround(),
            OnOwnGround(TextStyle.Bold),
            OnOwnGround(),
            OnOwnGround(TextStyle.Bold | TextStyle.Reverse),
            OnOwnGround(TextStyle.Reverse)
        );

    /// <summary>The palette that the surroundings ask for.</summary>
    /// <param name="noColour">Value of the environment variable NO_COLOR (no-color.org: set and not empty means no colour); null: not
    /// set.</param>
    public static Palette For(string? noColour) => string.IsNullOrEmpty(noColour) ? Day : Colourless;

    /// <summary>The palette of a name; day where there is none of it.</summary>
    public static Palette Named(string? name) =>
        name switch
        {
            "night" => Night,
            "plain" => Colourless,
            _ => Day,
        };

    /// <summary>The palette that the key for looks brings next.</summary>
    public Palette Next =>
        Name switch
        {
            "day" => Night,
            "night" => Colourless,
            _ => Day,
        };

    /// <summary>How an ink looks.</summary>
    public Attribute Of(Ink ink) =>
        ink switch
        {
            Ink.Strong => Strong,
            Ink.Quiet => Quiet,
            Ink.Alarm => Alarm,
            Ink.Bar => Bar,
            _ => Plain,
        };

    /// <summary>The scheme for a view whose text has one ink, focused or not.</summary>
    public Scheme SchemeOf(Ink ink)
    {
        Attribute one = Of(ink);
        return new Scheme(one)
        {
            Focus = one,
            HotNormal = one,
            HotFocus = one,
            Active = one,
            HotActive = one,
            Highlight = one,
            Editable = one,
            ReadOnly = one,
            Disabled = one,
        };
    }

    private static Attribute OnOwnGround(TextStyle style = TextStyle.None) => new(Color.None, Color.None, style);

    private static Attribute OnBlack(Color ink) => new(ink, Color.Black);
}

/// <summary>Draws the rows of a page. It decides nothing.</summary>
internal sealed class PageView : View
{
    private ImmutableArray<PageRow> _rows = [];
    private Palette _palette = Palette.Day;

    /// <summary>A view that never takes the focus.</summary>
    public PageView()
    {
        CanFocus = false;
    }

    /// <summary>Shows other rows.</summary>
    public void Show(ImmutableArray<PageRow> rows, Palette palette)
    {
        _rows = rows;
        _palette = palette;
        SetNeedsDraw();
    }

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        for (int y = 0; y < Viewport.Height; y++)
        {
            Draw(y, (y < _rows.Length ? _rows[y] : PageRow.Blank).Fit(Viewport.Width));
        }

        return true;
    }

    private void Draw(int y, PageRow row)
    {
        int x = 0;
        foreach (Stroke stroke in row.Strokes)
        {
            SetAttribute(_palette.Of(stroke.Ink));
            AddStr(x, y, stroke.Text);
            x += Columns.Of(stroke.Text);
        }
    }
}
