using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace FieldSession.Terminal.Screens.Planning;

/// <summary>The box in which a cell of the plan is typed. It never selects its text by itself, because the next key would then erase it.</summary>
internal sealed class PlanBox : TextField
{
    /// <summary>What a key does that is no character; true: it is used up.</summary>
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
