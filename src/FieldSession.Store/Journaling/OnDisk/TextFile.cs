using System.Buffers;
using System.Runtime.ExceptionServices;
using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>
/// The plain text, open for writing. What <see cref="Append"/> has returned from is safe: each line is read back from the disk before it
/// counts. After a failed write or flush nobody knows what the disk holds, and a later flush that succeeds says nothing about what the
/// failed one dropped: so the whole text is read from the disk through a fresh handle, and what is missing is written again. A file whose
/// drive went and came back, or was mounted again, is known by its lines and opened again; nobody has to start the program again for it.
/// </summary>
/// <param name="disk">Where the file is.</param>
/// <param name="path">Its name.</param>
/// <param name="file">The file, held by this process alone: it is also the study's lock.</param>
/// <param name="there">The lines that are in it.</param>
/// <param name="mostBytes">How long it may become.</param>
internal sealed class TextFile(
    IDisk disk,
    string path,
    IDiskFile file,
    IReadOnlyList<Line> there,
    long mostBytes = StudyLimits.LongestTextBytes
) : IDisposable
{
    private readonly List<Line> _lines = [.. there];
    private IDiskFile _file = file;
    private long _end = TextOnDisk.LengthOf(there);
    private bool _isUnsure;

    /// <summary>Writes lines at the end and returns when they are on the disk.</summary>
    /// <exception cref="LineNotSafeException">They are not, and nothing of them counts.</exception>
    public void Append(params IReadOnlyList<Line> lines)
    {
        byte[] bytes = BytesOf(lines);
        if (_end + bytes.Length > mostBytes)
        {
            throw new LineNotSafeException(FileOnDiskWords.StudyIsFull(path, _end >> 20, mostBytes >> 20));
        }

        if (WhyNotSafe(lines, bytes) is { } fault)
        {
            throw NotSafe(fault);
        }

        _end += bytes.Length;
        _lines.AddRange(lines);
    }

    /// <summary>The text form of lines.</summary>
    public static byte[] BytesOf(IEnumerable<Line> lines)
    {
        ArrayBufferWriter<byte> text = new();
        foreach (Line line in lines)
        {
            line.WriteTo(text);
            text.Write("\n"u8);
        }

        return text.WrittenSpan.ToArray();
    }

    /// <summary>Everything that is in the file.</summary>
    public byte[] Bytes()
    {
        byte[] bytes = new byte[_end];
        return _file.Read(bytes, 0) == bytes.Length ? bytes : throw new IOException(FileOnDiskWords.FileBecameShorter(path));
    }

    /// <summary>Gives up the lock.</summary>
    public void Dispose() => _file.Dispose();

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

    private Exception? WhyNotSafe(IReadOnlyList<Line> lines, byte[] bytes)
    {
        Exception? first = _isUnsure ? null : FaultOf(() => Write(bytes));
        if (first is null && !_isUnsure)
        {
            return null;
        }

        _isUnsure = true;
        if (FaultOf(() => Restore(lines, bytes)) is { } again)
        {
            return first ?? again;
        }

        _isUnsure = false;
        return null;
    }

    private void Write(byte[] bytes)
    {
        CutBehindEnd();
        _file.Write(bytes, _end);
        _file.Sync();
        ReadBack.Demand(disk, path, bytes, _end);
    }

    // half a line may be there from an append that failed
    private void CutBehindEnd()
    {
        if (_file.Length != _end)
        {
            _file.Length = _end;
        }
    }

    // what the disk lost of the lines before is written first: what follows a gap is worth nothing
    private void Restore(IReadOnlyList<Line> added, byte[] bytes)
    {
        TakeUpAgain(added);
        using (IDiskFile? found = disk.LookPastMemory(path))
        {
            new TextOnDisk(_lines).WriteWhatIsMissing(found ?? _file, _file);
        }

        Write(bytes);
        using IDiskFile? now = disk.LookPastMemory(path);
        if (!new TextOnDisk([.. _lines, .. added]).IsIn(now ?? _file))
        {
            throw DiskTrouble.OfALyingDisk(path);
        }
    }

    // while the file that is held is still the one of that name, its own lock refuses to open it, and it is kept
    private void TakeUpAgain(IReadOnlyList<Line> unsure)
    {
        IDiskFile? found = null;
        if (FaultOf(() => found = disk.Open(path, FileMode.Open)) is { } fault)
        {
            if (!Refusal.IsLock(fault))
            {
                ExceptionDispatchInfo.Throw(fault);
            }

            return;
        }

        if (!new TextOnDisk([.. _lines, .. unsure]).IsOursIn(found!, path))
        {
            found!.Dispose();
            throw new IOException(FileOnDiskWords.AnotherFileLiesThere(path));
        }

        _file.Dispose();
        _file = found!;
    }

    private LineNotSafeException NotSafe(Exception fault)
    {
        // looked for before the cut, which would leave the file's end in memory alone
        int? lost = FirstLost();
        // if this fails too, the next append tries again before it writes, and opening cuts it otherwise
        _ = FaultOf(CutBehindEnd);
        return new LineNotSafeException(
            FileOnDiskWords.LineIsNotSafe(DiskTrouble.InWords(fault), DiskTrouble.Remedy(fault), _lines.Count + 1, lost, path),
            fault
        );
    }

    // a drive that is gone says nothing; one that answers may have lost lines that it had confirmed
    private int? FirstLost()
    {
        int? lost = null;
        _ = FaultOf(() =>
        {
            using IDiskFile? found = disk.LookPastMemory(path);
            lost = new TextOnDisk(_lines).FirstLostIn(found ?? _file);
        });
        return lost;
    }
}

