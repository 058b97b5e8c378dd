using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace FieldSession.Terminal.Parked;

/// <summary>
/// The box of a screen that is used when parked. Once its text is taken it forgets it: neither undo nor the clipboard
/// brings an answer or a passphrase back.
/// </summary>
internal sealed class LineBox : TextField
{
    /// <summary>What a key does beside typing, given whether the box is empty; true: it is used up.</summary>
    public required Func<Key, bool, bool> Pressed { get; init; }

    /// <summary>Whether a key would be typed into the box, or moves in its text.</summary>
    public static bool Wants(Key key) =>
        (!key.IsCtrl && !key.IsAlt && key.TryGetPrintableRune(out _)) || key == Key.Home || key == Key.End || key == Key.CursorLeft || key == Key.CursorRight;

    /// <summary>Empties the box and all that it remembers of its text.</summary>
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
        return Pressed(key, Text.Length == 0) || IsCopyOfSecret(key) || base.OnKeyDown(key);
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
