using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;
using FieldSession.Terminal.Look;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>The drive screen: the page, the entry box, and the wires from keys to the logbook.</summary>
internal sealed class DriveScreen : TypingScreen
{
    private readonly Pen _pen;
    private readonly EntryBox _box;
    private readonly EnterBounce _enter;
    private Acts _acts = Acts.None;
    private string? _message;
    private string _justWritten = "";
    private (Study Study, ImmutableArray<SegmentRow> Rows) _compared = (Study.Empty, []);

    /// <summary>The screen on a study.</summary>
    public DriveScreen(Desk desk, Pen pen)
        : base(desk)
    {
        _pen = pen;
        _enter = new EnterBounce(desk.Clock);
        _box = new EntryBox { Press = (text, typed) => Typing.Press(text, typed, Study, desk.Keys, _justWritten), Pressed = OnNamed, Act = OnTyped };
        Lay(_box);
    }

    private Study Study => Desk.Logbook.Study;

    /// <inheritdoc/>
    public override void Tell(string words) => Say(words);

    /// <inheritdoc/>
    public override void Refresh(Palette palette)
    {
        _acts = Acts.Of(Desk.Logbook);
        base.Refresh(palette);
    }

    /// <inheritdoc/>
    protected override void Draw()
    {
        DriveSight sight = new(Study, _acts, Compared(), _message, Desk.Keys);
        DriveWords words = DrivePage.Of(sight, Frame.Width, Frame.Height);
        Paper.Show(words.Rows, Palette);
        (_box.Y, _box.X, _box.Width) = words.Box;
    }

    // Comparing is the dearest thing on this screen, and only a new study can change it.
    private ImmutableArray<SegmentRow> Compared()
    {
        if (!ReferenceEquals(_compared.Study, Study))
        {
            _compared = (Study, RunningComparison.Of(Study, Desk.Compare));
        }

        return _compared.Rows;
    }

    private bool OnNamed(Key key)
    {
        if (key == Key.Enter)
        {
            Commit();
            return true;
        }

        if (key == Key.Esc)
        {
            _box.Put("");
            Say(null);
            return true;
        }

        if (key == Key.Tab)
        {
            _box.Put(_box.Text.Length == 0 && BegunForDue() is { } begun ? begun : WordsBegun.Completed(_box.Text, Study));
            return true;
        }

        return _box.Text.Length == 0 && IsUnlockedKeypad(key);
    }

    // With NumLock off the keypad sends these; on an empty box they have no other use.
    private bool IsUnlockedKeypad(Key key)
    {
        Key[] sent = [Key.CursorUp, Key.CursorDown, Key.CursorLeft, Key.CursorRight, Key.Home, Key.End, Key.InsertChar, Key.Delete];
        if (!sent.Contains(key))
        {
            return false;
        }

        Say(DrivingScreenWords.NumLockIsOff);
        return true;
    }

    // doubts are answered where the run is read back
    private string? BegunForDue() => DueAtStop.In(Study).FirstOrDefault(due => due.Kind == DueKind.Doubts || due.Line.Length > 0) switch
    {
        { Kind: DueKind.Doubts } => Parking.Word,
        { } due => $":{due.Line}",
        null => null,
    };

    private void OnTyped(TypedKey typed)
    {
        _justWritten = "";
        switch (typed.Kind)
        {
            case TypedKind.Writes:
                _justWritten = Write(typed.Text) ? typed.Begun : "";
                break;
            case TypedKind.Corrects:
                Write("u");
                _box.Put(typed.Text);
                break;
            case TypedKind.AsksHelp:
                Ask(KeyDeed.Help);
                break;
            default:
                Say(typed.Text.Length == 0 ? null : typed.Text);
                break;
        }
    }

    private void Commit()
    {
        _justWritten = "";
        bool bounced = _enter.IsBounce();
        string line = Typing.LineOf(_box.Text);
        if (Parking.IsWord(line))
        {
            Park();
        }
        else if (line.Length > 0)
        {
            Write(line);
        }
        else if (!bounced && Study.RunOn is null && Study.CodeAsked is { } code)
        {
            Write($"run {code}");
        }
    }

    private void Park()
    {
        _box.Put("");
        if (Study.RunOn is { } run)
        {
            Say(DrivingScreenWords.StopShutWhileRunOn(run));
            return;
        }

        Say(null);
        Desk.Parking.Take(Parking.Word);
        Ask(KeyDeed.Screen, KeyTable.Stop);
    }

    // What could not be stored stays in the box, so that it can be mended, or tried again with Enter.
    private bool Write(string line)
    {
        string before = _box.Text;
        _message = null;
        _box.Put("");
        Outcome outcome = _pen.Write(line);
        if (outcome.IsWritten)
        {
            return true;
        }

        _box.Put(outcome.Objection is null && Typing.LineOf(before) != line ? line : before);
        Say(ShellWords.NotWritten(outcome));
        return false;
    }

    private void Say(string? message)
    {
        if (_message != message)
        {
            _message = message;
            Draw();
        }
    }
}
