using System.Collections.Immutable;
using FieldSession.State;
using FieldSession.Terminal.Look;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>The drive screen: the page, the entry box, and the wires from keys to the logbook.</summary>
internal sealed class DriveScreen : TypingScreen
{
    private readonly EntryBox _box;
    private readonly EntryHand _hand;
    private readonly LevelOffer _offer;
    private Acts _acts = Acts.None;
    private (Study Study, bool IsCovered, ImmutableArray<SegmentRow> Rows) _compared = (Study.Empty, false, []);

    /// <summary>The screen on a study.</summary>
    public DriveScreen(Desk desk, Pen pen)
        : base(desk)
    {
        _box = new EntryBox
        {
            Press = Press,
            Pressed = OnNamed,
            Act = typed => _hand!.Do(typed),
        };
        _hand = new EntryHand(desk, pen, _box) { Changed = Draw, Asked = Ask };
        _offer = new LevelOffer(desk, _box);
        Lay(_box);
    }

    private Study Study => Desk.Logbook.Study;

    /// <inheritdoc/>
    public override void Tell(string words) => _hand.Say(words);

    /// <inheritdoc/>
    public override void Tick()
    {
        if (Desk.Levels is not null)
        {
            _offer.Renew();
            Draw();
        }
    }

    /// <inheritdoc/>
    public override void Refresh(Palette palette)
    {
        _acts = Acts.Of(Desk.Logbook);
        base.Refresh(palette);
    }

    /// <inheritdoc/>
    protected override void Draw()
    {
        DriveSight sight = new(Study, _acts, Compared(), _hand.Message, Desk.Keys, _hand.Held)
        {
            Levels = _offer.Sight,
            IsOffered = _offer.IsInBox,
            Letters = Desk.Letters,
        };
        DriveWords words = DrivePage.Of(sight, Frame.Width, Frame.Height);
        Paper.Show(words.Rows, Palette);
        (_box.Y, _box.X, _box.Width) = words.Box;
    }

    // Comparing is the dearest thing on this screen, and only a new study or the cover can change it.
    private ImmutableArray<SegmentRow> Compared()
    {
        bool isCovered = Desk.Cover.IsOn;
        if (!ReferenceEquals(_compared.Study, Study) || _compared.IsCovered != isCovered)
        {
            _compared = (
                Study,
                isCovered,
                isCovered
                    ? RunningComparison.Covered(Study, DrivingScreenWords.CoveredByKey(Desk.Keys))
                    : RunningComparison.Of(Study, Desk.Compare)
            );
        }

        return _compared.Rows;
    }

    // what the stream offers is nothing that was typed
    private TypedKey Press(string text, char typed)
    {
        bool isOffered = _offer.IsInBox;
        _offer.GiveWay();
        return _hand.Press(isOffered ? "" : text, typed);
    }

    private bool OnNamed(Key key)
    {
        if (key == Key.Enter)
        {
            _hand.Commit();
            return true;
        }

        _hand.EndRow();
        return DropsOffer(key) || Edits(key);
    }

    private bool DropsOffer(Key key)
    {
        bool isDropped = (key == Key.Esc || key == Key.Backspace) && _offer.Drop();
        _offer.GiveWay();
        return isDropped;
    }

    private bool Edits(Key key)
    {
        if (key == Key.Esc)
        {
            _hand.Drop();
            return true;
        }

        if (key == Key.Tab)
        {
            _box.Put(Completed());
            return true;
        }

        return _box.Text.Length == 0 && ((key == Key.Backspace && _hand.Recall()) || IsUnlockedKeypad(key));
    }

    // With NumLock off the keypad sends these; on an empty box they have no other use.
    private bool IsUnlockedKeypad(Key key)
    {
        Key[] sent = [Key.CursorUp, Key.CursorDown, Key.CursorLeft, Key.CursorRight, Key.Home, Key.End, Key.InsertChar, Key.Delete];
        if (!sent.Contains(key))
        {
            return false;
        }

        _hand.Say(DrivingScreenWords.NumLockIsOff);
        return true;
    }

    private string Completed() => _box.Text.Length == 0 && BegunForDue() is { } begun ? begun : WordsBegun.Completed(_box.Text, Study);

    // doubts are answered where the run is read back
    private string? BegunForDue() =>
        DueAtStop.In(Study).FirstOrDefault(due => due.Kind == DueKind.Doubts || due.Line.Length > 0) switch
        {
            { Kind: DueKind.Doubts } => Parking.Word,
            { } due => $":{due.Line}",
            null => null,
        };
}
