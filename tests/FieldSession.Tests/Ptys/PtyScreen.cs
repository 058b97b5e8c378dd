using System.Globalization;
using System.Text;
using FieldSession.Reviewing;

namespace FieldSession.Tests.Ptys;

/// <summary>
/// What a terminal would show of the bytes that a program writes: letters at places, private modes, nothing of colours but the
/// codes themselves. Knows what Terminal.Gui sends, no more.
/// </summary>
internal sealed class PtyScreen(int columns, int rows)
{
    private readonly StringBuilder _code = new();
    private string[,] _cells = Blank(columns, rows);
    private (int Row, int Column) _at;
    private State _state = State.Ground;

    private enum State
    {
        Ground,
        Escape,
        Charset,
        Control,
        Command,
        CommandEscape,
    }

    /// <summary>The private modes that were set or reset, such as 1049 for the alternate screen.</summary>
    public Dictionary<int, bool> Modes { get; } = [];

    /// <summary>Every code that sets a look, without its frame, such as "1;97".</summary>
    public HashSet<string> Looks { get; } = [];

    /// <summary>The screen as text, blanks at the ends of rows cut.</summary>
    public string Text
    {
        get
        {
            IEnumerable<string> lines = Enumerable
                .Range(0, _cells.GetLength(0))
                .Select(row => string.Concat(Enumerable.Range(0, _cells.GetLength(1)).Select(column => _cells[row, column])).TrimEnd());
            return string.Join('\n', lines);
        }
    }

    /// <summary>Forgets what is shown, or takes another size.</summary>
    public void Clear(int newColumns, int newRows) => (_cells, _at) = (Blank(newColumns, newRows), (0, 0));

    /// <summary>Forgets what is shown.</summary>
    public void Wipe() => Clear(_cells.GetLength(1), _cells.GetLength(0));

    /// <summary>Takes what the program wrote.</summary>
    public void Take(string written)
    {
        foreach (Rune rune in written.EnumerateRunes())
        {
            Take(rune);
        }
    }

    private static string[,] Blank(int columns, int rows)
    {
        string[,] cells = new string[rows, columns];
        for (int i = 0; i < cells.Length; i++)
        {
            cells[i / columns, i % columns] = " ";
        }

        return cells;
    }

    private void Take(Rune rune)
    {
        char c = rune.IsBmp ? (char)rune.Value : '\0';
        _state = _state switch
        {
            State.Ground => Grounded(rune, c),
            State.Escape => Escaped(c),
            State.Control => Controlled(c),
            State.Command => c == '\a' ? State.Ground
            : c == '\x1b' ? State.CommandEscape
            : State.Command,
            _ => State.Ground,
        };
    }

    private State Escaped(char c)
    {
        _code.Clear();
        return c switch
        {
            '[' => State.Control,
            ']' or 'P' or '_' => State.Command,
            '(' or ')' => State.Charset,
            _ => State.Ground,
        };
    }

    private State Grounded(Rune rune, char c)
    {
        switch (c)
        {
            case '\x1b':
                return State.Escape;
            case '\r':
                _at.Column = 0;
                break;
            case '\n':
                _at.Row++;
                break;
            default:
                Put(rune);
                break;
        }

        return State.Ground;
    }

    private void Put(Rune rune)
    {
        int width = Columns.Of(rune.ToString());
        if (width <= 0)
        {
            Combine(rune);
            return;
        }

        Set(_at.Column, rune.ToString());
        for (int more = 1; more < width; more++)
        {
            Set(_at.Column + more, "");
        }

        _at.Column += width;
    }

    private void Combine(Rune rune)
    {
        if (!Rune.IsControl(rune) && _at.Column > 0 && _at.Row < _cells.GetLength(0))
        {
            Set(_at.Column - 1, _cells[_at.Row, _at.Column - 1] + rune);
        }
    }

    private void Set(int column, string text)
    {
        if (_at.Row < _cells.GetLength(0) && column < _cells.GetLength(1))
        {
            _cells[_at.Row, column] = text;
        }
    }

    private State Controlled(char c)
    {
        if (c is < '@' or > '~')
        {
            _code.Append(c);
            return State.Control;
        }

        Do(c, _code.ToString());
        return State.Ground;
    }

    private void Do(char c, string code)
    {
        if (c == 'H')
        {
            int[] place = [.. code.Split(';').Append("").Select(Number).Select(number => Math.Max(1, number) - 1)];
            _at = (place[0], place[1]);
        }
        else if (c == 'J')
        {
            Wipe();
        }
        else if (c == 'm')
        {
            Looks.Add(code);
        }
        else if (code.StartsWith('?'))
        {
            SetModes(code[1..], c);
        }
    }

    private void SetModes(string modes, char c)
    {
        foreach (string mode in c is 'h' or 'l' ? modes.Split(';') : [])
        {
            Modes[Number(mode)] = c == 'h';
        }
    }

    private static int Number(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : 0;
}
