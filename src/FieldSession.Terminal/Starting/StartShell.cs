using System.Collections.Immutable;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace FieldSession.Terminal.Starting;

/// <summary>The screen before any study: what was opened last, what can be begun. It ends when something is open.</summary>
internal sealed class StartShell : Runnable, IToldOfFaults
{
    private readonly StartDesk _desk;
    private readonly PageView _page = new() { Width = Dim.Fill(), Height = Dim.Fill() };
    private readonly HelpView _help = new()
    {
        Y = 1,
        Width = Dim.Fill(),
        Height = Dim.Fill(1),
    };
    private readonly TypingBox _box;
    private Palette _palette;
    private string? _message;
    private int _marked;

    /// <summary>The screen.</summary>
    public StartShell(StartDesk desk)
    {
        _desk = desk;
        _palette = desk.Palette;
        Title = "fieldsession";
        _box = new TypingBox { Pressed = OnPressed };
        Add(_page, _box, _help);
    }

    /// <inheritdoc/>
    public void Tell(Exception fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        _message = StartingWords.FaultInProgram(fault);
        Draw();
    }

    /// <inheritdoc/>
    protected override void OnIsRunningChanged(bool newIsRunning)
    {
        base.OnIsRunningChanged(newIsRunning);
        if (newIsRunning)
        {
            App!.Keyboard.KeyDown += (_, key) => key.Handled |= _help.Take(key);
            _box.SetFocus();
            Draw();
        }
    }

    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key)
    {
        ArgumentNullException.ThrowIfNull(key);
        if (_desk.Keys.On(ScreenName.Start).FirstOrDefault(row => row.Has(key)) is { } known)
        {
            Do(known.Deed);
            return true;
        }

        return key == Key.Esc || key == Key.Tab || key == Key.C.WithCtrl || base.OnKeyDown(key);
    }

    /// <inheritdoc/>
    protected override void OnFrameChanged(in System.Drawing.Rectangle frame)
    {
        base.OnFrameChanged(in frame);

        // Terminal.Gui calls this before the constructor has run.
        if (_box is not null)
        {
            Draw();
        }
    }

    private void Draw()
    {
        const string Prompt = " > ";
        SetScheme(_palette.SchemeOf(Ink.Plain));
        _box.SetScheme(_palette.SchemeOf(Ink.Strong));
        int columns = Math.Max(4, Frame.Width - 2);
        ImmutableArray<PageRow> rows = StartPage.Of(_desk.Recent, _marked, columns);
        string[] message = [.. _message is null ? [] : Wrapped.Lines(_message, columns - 2).Take(4)];
        int room = Math.Max(1, Frame.Height - 3 - message.Length);
        _page.Show(
            [
                .. rows.Concat(Enumerable.Repeat(PageRow.Blank, room)).Take(room).Select(row => PageRow.Of(" ").And(row)),
                .. message.Select(line => PageRow.Of(" ").And($" {line} ", Ink.Alarm)),
                PageRow.Of($" {StartPage.Hint(_desk.Recent, _marked)}", Ink.Strong),
                PageRow.Of(Prompt, Ink.Strong),
                KeysPage.Footer(_desk.Keys, ScreenName.Start, Study.Empty, Frame.Width),
            ],
            _palette
        );
        (_box.Y, _box.X, _box.Width) = (room + message.Length + 1, Prompt.Length, Dim.Fill(1));
    }

    // Enter, arrows and Esc act at once; a typed character belongs to the box once something is in it.
    private bool OnPressed(Key key)
    {
        bool isEmpty = _box.Text.Length == 0;
        KeyRow? row = _desk.Keys.On(ScreenName.Start).FirstOrDefault(known => known.Has(key));
        if (row is null || (!isEmpty && TypingBox.Wants(key)))
        {
            return false;
        }

        Do(row.Deed);
        return true;
    }

    private void Do(KeyDeed deed)
    {
        switch (deed)
        {
            case KeyDeed.Answer:
                Choose();
                break;
            case KeyDeed.Previous:
                Mark(_marked - 1);
                break;
            case KeyDeed.Next:
                Mark(_marked + 1);
                break;
            case KeyDeed.Back:
                _box.Forget();
                _message = null;
                break;
            case KeyDeed.Help:
                _help.Open(KeysPage.Help(_desk.Keys, ScreenName.Start, Study.Empty, Frame.Width), _palette);
                break;
            case KeyDeed.Look:
                _palette = _palette.Next;
                break;
            case KeyDeed.Leave:
                App?.RequestStop(this);
                break;
        }

        Draw();
    }

    // Beyond the last comes the first.
    private void Mark(int place)
    {
        int studies = Math.Max(1, _desk.Recent.Length);
        _marked = (place + studies) % studies;
    }

    private void Choose()
    {
        if (StartPage.Choice(_box.Text.Trim(), _desk.Recent, _marked) is not { } choice)
        {
            _message = StartingWords.NothingThere;
            return;
        }

        _message = _desk.Open(choice);
        if (_message is null)
        {
            App?.RequestStop(this);
        }
    }
}
