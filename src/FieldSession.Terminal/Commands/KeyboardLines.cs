namespace FieldSession.Terminal.Commands;

/// <summary>
/// Lines typed at a keyboard, letter by letter as from a pipe. Read one by one from a terminal, .NET gives the letters of a line with a carriage
/// return behind them and no line feed, so that whoever waits for one would wait until the input ends.
/// </summary>
/// <param name="keyboard">The terminal's input.</param>
internal sealed class KeyboardLines(TextReader keyboard) : TextReader
{
    private string? _line;
    private int _at;

    /// <inheritdoc/>
    public override int Peek() => IsThere() ? Letter() : -1;

    /// <inheritdoc/>
    public override int Read()
    {
        if (!IsThere())
        {
            return -1;
        }

        char letter = Letter();
        _at++;
        _line = letter == '\n' ? null : _line;
        return letter;
    }

    private bool IsThere()
    {
        if (_line is null && keyboard.ReadLine() is { } next)
        {
            _line = next;
            _at = 0;
        }

        return _line is not null;
    }

    private char Letter() => _at < _line!.Length ? _line[_at] : '\n';
}
