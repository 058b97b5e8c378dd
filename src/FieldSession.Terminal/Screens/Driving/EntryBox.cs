using System.Text;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>
/// The one box that is typed into. It asks what becomes of each character; editing, cursor and paste are Terminal.Gui's
/// own. It never selects its text by itself, because the next key would then erase a half-typed reading.
/// </summary>
internal sealed class EntryBox : TextField
{
    /// <summary>What becomes of a typed character, given the text in the box.</summary>
    public required Func<string, char, TypedKey> Press { get; init; }

    /// <summary>What a key does that is no character; true: it is used up.</summary>
    public required Func<Key, bool> Named { get; init; }

    /// <summary>What is done with words, a line or the wish for help that came of a character.</summary>
    public required Action<TypedKey> Act { get; init; }

    /// <summary>Replaces the text and puts the cursor behind it.</summary>
    public void Put(string text)
    {
        Text = text;
        MoveEnd();
        ClearAllSelection();
    }

    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key)
    {
        ArgumentNullException.ThrowIfNull(key);
        if (key.IsCtrl || key.IsAlt || !key.TryGetPrintableRune(out Rune rune))
        {
            // Ctrl+Z would take back a letter of what is typed; a slip of the finger must not.
            return key == Key.Z.WithCtrl || Named(key) || base.OnKeyDown(key);
        }

        return OnTyped(key, rune);
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

    private bool OnTyped(Key key, Rune rune)
    {
        // Beyond the basic plane there are no keys that act.
        TypedKey pressed = rune.IsBmp ? Press(Text, (char)rune.Value) : new TypedKey(TypedKind.Goes);
        switch (pressed.Kind)
        {
            case TypedKind.Goes:
                Act(new TypedKey(TypedKind.Nothing));
                return base.OnKeyDown(key);
            case TypedKind.Becomes:
                Act(new TypedKey(TypedKind.Nothing));
                Put(pressed.Text);
                return true;
            default:
                Act(pressed);
                return true;
        }
    }
}
