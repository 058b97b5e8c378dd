using FieldSession.Comparing;
using FieldSession.Terminal;
using Terminal.Gui.Input;

namespace FieldSession.Tests.Making;

/// <summary>The program on a study without a terminal.</summary>
internal sealed class Tui : HeadlessTerminal
{
    private readonly Shell _shell;
    private readonly StoppedClock _clock;

    public Tui(
        ADay day,
        int columns = 80,
        int rows = 24,
        string screen = "drive",
        Func<MeasuredDay, ComparisonTerms, Comparison>? compare = null
    )
        : this(day.Book, day.Clock, desk => compare is null ? desk : desk with { Compare = compare }, columns, rows, screen) { }

    public Tui(Logbook book, StoppedClock clock, Func<Desk, Desk> with, int columns = 80, int rows = 24, string screen = "drive")
        : base(clock, columns, rows)
    {
        _clock = clock;
        _shell = new Shell(with(new Desk { Logbook = book, Clock = clock }), screen);
        Begin(_shell);
    }

    /// <summary>Presses keys: characters as they are, others by name in angle brackets. Half a second passes before Enter.</summary>
    public Tui Keys(string keys)
    {
        Press(keys);
        return this;
    }

    /// <summary>Presses Enter so soon after the key before that it may be a bounce.</summary>
    public Tui Bounce(int afterMs)
    {
        _clock.Advance(TimeSpan.FromMilliseconds(afterMs));
        Press(Key.Enter);
        return this;
    }

    /// <summary>Presses one key so many milliseconds after the one before; a line end is Enter.</summary>
    public Tui After(int afterMs, char key)
    {
        _clock.Advance(TimeSpan.FromMilliseconds(afterMs));
        Press(key == '\n' ? Key.Enter : new Key(key));
        return this;
    }

    /// <summary>Makes the terminal another size.</summary>
    public Tui Resize(int columns, int rows)
    {
        Resized(columns, rows);
        return this;
    }

    public override void Dispose()
    {
        _shell.Dispose();
        base.Dispose();
    }
}
