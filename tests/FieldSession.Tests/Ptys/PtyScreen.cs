using System.Globalization;
using System.Text;
using FieldSession.Terminal.Look;

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
            IEnumerable<string> lines = Enumerable.Range(0, _cells.GetLength(0))
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
            State.Command => c == '\a' ? State.Ground : c == '\x1b' ? State.CommandEscape : State.Command,
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
        bool isInside = _at.Row < _cells.GetLength(0) && _at.Column < _cells.GetLength(1);
        if (width <= 0)
        {
            if (_at.Column > 0 && _at.Row < _cells.GetLength(0) && !Rune.IsControl(rune))
            {
                _cells[_at.Row, _at.Column - 1] += rune.ToString();
            }

            return;
        }

        if (isInside)
        {
            _cells[_at.Row, _at.Column] = rune.ToString();
            if (width == 2 && _at.Column + 1 < _cells.GetLength(1))
            {
                _cells[_at.Row, _at.Column + 1] = "";
            }
        }

        _at.Column += width;
    }

    private State Controlled(char c)
    {
        if (c is < '@' or > '~')
        {
            _code.Append(c);
            return State.Control;
        }

        string code = _code.ToString();
        switch (c)
        {
            case 'H':
                int[] place = [.. code.Split(';').Select(Number)];
                _at = (Math.Max(1, place[0]) - 1, place.Length > 1 ? Math.Max(1, place[1]) - 1 : 0);
                break;
            case 'J':
                Wipe();
                break;
            case 'm':
                Looks.Add(code);
                break;
            case 'h' or 'l' when code.StartsWith('?'):
                foreach (string mode in code[1..].Split(';'))
                {
                    Modes[Number(mode)] = c == 'h';
                }

                break;
        }

        return State.Ground;
    }

    private static int Number(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : 0;
}
