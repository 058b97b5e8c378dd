using System.Collections.Immutable;
using Terminal.Gui.ViewBase;

namespace FieldSession.Terminal.Look;

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
