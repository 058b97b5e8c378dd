using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using FieldSession.Journal;
using FieldSession.Store.Disks;
using Microsoft.Win32.SafeHandles;

namespace FieldSession.Store.Journaling;

/// <summary>
/// Which lines of a study this laptop has acknowledged, written down apart from it, in the user's own folder: how many of each strand, and
/// the hash of the last. So a later loss can be seen that no hash chain shows, such as an end that is cut off or a disk that lied about its
/// flushes. It is written with each act and left to the system to bring to the disk, since a second flush would double the time of an act:
/// a power cut may take its last half minute.
/// </summary>
internal sealed class AcknowledgedLines : IDisposable
{
    private const string Head = "fieldsession-acknowledged-1";
    private const string FolderName = "acknowledged";
    private const string Lost = "lost";
    private const int DigitsOfName = 32;

    private readonly SafeFileHandle _file;
    private readonly string _path;
    private readonly Dictionary<string, StrandHead> _heads;
    private readonly IReadOnlyList<StrandHead> _missing;
    private long _length;

    private AcknowledgedLines(SafeFileHandle file, string path, IReadOnlyList<Line> lines, IReadOnlyList<StrandHead> missing)
    {
        _file = file;
        _path = path;
        _missing = missing;
        _heads = lines.GroupBy(line => line.Strand).Select(strand => strand.Last()).ToDictionary(line => line.Strand, HeadAt);
        Write();
    }

    /// <summary>Opens the record of a study, or begins it; null: it can't be kept here, which costs nothing but this net.</summary>
    /// <param name="folder">The user's folder for such files; null: none is kept.</param>
    /// <param name="study">Full path of the study.</param>
    /// <param name="lines">The lines found in it.</param>
    public static AcknowledgedLines? Open(string? folder, string study, IReadOnlyList<Line> lines)
    {
        if (folder is null || NameOf(folder, study, lines) is not { } path)
        {
            return null;
        }

        AcknowledgedLines? opened = null;
        _ = Attempt.Of(() =>
        {
            IReadOnlyList<StrandHead> missing = MissingIn(folder, study, lines);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            opened = new AcknowledgedLines(
                File.OpenHandle(path, FileMode.OpenOrCreate, FileAccess.Write, FileShare.ReadWrite),
                path,
                lines,
                missing
            );
        });
        return opened;
    }

    /// <summary>
    /// The ends of strands that were acknowledged here and are not among the lines of the study; empty: nothing is missing, or nothing is
    /// recorded.
    /// </summary>
    public static IReadOnlyList<StrandHead> MissingIn(string? folder, string study, IReadOnlyList<Line> lines)
    {
        if (folder is null || NameOf(folder, study, lines) is not { } path || !File.Exists(path))
        {
            return [];
        }

        HashSet<string> there = [.. lines.Select(line => line.Hash)];
        // on Windows a program that adds to it is let be only by a reader that shares writing
        using StreamReader record = new(FileKind.OpenToRead(path));
        return [.. HeadsIn(record.ReadToEnd()).Where(head => !there.Contains(head.Hash))];
    }

    /// <summary>The record's file; null: a study without lines has none.</summary>
    public static string? NameOf(string folder, string study, IReadOnlyList<Line> lines) =>
        StudyState.IdentityOf(lines) is { } identity
            ? Path.Combine(
                folder,
                FolderName,
                Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{study}\n{identity}")))[..DigitsOfName]
            )
            : null;

    /// <summary>Notes lines that are safe on the disk, before they are acknowledged.</summary>
    public void Note(IEnumerable<Line> lines)
    {
        foreach (Line line in lines)
        {
            _heads[line.Strand] = HeadAt(line);
        }

        Write();
    }

    /// <summary>Brings the record to the disk.</summary>
    public void Dispose()
    {
        _ = Attempt.Of(() => DiskFlush.File(_file, _path));
        _file.Dispose();
    }

    private static StrandHead HeadAt(Line line) => new(line.Strand, line.Number, line.Hash);

    private static IEnumerable<StrandHead> HeadsIn(string text)
    {
        string[] lines = text.Split('\n');
        foreach (string[] words in lines.Skip(1).Select(line => line.Split(' ')).Where(words => words.Length == 4))
        {
            if (lines[0] == Head && int.TryParse(words[2], NumberStyles.None, CultureInfo.InvariantCulture, out int count))
            {
                yield return new StrandHead(words[1], count, words[3]);
            }
        }
    }

    private static string Row(string word, StrandHead head) =>
        string.Create(CultureInfo.InvariantCulture, $"{word} {head.Strand} {head.Lines} {head.Hash}\n");

    private void Write() =>
        _ = Attempt.Of(() =>
        {
            string text =
                $"{Head}\n{string.Concat(_missing.Select(head => Row(Lost, head)))}"
                + $"{string.Concat(_heads.Values.Select(head => Row("safe", head)))}";
            byte[] bytes = Encoding.ASCII.GetBytes(text);
            RandomAccess.Write(_file, bytes, 0);
            if (_length != bytes.Length)
            {
                RandomAccess.SetLength(_file, bytes.Length);
                _length = bytes.Length;
            }
        });
}

/// <summary>The end of a strand's verified chain. Written down elsewhere, it shows later whether anything was changed.</summary>
/// <param name="Strand">The strand, 16 hex digits.</param>
/// <param name="Lines">How many of its lines hold.</param>
/// <param name="Hash">Hash of the last one, 64 hex digits.</param>
public sealed record StrandHead(string Strand, int Lines, string Hash);
