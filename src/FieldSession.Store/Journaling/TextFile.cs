using System.Text;
using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>
/// The plain text, open for writing. What <see cref="Append"/> has returned from is safe. A file whose drive went and came
/// back, or was mounted anew, is known by its end and opened again; nobody has to start the program again for it.
/// </summary>
/// <param name="path">Its name, for words.</param>
/// <param name="file">The file, held by this process alone: it is also the study's lock.</param>
/// <param name="end">Where the next line begins: the length of the lines that stand.</param>
/// <param name="openAgain">Opens the file of that name anew.</param>
internal sealed class TextFile(string path, IDiskFile file, long end, Func<IDiskFile> openAgain) : IDisposable
{
    // longer than any line but a plan's; a line holds the hash of all lines before it
    private const int BytesKnownBy = 4096;

    private IDiskFile _file = file;
    private byte[] _lastBytes = EndOf(file, end);
    private long _end = end;

    /// <summary>Writes lines at the end and returns when they are on the disk.</summary>
    /// <exception cref="LineNotSafeException">They are not, and nothing of them counts.</exception>
    public void Append(params IEnumerable<Line> lines)
    {
        byte[] bytes = BytesOf(lines);
        if (_end + bytes.Length > StudyLimits.LongestTextBytes)
        {
            throw new LineNotSafeException(StudyFileWords.StudyIsFull(path, _end >> 20));
        }

        if (FaultOf(() => Write(bytes)) is { } fault && (!CameBack(bytes) || FaultOf(() => Write(bytes)) is not null))
        {
            throw NotSafe(lines.FirstOrDefault(), fault);
        }

        _end += bytes.Length;
        byte[] known = [.. _lastBytes, .. bytes];
        _lastBytes = known[^Math.Min(known.Length, BytesKnownBy)..];
    }

    /// <summary>The text form of lines.</summary>
    public static byte[] BytesOf(IEnumerable<Line> lines) => Encoding.UTF8.GetBytes(string.Concat(lines.Select(line => $"{line}\n")));

    /// <summary>Everything that stands in the file.</summary>
    public byte[] Bytes()
    {
        byte[] bytes = new byte[_end];
        return _file.Read(bytes, 0) == bytes.Length ? bytes : throw new IOException(StudyFileWords.FileBecameShorter(path));
    }

    /// <summary>Gives up the lock.</summary>
    public void Dispose() => _file.Dispose();

    private static byte[] EndOf(IDiskFile file, long end)
    {
        byte[] bytes = new byte[Math.Min(end, BytesKnownBy)];
        return bytes[..file.Read(bytes, end - bytes.Length)];
    }

    private static Exception? FaultOf(Action step)
    {
        try
        {
            step();
            return null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return fault;
        }
    }

    private void Write(byte[] bytes)
    {
        CutBehindEnd();
        _file.Write(bytes, _end);
        _file.Sync();
    }

    // half a line may stand there from an append that failed
    private void CutBehindEnd()
    {
        if (_file.Length != _end)
        {
            _file.Length = _end;
        }
    }

    // while the file that is held is still the one of that name, its own lock refuses this, and nothing is given up
    private bool CameBack(byte[] unsure)
    {
        IDiskFile? found = null;
        bool isKnown = FaultOf(() => found = openAgain()) is null && FaultOf(() => RefuseOther(found!, unsure)) is null;
        if (isKnown)
        {
            _file.Dispose();
            _file = found!;
        }
        else
        {
            found?.Dispose();
        }

        return isKnown;
    }

    private void RefuseOther(IDiskFile found, byte[] unsure)
    {
        byte[] behind = new byte[Math.Max(0, Math.Min(found.Length - _end, unsure.Length + 1))];
        behind = behind[..found.Read(behind, _end)];
        bool isOurs = behind.AsSpan().IndexOf((byte)'\n') is var lineBreak && (lineBreak < 0 || behind.AsSpan().SequenceEqual(unsure));
        if (found.Length < _end || !EndOf(found, _end).AsSpan().SequenceEqual(_lastBytes) || !isOurs)
        {
            throw new IOException(StudyFileWords.AnotherFileLiesThere(path));
        }
    }

    private LineNotSafeException NotSafe(Line? first, Exception fault)
    {
        // if this fails too, the next append tries again before it writes, and opening cuts it otherwise
        _ = FaultOf(CutBehindEnd);
        return new LineNotSafeException(
            StudyFileWords.LineIsNotSafe(fault, first, path),
            fault);
    }
}
