using FieldSession.Journal;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace FieldSession.Terminal.Parked;

/// <summary>
/// A screen that is shut until the car is parked: a page that scrolls, what comes next, words about the last act, and a
/// box. What is on the page and what an answer does, each screen says itself.
/// </summary>
internal abstract class ParkedScreen : TypingScreen
{
    private const int LeastPageColumns = 56;
    private const int PlaceColumns = 18;

    private readonly string _name;
    private readonly TypingBox _box;
    private readonly EnterBounce _enter;
    private int _from;
    private int _room = 1;
    private bool _markMoved;
    private string? _message;

    /// <summary>The screen, shut.</summary>
    /// <param name="name">Its name in the key table.</param>
    /// <param name="desk">What it may use.</param>
    /// <param name="pen">The hand that writes.</param>
    protected ParkedScreen(string name, Desk desk, Pen pen)
        : base(desk)
    {
        _name = name;
        Pen = pen;
        _enter = new EnterBounce(desk.Clock);
        _box = new TypingBox { Pressed = OnPressed };
        Lay(_box);
    }

    /// <summary>The hand that writes.</summary>
    protected Pen Pen { get; }

    /// <summary>The study as it is now.</summary>
    protected Study Study => Desk.Logbook.Study;

    /// <summary>Whether the page is open: somebody has said that the car is parked, and no run is on.</summary>
    protected bool IsOpen => Desk.Parking.IsParked && Study.RunOn is null;

    /// <inheritdoc/>
    public override void Enter()
    {
        base.Enter();
        Draw();
    }

    /// <summary>The page in so many columns; asked only when parked.</summary>
    protected abstract ParkedPage Page(int columns);

    /// <summary>Takes an answer; it may be empty.</summary>
    protected abstract void Take(string answer);

    /// <summary>Does what a key of the screen's own asks for.</summary>
    protected virtual void Do(KeyDeed deed) { }

    /// <summary>Says words about the last act; null: takes them away.</summary>
    protected void Say(string? message) => _message = message;

    /// <summary>Empties the box of what somebody has begun to type.</summary>
    protected void ForgetBox() => _box.Forget();

    /// <summary>Scrolls, when drawn next, as far as the marked row is in sight.</summary>
    protected void KeepMarkInSight() => _markMoved = true;

    /// <summary>What is in the box.</summary>
    protected string BoxText => _box.Text;

    /// <summary>Takes a key before anything else does.</summary>
    /// <returns>Whether it is used up.</returns>
    protected virtual bool Takes(Key key) => false;

    /// <summary>Puts a line into the box, the cursor behind it.</summary>
    protected void BeginLine(string line) => _box.Put(line);

    /// <summary>Begins the page at its first row.</summary>
    protected void ToTop() => _from = 0;

    /// <summary>Writes a typed line and says what came of it.</summary>
    protected void Write(string line) => Told(Pen.Write(line));

    /// <summary>Says what came of an act.</summary>
    /// <returns>Whether it is written.</returns>
    protected bool Told(Outcome outcome)
    {
        Say(outcome.Echo is { } echo ? echo.Words : ShellWords.NotWritten(outcome));
        return outcome.IsWritten;
    }

    /// <inheritdoc/>
    protected override void Draw()
    {
        int columns = Math.Max(4, Frame.Width - 2);
        ParkedPage page = IsOpen ? Page(Math.Max(LeastPageColumns, columns)) : ParkedPage.Shut(Study, Desk.Keys, columns);
        string prompt = page.Prompt.Length == 0 ? ">" : $"{page.Prompt} >";
        int below = Scroll(page, columns);
        IEnumerable<PageRow> shown = page.Rows.Skip(_from).Take(_room);
        Paper.Show(
            [
                .. page.Above.Select(row => PageRow.Of(" ").And(row)),
                .. shown.Concat(Enumerable.Repeat(PageRow.Blank, _room)).Take(_room).Select(row => PageRow.Of(" ").And(row)),
                .. Below(page, Place(page.Rows.Length), columns).Select(row => PageRow.Of(" ").And(row)),
                PageRow.Of($" {prompt}", Ink.Strong),
            ],
            Palette
        );
        (_box.Y, _box.X, _box.Width) = (page.Above.Length + _room + below, Columns.Of(prompt) + 2, Dim.Fill(1));
        _box.Secret = page.Secret;
    }

