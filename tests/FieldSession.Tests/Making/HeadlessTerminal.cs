using System.Collections.Immutable;
using Terminal.Gui.App;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;

namespace FieldSession.Tests.Making;

/// <summary>A program without a terminal: keys in, screen out as text. One thread, a clock of its own.</summary>
internal abstract class HeadlessTerminal : IDisposable
{
    private readonly VirtualTimeProvider _time = new();
    private readonly IApplication _app;
    private readonly StoppedClock _clock;
    private IRunnable? _shell;

    protected HeadlessTerminal(StoppedClock clock, int columns, int rows)
    {
        _clock = clock;
        _app = Application.Create(_time);
        _app.Init(DriverRegistry.Names.ANSI);
        _app.Driver!.SetScreenSize(columns, rows);
    }

    /// <summary>The screen as text, blanks at the ends of rows cut. A wide character takes one place here but two on the screen.</summary>
    public string Screen =>
        string.Join('\n', _app.Driver!.ToString()!.Split(Environment.NewLine).Select(row => row.TrimEnd())).TrimEnd('\n');

    /// <summary>Its rows.</summary>
    public string[] Rows => Screen.Split('\n');

    /// <summary>What is in the entry box.</summary>
    public string Box => Rows.Select(row => row.TrimStart()).First(row => row.StartsWith('>'))[1..].Split("   ")[0].Trim();

    /// <summary>Whether the program has been left.</summary>
    public bool HasEnded => _shell!.StopRequested;

    /// <summary>Is told of the screen after every key.</summary>
    public Action<string>? Watcher { get; set; }

    /// <summary>The rows as they look: stretches of letters, blanks at the ends of rows kept.</summary>
    public ImmutableArray<ImmutableArray<StyledText>> Looks => [.. Enumerable.Range(0, _app.Driver!.Rows).Select(LooksOf)];

    /// <summary>The attribute of a cell, as drawn.</summary>
    public string ColourAt(int row, int column) => _app.Driver!.Contents![row, column].Attribute.ToString()!;

    /// <summary>
    /// Presses keys: characters as they are, others by name in angle brackets. Half a second passes before Enter, and a thought before
    /// a character that may be an act: one typed where the box holds no words.
    /// </summary>
    public void Press(string keys)
    {
        foreach (Key key in Parsed(keys))
        {
            if (key == Key.Enter)
            {
                _clock.Advance(TimeSpan.FromMilliseconds(500));
            }
            else if (MayAct(key))
            {
                _clock.Advance(TimeSpan.FromMilliseconds(1350));
            }

            Press(key);
        }
    }

    /// <summary>Lets seconds go by without a key.</summary>
    public void Wait(double seconds)
    {
        _clock.Advance(TimeSpan.FromSeconds(seconds));
        _time.Advance(TimeSpan.FromSeconds(seconds));
        Settle();
    }

    /// <summary>Pastes text, as a terminal delivers it.</summary>
    public void Paste(string text)
    {
        _app.RaisePasteEvent(text);
        Settle();
    }

    public virtual void Dispose() => _app.Dispose();

    protected void Begin(IRunnable shell)
    {
        _shell = shell;
        _app.Begin(shell);
        Settle();
    }

    protected void Resized(int columns, int rows)
    {
        _app.Driver!.SetScreenSize(columns, rows);
        Settle();
    }

    protected void Press(Key key)
    {
        _app.InjectKey(key);
        Settle();
        Watcher?.Invoke(Screen);
    }

    private bool MayAct(Key key) =>
        key.AsRune.Value is > ' ' and not (>= '0' and <= '9') and not ('-' or '.' or ',' or ';' or ':')
        && Rows.Select(row => row.TrimStart()).FirstOrDefault(row => row.StartsWith('>')) is { } box
        && box[1..]
            .Split("   ")[0]
            .Trim()
            .TrimEnd('t', 'w', 's', 'r', 'n', 'e')
            .All(stands => char.IsAsciiDigit(stands) || stands is '-' or '.' or ',' or ' ');

    private void Settle()
    {
        _app.TimedEvents!.RunTimers();
        _app.LayoutAndDraw();
    }

    private ImmutableArray<StyledText> LooksOf(int row)
    {
        List<StyledText> stretches = [];
        for (int column = 0; column < _app.Driver!.Cols; column++)
        {
            Cell cell = _app.Driver.Contents![row, column];
            Look look = LookOf(cell.Attribute ?? default);
            string letter = string.IsNullOrEmpty(cell.Grapheme) ? " " : cell.Grapheme;
            if (stretches.Count > 0 && stretches[^1].Look == look)
            {
                stretches[^1] = new StyledText(stretches[^1].Text + letter, look);
            }
            else
            {
                stretches.Add(new StyledText(letter, look));
            }
        }

        return [.. stretches];
    }

    private static Look LookOf(global::Terminal.Gui.Drawing.Attribute drawn) =>
        drawn.Background == Color.Red ? Look.Alarm
        : drawn.Style.HasFlag(TextStyle.Reverse) ? Look.Reverse
        : drawn.Style.HasFlag(TextStyle.Bold) ? Look.Strong
        : Look.Plain;

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
