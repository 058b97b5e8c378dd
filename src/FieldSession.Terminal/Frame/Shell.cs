using System.Collections.Immutable;
using FieldSession.Terminal.Look;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace FieldSession.Terminal;

/// <summary>The frame around all screens: header, the screen that is shown, footer, help. Only it listens to the logbook.</summary>
internal sealed class Shell : Runnable, IToldOfFaults
{
    private readonly Desk _desk;
    private readonly Pen _pen;
    private readonly PageView _header = new() { Width = Dim.Fill(), Height = 1 };
    private readonly PageView _footer = new()
    {
        Y = Pos.AnchorEnd(1),
        Width = Dim.Fill(),
        Height = 1,
    };
    private readonly HelpView _help = new()
    {
        Y = 1,
        Width = Dim.Fill(),
        Height = Dim.Fill(1),
    };
    private readonly ImmutableArray<(ScreenRow Row, Screen Screen)> _screens;
    private (ScreenRow Row, Screen Screen) _current;
    private Palette _palette;
    private string _minute = "";

    /// <summary>The shell with all screens, showing one.</summary>
    /// <param name="desk">What the screens may use.</param>
    /// <param name="startScreen">Name of the screen to begin with; an unknown one begins with the first.</param>
    public Shell(Desk desk, string startScreen)
    {
        _desk = desk;
        _pen = new Pen(desk.Logbook);
        _palette = desk.Palette;
        Title = "fieldsession";
        _screens = [.. AllScreens.Rows.Select(row => (row, row.Make(desk, _pen)))];
        _current = _screens.FirstOrDefault(s => s.Row.Name == startScreen, _screens[0]);
        foreach ((_, Screen screen) in _screens)
        {
            screen.Asked += (_, asked) => Do(asked.Deed, asked.Line);
            Add(screen);
        }

        Add(_header, _footer, _help);
        desk.Logbook.Changed += OnChanged;
        _pen.Tried += OnTried;
    }

    /// <inheritdoc/>
    public void Tell(Exception fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        _footer.Show([PageRow.Of(ShellWords.FaultInProgram(fault), Ink.Alarm)], _palette);
    }

    /// <summary>Shows a screen by its name.</summary>
    public void Show(string name)
    {
        (ScreenRow Row, Screen Screen) next = _screens.FirstOrDefault(s => s.Row.Name == name, _current);
        _current.Screen.Visible = false;
        _current = next;
        _current.Screen.Visible = true;
        Refresh();
        _current.Screen.Enter();
    }

    /// <inheritdoc/>
    protected override void OnIsRunningChanged(bool newIsRunning)
    {
        base.OnIsRunningChanged(newIsRunning);
        if (newIsRunning)
        {
            Show(_current.Row.Name);
            App!.Keyboard.KeyDown += (_, key) => key.Handled |= TakenByHelp(key);
            App.AddTimeout(TimeSpan.FromSeconds(1), Tick);
        }
    }

    /// <inheritdoc/>
    protected override void OnIsModalChanged(bool newIsModal)
    {
        base.OnIsModalChanged(newIsModal);

        // While a shell begins, Terminal.Gui 2.5.0 loses track of the focus, and what is pasted would reach nothing.
        if (newIsModal && MostFocused is { } focused)
        {
            focused.HasFocus = false;
            focused.SetFocus();
        }
    }

    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key)
    {
        ArgumentNullException.ThrowIfNull(key);
        foreach (KeyRow row in _desk.Keys.On(ScreenName.Everywhere))
        {
            if (row.Has(key))
            {
                Do(row.Deed, row.Line);
                return true;
            }
        }

        // Terminal.Gui would take Esc for "quit" and others for moves between views; nothing of that is wanted here.
        return key == Key.Esc || key == Key.Tab || key == Key.C.WithCtrl || base.OnKeyDown(key);
    }

    /// <inheritdoc/>
    protected override void OnFrameChanged(in System.Drawing.Rectangle frame)
    {
        base.OnFrameChanged(in frame);

        // Terminal.Gui calls this before the constructor has run.
        if (_screens.IsDefault)
        {
            return;
        }

        bool roomForBars = frame.Height >= 8;
        _header.Visible = roomForBars;
        _footer.Visible = roomForBars;
        foreach ((_, Screen screen) in _screens)
        {
            screen.Y = roomForBars ? 1 : 0;
            screen.Height = roomForBars ? Dim.Fill(1) : Dim.Fill();
        }

        Refresh();
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        _desk.Logbook.Changed -= OnChanged;
        _pen.Tried -= OnTried;
        RememberSight();
        base.Dispose(disposing);
    }

    private void Do(KeyDeed deed, string line)
    {
        switch (deed)
        {
            case KeyDeed.Help:
                _help.Open(KeysPage.Help(_desk.Keys, _current.Row.Name, _desk.Logbook.Study, Frame.Width), _palette);
                break;
            case KeyDeed.Look:
                _palette = _palette.Next;
                RememberSight();
                Refresh();
                break;
            case KeyDeed.Cover:
                _desk.Cover.Turn();
                RememberSight();
                Refresh();
                break;
            case KeyDeed.Screen:
                Show(line);
                break;
            case KeyDeed.Leave:
                App?.RequestStop(this);
                break;
        }
    }

    // a frame that was never laid out has no size
    private void RememberSight() =>
        _desk.RememberSight(
            _desk.Sight with
            {
                Look = _palette == _desk.Palette ? _desk.Sight.Look : _palette.Name,
                IsCovered = _desk.Cover.IsOn,
                Columns = Frame.Width > 0 ? Frame.Width : _desk.Sight.Columns,
                Rows = Frame.Height > 0 ? Frame.Height : _desk.Sight.Rows,
            }
        );

    // The key that opens help also closes it.
    private bool TakenByHelp(Key key)
    {
        bool closes = _help.Visible && _desk.Keys.Rows.Any(row => row.Deed == KeyDeed.Help && row.Has(key));
        return _help.Take(key) || closes;
    }

    private void OnChanged(object? sender, EventArgs change)
    {
        if (_desk.Logbook.Study.RunOn is not null)
        {
            _desk.Parking.MoveOff();
        }

        Refresh();
    }

    private void OnTried(object? sender, EventArgs tried) => RefreshBars();

    private bool Tick()
    {
        if (_desk.Trouble() is { } trouble)
        {
            Array.ForEach([.. _screens], shown => shown.Screen.Tell(trouble));
        }

        if (_minute != Minute())
        {
            RefreshBars();
        }

        _current.Screen.Tick();

        return true;
    }

    private string Minute() => $"{_desk.Clock.GetLocalNow():t}";

    private void Refresh()
    {
        SetScheme(_palette.SchemeOf(Ink.Plain));
        RefreshBars();
        _current.Screen.Refresh(_palette);
    }

    private void RefreshBars()
    {
        _minute = Minute();
        Logbook book = _desk.Logbook;
        _header.Show([HeaderPage.Of(book.Study, book.Lines.Count, _pen.NotSavedBecause, _desk.Clock.GetLocalNow(), Frame.Width)], _palette);
        _footer.Show([KeysPage.Footer(_desk.Keys, _current.Row.Name, book.Study, Frame.Width)], _palette);
    }
}