    // How many rows are below the page depends on whether its place must be told, and the other way round.
    private int Scroll(ParkedPage page, int columns)
    {
        int below = Below(page, "", columns).Count();
        int rows = Frame.Height - page.Above.Length - 1;
        _room = Math.Max(1, rows - below);
        if (page.Rows.Length > _room)
        {
            below = Below(page, Place(page.Rows.Length), columns).Count();
            _room = Math.Max(1, rows - below);
        }

        KeepInSight(page);
        _from = Math.Clamp(_from, 0, Math.Max(0, page.Rows.Length - _room));
        return below;
    }

    // Always as wide, so that the hint is not broken again while one scrolls.
    private string Place(int rows) =>
        rows <= _room ? "" : $"rows {_from + 1}-{Math.Min(rows, _from + _room)} of {rows}".PadLeft(PlaceColumns);

    private IEnumerable<PageRow> Below(ParkedPage page, string place, int columns)
    {
        foreach (string line in _message is null ? [] : Wrapped.Lines(_message, columns - 2).Take(3))
        {
            yield return PageRow.Of($" {line} ", Ink.Alarm);
        }

        string[] hints = [.. Wrapped.Lines(page.Hint, columns - (place.Length == 0 ? 0 : PlaceColumns + 1)).Take(page.HintRows)];
        for (int i = 0; i < hints.Length; i++)
        {
            yield return PageRow.Of(hints[i], Ink.Strong).WithRight(PageRow.Of(i == 0 ? place : "", Ink.Quiet), columns);
        }
    }

    // The mark pulls the page along only when it was moved, so that one can scroll away from it.
    private void KeepInSight(ParkedPage page)
    {
        if (_markMoved && page.Marked is { } row)
        {
            _from =
                row < _from ? row
                : row >= _from + _room ? row - _room + 1
                : _from;
        }

        _markMoved = false;
    }

    private bool OnPressed(Key key)
    {
        if (Takes(key))
        {
            Draw();
            return true;
        }

        bool isEmpty = _box.Text.Length == 0;
        KeyRow? row = Desk.Keys.On(_name).FirstOrDefault(known => known.Has(key));
        if (row is null || (!isEmpty && IsForText(row, key)) || (row.Where == ScreenName.Everywhere && row.Deed != KeyDeed.Help))
        {
            return false;
        }

        if (row.Deed == KeyDeed.Help)
        {
            Ask(KeyDeed.Help);
            return true;
        }

        Press(row.Deed, isEmpty);
        Draw();
        return true;
    }

    // where something is in the box, these keys type or erase
    private static bool IsForText(KeyRow row, Key key) => TypingBox.Wants(key) || row.Deed == KeyDeed.Recall;

    private void Press(KeyDeed deed, bool isEmpty)
    {
        switch (deed)
        {
            case KeyDeed.Answer:
                Commit();
                break;
            case KeyDeed.Back when !isEmpty:
                _box.Forget();
                break;
            case KeyDeed.Up or KeyDeed.Down or KeyDeed.PageUp or KeyDeed.PageDown or KeyDeed.Top or KeyDeed.Bottom:
                _from = Scrolled(deed);
                break;
            default:
                if (IsOpen)
                {
                    Say(null);
                    Do(deed);
                    _markMoved |= deed is KeyDeed.Previous or KeyDeed.Next or KeyDeed.Due;
                }

                break;
        }
    }

    private int Scrolled(KeyDeed deed) =>
        deed switch
        {
            KeyDeed.Up => _from - 1,
            KeyDeed.Down => _from + 1,
            KeyDeed.PageUp => _from - _room,
            KeyDeed.PageDown => _from + _room,
            KeyDeed.Top => 0,
            _ => int.MaxValue / 2,
        };

    private void Commit()
    {
        string typed = _box.Text.Trim();
        bool wasOpen = IsOpen;
        if (_enter.IsBounce() && typed.Length == 0)
        {
            Say(_message is null ? ParkedWords.EnterBounced : $"{_message}; {ParkedWords.EnterBounced}");
            return;
        }

        Say(null);
        _box.Forget();
        if (wasOpen)
        {
            TakeWhenOpen(typed);
        }
        else if (Study.RunOn is null)
        {
            Say(Desk.Parking.Take(typed) ? null : $"'{Columns.Cut(typed, 20)}' is not '{Parking.Word}'");
            ToTop();
        }
    }

    // what is typed hidden may be any word
    private void TakeWhenOpen(string typed)
    {
        if (!_box.Secret && ParkedAgain(typed, _name) is { } words)
        {
            Say(words);
        }
        else
        {
            Take(typed);
        }
    }
}
