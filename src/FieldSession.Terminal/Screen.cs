using FieldSession.Terminal.Look;
using Terminal.Gui.ViewBase;

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
    public virtual void Tell(string words)
    {
    }

    /// <summary>A second has gone by, for a screen that shows what goes on by itself.</summary>
    public virtual void Tick()
    {
    }

    /// <summary>Asks the shell.</summary>
    /// <param name="deed">What for.</param>
    /// <param name="line">The name of a screen, where one is asked for.</param>
    protected void Ask(KeyDeed deed, string line = "") => Asked?.Invoke(this, (deed, line));
}
