using System.Text;
using FieldSession.Store.Exports;

namespace FieldSession.Terminal.Commands;

/// <summary>
/// A stream of words for a person: nothing in them reaches the terminal that could move its cursor, change its colours or set its title,
/// wherever they came from; such characters are shown as marks. Where the stream takes no more, it is said which one it was.
/// </summary>
/// <param name="inner">Where the words go.</param>
/// <param name="refused">What to throw where it takes no more; null: what can't be said is left unsaid.</param>
internal sealed class PlainOutput(TextWriter inner, Func<Exception, IOException>? refused) : TextWriter
{
    /// <inheritdoc/>
    public override Encoding Encoding => inner.Encoding;

    /// <inheritdoc/>
    public override void Write(char value) => Write(value.ToString());

    /// <inheritdoc/>
    public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<char> buffer) => Write(buffer.ToString());

    /// <inheritdoc/>
    public override void Write(string? value) => Try(() => inner.Write(value is null ? null : VisibleText.OfLines(value)));

    /// <inheritdoc/>
    public override void WriteLine(string? value) => Write(value + inner.NewLine);

    /// <inheritdoc/>
    public override void WriteLine() => Write(inner.NewLine);

    /// <inheritdoc/>
    public override void Flush() => Try(inner.Flush);

    private void Try(Action step)
    {
        try
        {
            step();
        }
        catch (Exception full) when (full is IOException or UnauthorizedAccessException)
        {
            if (refused is not null)
            {
                throw refused(full);
            }
        }
    }
}

/// <summary>
/// Lines typed at a keyboard, letter by letter as from a pipe. Read one by one from a terminal, .NET gives the letters of a line with a
/// carriage return behind them and no line feed, so that whoever waits for one would wait until the input ends.
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
