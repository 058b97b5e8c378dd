using System.Globalization;
using System.Text;

namespace FieldSession.Tests.Faults;

/// <summary>A system call of the real program as 'callfaults.c' wrote it down.</summary>
/// <param name="Name">write, fsync, ftruncate, open, create, trunc, close, rename, exchange (two names change places), link, unlink, mkdir;
/// say what went to the shell's output, tell to its messages.</param>
/// <param name="IsFailed">Whether it was made to fail.</param>
/// <param name="Result">What it answered: 0 or more, or an error number below 0.</param>
/// <param name="At">Place in the file, bytes; of ftruncate the length.</param>
/// <param name="Path">The file.</param>
/// <param name="To">The second file, of rename, exchange and link.</param>
/// <param name="Bytes">What was written.</param>
internal sealed record CallMade(string Name, bool IsFailed, long Result, long At, string Path, string To, byte[] Bytes)
{
    /// <summary>Its kind as faults name it.</summary>
    public string Kind =>
        Name switch
        {
            "create" or "trunc" => "open",
            "exchange" => "rename",
            _ => Name,
        };

    /// <summary>Whether it changes something on the disk.</summary>
    public bool IsChange =>
        Name is "write" or "ftruncate" or "create" or "trunc" or "rename" or "exchange" or "link" or "unlink" or "mkdir";

    /// <summary>Reads a record, whole calls only: a program that was killed may leave half of one.</summary>
    public static List<CallMade> ReadAll(string path)
    {
        byte[] bytes = File.ReadAllBytes(path);
        List<CallMade> calls = [];
        for (int at = 0; bytes.AsSpan(at).IndexOf((byte)'\n') is >= 0 and int length; )
        {
            string[] cells = Encoding.UTF8.GetString(bytes, at, length).Split('\t');
            int count = int.Parse(cells[4], CultureInfo.InvariantCulture);
            int from = at + length + 1;
            at = from + count + 1;
            if (at > bytes.Length)
            {
                break;
            }

            calls.Add(
                new CallMade(cells[0], cells[1] == "1", Number(cells[2]), Number(cells[3]), cells[5], cells[6], bytes[from..(from + count)])
            );
        }

        return calls;
    }

    private static long Number(string cell) => long.Parse(cell, CultureInfo.InvariantCulture);
}
