using System.Text;
using Terminal.Gui.Input;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>
/// The box of the drive screen. It asks what becomes of each character; editing, cursor and paste are those of every box.
/// </summary>
internal sealed class EntryBox : TypingBox
{
    /// <summary>What becomes of a typed character, given the text in the box.</summary>
    public required Func<string, char, TypedKey> Press { get; init; }

    /// <summary>What is done with words, a line or the wish for help that came of a character.</summary>
    public required Action<TypedKey> Act { get; init; }

    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key)
    {
        ArgumentNullException.ThrowIfNull(key);
        if (key.IsCtrl || key.IsAlt || !key.TryGetPrintableRune(out Rune rune))
        {
            // Ctrl+Z would take back a letter of what is typed; a slip of the finger must not.
            return key == Key.Z.WithCtrl || base.OnKeyDown(key);
        }

        return OnTyped(key, rune);
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
