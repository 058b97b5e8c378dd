using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace FieldSession.Terminal.Screens.EnergyDriving;

/// <summary>The box of the legs screen. It never selects its text by itself, because the next key would then erase a half-typed value.</summary>
internal sealed class LegBox : TextField
{
    /// <summary>What a key does that is no character of the text; true: it is used up.</summary>
    public required Func<Key, bool> Named { get; init; }

    /// <summary>Replaces the text and puts the cursor behind it.</summary>
    public void Put(string text)
    {
        Text = text;
        MoveEnd();
        ClearAllSelection();
    }

    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key) => Named(key) || base.OnKeyDown(key);

    /// <inheritdoc/>
    protected override void OnHasFocusChanged(bool newHasFocus, View? previousFocusedView, View? focusedView)
    {
        base.OnHasFocusChanged(newHasFocus, previousFocusedView, focusedView);
        ClearAllSelection();
        MoveEnd();
    }
}
