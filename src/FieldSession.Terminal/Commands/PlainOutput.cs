using System.Text;
using FieldSession.Store.Exports;

namespace FieldSession.Terminal.Commands;

/// <summary>
/// A stream of words for a person: nothing in them reaches the terminal that could move its cursor, change its colours or set its title, wherever they
/// came from; such characters are shown as marks. Where the stream takes no more, it is said which one it was.
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