/// <summary>Lines that belong in a text, and how far the disk holds them.</summary>
/// <param name="lines">The lines, in order.</param>
internal sealed class TextOnDisk(IReadOnlyList<Line> lines)
{
    // a study has up to a million lines: they are turned into bytes a few at a time
    private const int LinesAtOnce = 500;

    /// <summary>How many bytes the text of lines has.</summary>
    public static long LengthOf(IReadOnlyList<Line> lines) => lines.Sum(line => line.LengthBytes + 1L);

    /// <summary>Whether a file holds these lines and nothing behind them.</summary>
    public bool IsIn(IDiskFile file) =>
        file.Length == LengthOf(lines) && Blocks().All(block => ReadBack.IsThere(block.Bytes, block.At, file));

    /// <summary>The place, counted from 1, of the first line that a file on the disk no longer holds; null: it holds all.</summary>
    /// <exception cref="IOException">The file can't be read.</exception>
    public int? FirstLostIn(IDiskFile file)
    {
        long at = 0;
        for (int i = 0; i < lines.Count; i++)
        {
            byte[] bytes = TextFile.BytesOf([lines[i]]);
            byte[] found = new byte[bytes.Length];
            if (file.Read(found, at) < found.Length || !found.AsSpan().SequenceEqual(bytes))
            {
                return i + 1;
            }

            at += bytes.Length;
        }

        return null;
    }

    /// <summary>Writes the blocks of lines that a file on the disk does not hold.</summary>
    /// <param name="found">What the disk holds.</param>
    /// <param name="file">The file to write to; it is not flushed.</param>
    public void WriteWhatIsMissing(IDiskFile found, IDiskFile file)
    {
        foreach ((long at, byte[] bytes) in Blocks())
        {
            if (!ReadBack.IsThere(bytes, at, found))
            {
                file.Write(bytes, at);
            }
        }
    }

    /// <summary>
    /// Whether a file is this text, short or torn as a failing disk may have left it: it begins like the first line, and every line in it
    /// that is whole is one of these.
    /// </summary>
    public bool IsOursIn(IDiskFile file, string path)
    {
        StudyLimits.Refuse(path, file.Length, StudyLimits.LongestTextBytes);
        byte[] bytes = new byte[file.Length];
        TextCopy found = TextCopy.Read(bytes.AsMemory(0, file.Read(bytes, 0)));
        byte[] first = TextFile.BytesOf(lines.Take(1));
        int comparable = Math.Min(first.Length, bytes.Length);
        HashSet<Line> ours = [.. lines];
        return bytes.AsSpan(0, comparable).SequenceEqual(first.AsSpan(0, comparable)) && found.Valid.All(ours.Contains);
    }

    private IEnumerable<(long At, byte[] Bytes)> Blocks()
    {
        long at = 0;
        foreach (Line[] some in lines.Chunk(LinesAtOnce))
        {
            byte[] bytes = TextFile.BytesOf(some);
            yield return (at, bytes);
            at += bytes.Length;
        }
    }
}
