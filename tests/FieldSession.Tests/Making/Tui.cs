using FieldSession.Comparing;
using FieldSession.Terminal;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;

namespace FieldSession.Tests.Making;

/// <summary>The program on a study without a terminal: keys in, screen out as text. One thread, a clock of its own.</summary>
internal sealed class Tui : IDisposable
{
    private readonly VirtualTimeProvider _time = new();
    private readonly IApplication _app;
    private readonly Shell _shell;
    private readonly ADay _day;

    public Tui(ADay day, int columns = 80, int rows = 24, string screen = "drive", Func<MeasuredDay, ComparisonTerms, Comparison>? compare = null)
    {
        _day = day;
        _app = Application.Create(_time);
        _app.Init(DriverRegistry.Names.ANSI);
        _app.Driver!.SetScreenSize(columns, rows);
        Desk desk = new() { Logbook = day.Book, Clock = day.Clock };
        _shell = new Shell(compare is null ? desk : desk with { Compare = compare }, screen);
        _app.Begin(_shell);
        Settle();
    }

    /// <summary>The screen as text, blanks at the ends of rows cut. A wide character takes one place here but two on the screen.</summary>
    public string Screen => string.Join('\n', _app.Driver!.ToString()!.Split(Environment.NewLine).Select(row => row.TrimEnd())).TrimEnd('\n');

    /// <summary>Its rows.</summary>
    public string[] Rows => Screen.Split('\n');

    /// <summary>What stands in the entry box.</summary>
    public string Box => Rows.Select(row => row.TrimStart()).First(row => row.StartsWith('>'))[1..].Split("   ")[0].Trim();

    /// <summary>Whether the program has been left.</summary>
    public bool HasEnded => _shell.StopRequested;

    /// <summary>The attribute of a cell, as drawn.</summary>
    public string ColourAt(int row, int column) => _app.Driver!.Contents![row, column].Attribute.ToString()!;

    /// <summary>Presses keys: characters as they are, others by name in angle brackets. Half a second passes before Enter.</summary>
    public Tui Keys(string keys)
    {
        foreach (Key key in Parsed(keys))
        {
            if (key == Key.Enter)
            {
                _day.Clock.Advance(TimeSpan.FromMilliseconds(500));
            }

            Press(key);
        }

        return this;
    }

    /// <summary>Presses Enter so soon after the key before that it may be a bounce.</summary>
    public Tui Bounce(int afterMs)
    {
        _day.Clock.Advance(TimeSpan.FromMilliseconds(afterMs));
        Press(Key.Enter);
        return this;
    }

    /// <summary>Makes the terminal another size.</summary>
    public Tui Resize(int columns, int rows)
    {
        _app.Driver!.SetScreenSize(columns, rows);
        Settle();
        return this;
    }

    public void Dispose()
    {
        _shell.Dispose();
        _app.Dispose();
    }

    private void Press(Key key)
    {
        _app.InjectKey(key);
        Settle();
    }

    private void Settle()
    {
        _app.TimedEvents!.RunTimers();
        _app.LayoutAndDraw();
    }

    private static IEnumerable<Key> Parsed(string keys)
    {
        for (int i = 0; i < keys.Length; i++)
        {
            int end = keys[i] == '<' ? keys.IndexOf('>', i) : -1;
            if (end > i + 1)
            {
                Assert.True(Key.TryParse(keys[(i + 1)..end], out Key? named), $"no key {keys[i..(end + 1)]}");
                yield return named!;
                i = end;
            }
            else if (char.IsSurrogatePair(keys, i))
            {
                yield return new Key(char.ConvertToUtf32(keys, i++));
            }
            else
            {
                yield return new Key(keys[i]);
            }
        }
    }
}
