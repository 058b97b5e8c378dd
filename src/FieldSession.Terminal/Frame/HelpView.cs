using System.Collections.Immutable;
using FieldSession.Terminal.Look;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace FieldSession.Terminal;

/// <summary>
/// The help over a screen. It never takes the focus and every key but paging closes it on its way to the screen, so
/// that a reading can be typed straight through it.
/// </summary>
internal sealed class HelpView : View
{
    private readonly PageView _page = new() { Width = Dim.Fill(), Height = Dim.Fill() };
    private ImmutableArray<PageRow> _rows = [];
    private Palette _palette = Palette.Day;
    private int _from;

    /// <summary>Hidden until it is opened.</summary>
    public HelpView()
    {
        CanFocus = false;
        Visible = false;
        Add(_page);
    }

    /// <summary>Shows rows from the first on.</summary>
    public void Open(ImmutableArray<PageRow> rows, Palette palette)
    {
        _rows = rows;
        _palette = palette;
        Visible = true;
        Turn(0);
    }

    /// <summary>Takes a key before anything else does: turns pages, or closes.</summary>
    /// <returns>Whether the key is used up.</returns>
    public bool Take(Key key)
    {
        if (!Visible)
        {
            return false;
        }

        if (key == Key.PageDown || key == Key.PageUp)
        {
            Turn(key == Key.PageDown ? _from + Viewport.Height : _from - Viewport.Height);
            return true;
        }

        Visible = false;
        return key == Key.Esc;
    }

    private void Turn(int from)
    {
        _from = Math.Clamp(from, 0, Math.Max(0, _rows.Length - Math.Max(1, Viewport.Height)));
        _page.Show(_rows[_from..], _palette);
    }
}
