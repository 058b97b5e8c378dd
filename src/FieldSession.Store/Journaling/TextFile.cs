using System.Text;
using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>The plain text, open for writing. What <see cref="Append"/> has returned from is safe.</summary>
/// <param name="path">Its name, for words.</param>
/// <param name="file">The file, held by this process alone: it is also the study's lock.</param>
/// <param name="end">Where the next line begins: the length of the lines that stand.</param>
internal sealed class TextFile(string path, IDiskFile file, long end) : IDisposable
{
    private long _end = end;

    /// <summary>Writes lines at the end and returns when they are on the disk.</summary>
    /// <exception cref="LineNotSafeException">They are not, and nothing of them counts.</exception>
    public void Append(params IEnumerable<Line> lines)
    {
        byte[] bytes = BytesOf(lines);
        try
        {
            CutBehindEnd();
            file.Write(bytes, _end);
            file.Sync();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw NotSafe(lines.FirstOrDefault(), fault);
        }

        _end += bytes.Length;
    }

    /// <summary>The text form of lines.</summary>
    public static byte[] BytesOf(IEnumerable<Line> lines) => Encoding.UTF8.GetBytes(string.Concat(lines.Select(line => $"{line}\n")));

    /// <summary>Everything that stands in the file.</summary>
    public byte[] Bytes()
    {
        byte[] bytes = new byte[_end];
        return file.Read(bytes, 0) == bytes.Length ? bytes : throw new IOException($"{path}: the file became shorter while it was open.");
    }

    /// <summary>Gives up the lock.</summary>
    public void Dispose() => file.Dispose();

    // half a line may stand there from an append that failed
    private void CutBehindEnd()
    {
        if (file.Length != _end)
        {
            file.Length = _end;
        }
    }

    private LineNotSafeException NotSafe(Line? first, Exception fault)
    {
        // if this fails too, the next append tries again before it writes, and opening cuts it otherwise
        _ = Attempt.Of(CutBehindEnd);
        return new LineNotSafeException(
            $"{path}: line {first?.Number} could not be made safe on the disk ({fault.Message}). It is not in the journal; "
            + "every line before it is. Make room on the disk or bring the drive back, then do the act again.",
            fault);
    }
}
