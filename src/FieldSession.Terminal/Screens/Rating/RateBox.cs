using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace FieldSession.Terminal.Screens.Rating;

/// <summary>The box for names, scores and lines. Once its text is taken nothing brings it back: neither undo nor a selection.</summary>
internal sealed class RateBox : TextField
{
    /// <summary>What a key does before it is typed; true: it is used up.</summary>
    public required Func<Key, bool> Pressed { get; init; }

    /// <summary>Empties the box and all that it remembers.</summary>
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
        return Pressed(key) || base.OnKeyDown(key);
    }

    /// <inheritdoc/>
    protected override void OnHasFocusChanged(bool newHasFocus, View? previousFocusedView, View? focusedView)
    {
        base.OnHasFocusChanged(newHasFocus, previousFocusedView, focusedView);
        ClearAllSelection();
        MoveEnd();
    }
}
