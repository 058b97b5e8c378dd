using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>Lines that belong in a text, and how far the disk holds them.</summary>
/// <param name="lines">The lines, in order.</param>
internal sealed class TextOnDisk(IReadOnlyList<Line> lines)
{
    // a study has up to a million lines: they are turned into bytes a few at a time
    private const int LinesAtOnce = 500;

    /// <summary>How many bytes the text of lines has.</summary>
    public static long LengthOf(IReadOnlyList<Line> lines) => lines.Sum(line => line.LengthBytes + 1L);

    /// <summary>Whether a file holds these lines and nothing behind them.</summary>
    public bool IsIn(IDiskFile file) => file.Length == LengthOf(lines) && Blocks().All(block => ReadBack.IsThere(block.Bytes, block.At, file));

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
    /// Whether a file is this text, short or torn as a failing disk may have left it: it begins like the first line, and every line in it that is
    /// whole is one of these.
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
