using FieldSession.Terminal.Look;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace FieldSession.Terminal;

/// <summary>
/// One screen between header and footer. What it says comes from its page; it only has views and wires them. It is told
/// by the shell when to draw itself again: after the study, the look or the size has changed.
/// </summary>
internal abstract class Screen : View
{
    /// <summary>A screen that fills the room and is hidden until it is called.</summary>
    protected Screen()
    {
        Width = Dim.Fill();
        CanFocus = true;
        TabStop = TabBehavior.TabGroup;
        Visible = false;
    }

    /// <summary>Raised when a key on this screen asks for something that the shell does.</summary>
    public event EventHandler<(KeyDeed Deed, string Line)>? Asked;

    /// <summary>Draws the screen's words again.</summary>
    public abstract void Refresh(Palette palette);

    /// <summary>Takes the focus when the screen is shown.</summary>
    public virtual void Enter() => SetFocus();

    /// <summary>Tells what happened beside the entry, on a screen that has a line for it.</summary>
    public virtual void Tell(string words) { }

    /// <summary>A second has gone by, for a screen that shows what goes on by itself.</summary>
    public virtual void Tick() { }

    /// <summary>Asks the shell.</summary>
    /// <param name="deed">What for.</param>
    /// <param name="line">The name of a screen, where one is asked for.</param>
    protected void Ask(KeyDeed deed, string line = "") => Asked?.Invoke(this, (deed, line));
}

/// <summary>A screen of a page and a box to type into: it is drawn again when the study, the look or the room changes.</summary>
internal abstract class TypingScreen : Screen
{
    private TypingBox? _box;

    /// <summary>The screen without its box, which <see cref="Lay"/> adds.</summary>
    protected TypingScreen(Desk desk)
    {
        Desk = desk;
        Palette = desk.Palette;
    }

    /// <summary>What the screen may use.</summary>
    protected Desk Desk { get; }

    /// <summary>The look now.</summary>
    protected Palette Palette { get; private set; }

    /// <summary>Where the words are.</summary>
    protected PageView Paper { get; } = new() { Width = Dim.Fill(), Height = Dim.Fill() };

    /// <inheritdoc/>
    public override void Enter() => _box?.SetFocus();

    /// <inheritdoc/>
    public override void Refresh(Palette palette)
    {
        Palette = palette;
        _box?.SetScheme(palette.SchemeOf(Ink.Strong));
        Draw();
    }

    /// <summary>Opens the help where '?' is pressed and the box is empty; in words it is a character like others.</summary>
    /// <returns>Whether the key is used up.</returns>
    protected bool AsksHelp(Key key)
    {
        bool asks = _box is { Text.Length: 0 } && key == new Key('?');
        if (asks)
        {
            Ask(KeyDeed.Help);
        }

        return asks;
    }

    /// <summary>Adds the page and the box.</summary>
    protected void Lay(TypingBox box)
    {
        _box = box;
        Add(Paper, box);
    }

    /// <summary>Takes the word that says the car is parked, also where it was said before.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="screen">The screen's name in the key table.</param>
    /// <returns>What to say; null: it was not the word, or a run is on.</returns>
    protected string? ParkedAgain(string typed, string screen) =>
        Desk.Logbook.Study.RunOn is null && Parking.IsWord(typed) && Desk.Parking.Take(typed) ? ShellWords.CarIsParked(screen) : null;

    /// <summary>Shows the words again and puts the box in its place.</summary>
    protected abstract void Draw();

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
}

/// <summary>
/// The box that a screen is typed into. It never selects its text by itself, because the next key would then erase what
/// is half typed; what is pasted goes into its one line.
/// </summary>
internal class TypingBox : TextField
{
    /// <summary>What a key does before it is typed; true: it is used up.</summary>
    public required Func<Key, bool> Pressed { get; init; }

    /// <summary>Whether a key would be typed into the box, or moves in its text.</summary>
    public static bool Wants(Key key) =>
        (!key.IsCtrl && !key.IsAlt && key.TryGetPrintableRune(out _))
        || key == Key.Home
        || key == Key.End
        || key == Key.CursorLeft
        || key == Key.CursorRight;

    /// <summary>Replaces the text and puts the cursor behind it.</summary>
    public void Put(string text)
    {
        Text = text;
        MoveEnd();
        ClearAllSelection();
    }

    /// <summary>Empties the box and all that it remembers of its text: neither undo nor the clipboard brings it back.</summary>
    public void Forget()
    {
        ClearAllSelection();
        Text = "";
        ClearHistoryChanges();
    }

    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return Pressed(key) || IsCopyOfSecret(key) || base.OnKeyDown(key);
    }

    /// <inheritdoc/>
    protected override string OnSanitizingPaste(string text) => base.OnSanitizingPaste(PastedText.InOneLine(text));

    /// <inheritdoc/>
    protected override void OnHasFocusChanged(bool newHasFocus, View? previousFocusedView, View? focusedView)
    {
        base.OnHasFocusChanged(newHasFocus, previousFocusedView, focusedView);
        ClearAllSelection();
        MoveEnd();
    }

    private bool IsCopyOfSecret(Key key) =>
        Secret && (key.IsCtrl || key.IsShift) && !key.TryGetPrintableRune(out _) && key != Key.V.WithCtrl && key != Key.Q.WithCtrl;
}

/// <summary>What is shown in the terminal and goes on after a fault in one of its handlers.</summary>
internal interface IToldOfFaults
{
    /// <summary>Says that a handler failed and that what was stored is safe.</summary>
    void Tell(Exception fault);
}
