using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace FieldSession.Terminal;

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
        (!key.IsCtrl && !key.IsAlt && key.TryGetPrintableRune(out _)) || key == Key.Home || key == Key.End || key == Key.CursorLeft || key == Key.CursorRight;

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
