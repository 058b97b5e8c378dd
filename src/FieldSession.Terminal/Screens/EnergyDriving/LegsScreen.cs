using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;
using FieldSession.Terminal.Look;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace FieldSession.Terminal.Screens.EnergyDriving;

/// <summary>The legs screen: the page, the box, and the wires from keys to form and logbook.</summary>
internal sealed class LegsScreen : TypingScreen
{
    private readonly Pen _pen;
    private readonly TypingBox _box;
    private LegForm _form;
    private Study _formOf;
    private string? _message;
    private bool _isAlarm;

    /// <summary>The screen on a study.</summary>
    public LegsScreen(Desk desk, Pen pen)
        : base(desk)
    {
        _pen = pen;
        _formOf = Study;
        _form = FormNow();
        _box = new TypingBox
        {
            Pressed = OnNamed,
            Y = LegsPage.BoxRow,
            X = LegsPage.BoxColumn,
            Width = Dim.Fill(1),
        };
        Lay(_box);
    }

    private Study Study => Desk.Logbook.Study;

    /// <inheritdoc/>
    public override void Refresh(Palette palette)
    {
        if (_formOf.Legs != Study.Legs || _formOf.Fittings != Study.Fittings)
        {
            _formOf = Study;
            _form = FormNow();
        }

        base.Refresh(palette);
    }

    private LegForm FormNow() => LegForm.For(Study, DateOnly.FromDateTime(Desk.Clock.GetUtcNow().UtcDateTime));

    /// <inheritdoc/>
    protected override void Draw() =>
        Paper.Show(LegsPage.Of(new LegsSight(Study, _form, _message, _isAlarm), Frame.Width, Frame.Height), Palette);

    private bool OnNamed(Key key)
    {
        if (key == Key.Enter)
        {
            Commit(_box.Text.Trim());
            return true;
        }

        if (key == Key.CursorUp || key == Key.Esc)
        {
            _form = key == Key.Esc ? FormNow() : _form.Back;
            _box.Put("");
            Say(null, isAlarm: false);
            return true;
        }

        return AsksHelp(key);
    }

    private void Commit(string typed)
    {
        if (IsLine(typed))
        {
            Write(typed);
            return;
        }

        if (ParkedAgain(typed, ScreenName.Legs) is { } words)
        {
            _box.Put("");
            Say(words, isAlarm: false);
            return;
        }

        bool wasLast = _form.IsAtLast;
        (_form, string? wrong) = _form.Take(typed, Study.Plan?.Units ?? UnitSystem.Metric);
        if (wrong is not null)
        {
            Say(wrong, isAlarm: true);
            return;
        }

        _box.Put("");
        Say(null, isAlarm: false);
        if (wasLast)
        {
            Write(_form.Line);
        }
    }

    // Whole entry lines can be typed here as well: a leg at once, a flag on one, a note, undo.
    private static bool IsLine(string typed) =>
        Typed.Words(typed) is [var first, ..] && (Typed.Is(first, "leg") || Typed.Is(typed, "u") || first[0] == ';');

    private void Write(string line)
    {
        Outcome outcome = _pen.Write(line);
        if (outcome.Echo is { } echo)
        {
            _box.Put("");
            Say(echo.Doubt is { } doubt ? $"? {doubt}; stored: {echo.Words}" : $"stored: {echo.Words}", echo.Doubt is not null);
            return;
        }

        Say(ShellWords.NotWritten(outcome), isAlarm: true);
    }

    private void Say(string? message, bool isAlarm)
    {
        (_message, _isAlarm) = (message, isAlarm);
        Draw();
    }
}
