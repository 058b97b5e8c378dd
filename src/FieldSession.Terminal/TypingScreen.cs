using FieldSession.Terminal.Look;
using Terminal.Gui.ViewBase;

namespace FieldSession.Terminal;

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
