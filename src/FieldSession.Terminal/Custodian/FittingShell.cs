using System.Collections.Immutable;
using FieldSession.Sealing;
using FieldSession.Terminal.Look;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace FieldSession.Terminal.Custodian;

/// <summary>Shows the custodian's list page by page on the terminal's second screen, which is gone when it is left.</summary>
internal sealed class FittingShell : Runnable, IToldOfFaults
{
    private static Key[] Leave => [Key.Esc, Key.Q, Key.Q.WithCtrl, Key.C.WithCtrl];

    private static Key[] On => [Key.Enter, Key.Space, Key.PageDown, Key.CursorRight];

    private static Key[] Back => [Key.PageUp, Key.CursorLeft, Key.Backspace];

    private readonly KeySheet _key;
    private readonly KeySheet? _earlier;
    private readonly Palette _palette;
    private readonly LetterForm _form;
    private readonly PageView _paper = new() { Width = Dim.Fill(), Height = Dim.Fill() };
    private string? _message;
    private int _page;

    /// <summary>The list of a fitting.</summary>
    /// <param name="key">The key of the fitting.</param>
    /// <param name="earlier">The key of the fitting before it; null: not given.</param>
    /// <param name="palette">The look.</param>
    /// <param name="form">How a code is written.</param>
    public FittingShell(KeySheet key, KeySheet? earlier, Palette palette, LetterForm form = LetterForm.Block)
    {
        _key = key;
        _earlier = earlier;
        _palette = palette;
        _form = form;
        Title = "fieldsession";
        Add(_paper);
    }

    /// <inheritdoc/>
    public void Tell(Exception fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        _message = ShellWords.FaultInProgram(fault);
        Draw();
    }

    /// <inheritdoc/>
    protected override void OnIsRunningChanged(bool newIsRunning)
    {
        base.OnIsRunningChanged(newIsRunning);
        if (newIsRunning)
        {
            Draw();
        }
    }

    /// <inheritdoc/>
    protected override void OnFrameChanged(in System.Drawing.Rectangle frame)
    {
        base.OnFrameChanged(in frame);

        // Terminal.Gui calls this before the constructor has run.
        if (_paper is not null)
        {
            Draw();
        }
    }

    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key)
    {
        ArgumentNullException.ThrowIfNull(key);
        if (Leave.Contains(key))
        {
            App?.RequestStop(this);
            return true;
        }

        _page +=
            On.Contains(key) ? 1
            : Back.Contains(key) ? -1
            : 0;
        Draw();
        return true;
    }

    private void Draw()
    {
        SetScheme(_palette.SchemeOf(Ink.Plain));
        int columns = Math.Max(20, Frame.Width - 2);
        ImmutableArray<ImmutableArray<PageRow>> pages = FittingPages.Of(_key, _earlier, columns, _form);
        _page = Math.Clamp(_page, 0, pages.Length - 1);
        int room = Math.Max(1, Frame.Height - 4);
        PageRow header = PageRow
            .Of($" {CustodianWords.Title(_key)}", Ink.Bar)
            .WithRight(PageRow.Of($"page {_page + 1} of {pages.Length}  {CustodianWords.WipedAtTheEnd} ", Ink.Bar), Frame.Width);
        _paper.Show(
            [
                header,
                PageRow.Blank,
                .. pages[_page].Concat(Enumerable.Repeat(PageRow.Blank, room)).Take(room).Select(row => PageRow.Of(" ").And(row)),
                _message is null ? PageRow.Blank : PageRow.Of(_message, Ink.Alarm),
                PageRow.Of(_page == pages.Length - 1 ? CustodianWords.KeysOnLastPage : CustodianWords.KeysOnPage, Ink.Bar),
            ],
            _palette
        );
    }
}
