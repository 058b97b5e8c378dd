using System.Collections.Immutable;
using System.Text;
using FieldSession.Store.Readings;

namespace FieldSession.Store.MeterLogs;

/// <summary>The lines of a log cut into fields: by the delimiter under which a line of header words is found.</summary>
/// <param name="Delimiter">Comma, semicolon or tab.</param>
/// <param name="HeaderLine">The line of the header, from 1.</param>
/// <param name="Header">Its fields.</param>
/// <param name="Rows">The lines behind it that hold anything.</param>
internal sealed record MeterLogText(
    char Delimiter,
    long HeaderLine,
    ImmutableArray<string> Header,
    ImmutableArray<(long Line, ImmutableArray<string> Fields)> Rows
)
{
    private const int MostBytes = 64 << 20;

    /// <summary>Reads a log; null: the problems say why not.</summary>
    /// <param name="stream">Its bytes.</param>
    /// <param name="terms">What somebody says about it.</param>
    /// <param name="problems">Where problems go.</param>
    public static MeterLogText? Read(Stream stream, MeterLogTerms terms, FileProblems problems)
    {
        using MemoryStream bytes = new();
        byte[] piece = new byte[1 << 16];
        for (int read = stream.Read(piece); read > 0 && bytes.Length <= MostBytes; read = stream.Read(piece))
        {
            bytes.Write(piece, 0, read);
        }

        if (bytes.Length > MostBytes)
        {
            problems.Add(MeterLogWords.TooLarge, MeterLogWords.SplitIt);
            return null;
        }

        string[] lines = Decoded(bytes.GetBuffer().AsSpan(0, (int)bytes.Length)).ReplaceLineEndings("\n").Split('\n');
        MeterLogText? best = "\t;,"
            .Select(delimiter => With(delimiter, lines, terms))
            .OfType<MeterLogText>()
            .MaxBy(text => text.Rows.Count(row => row.Fields.Length == text.Header.Length));
        if (best is null)
        {
            problems.Add(MeterLogWords.NoHeader, MeterLogWords.NameColumns);
        }

        return best;
    }

    /// <summary>A field of a row; empty where the row is too short.</summary>
    public string FieldOf(int row, int column) => column < Rows[row].Fields.Length ? Rows[row].Fields[column] : "";

    // what is not UTF-8 is read as Latin-1, in which every byte is a letter
    private static string Decoded(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith(Encoding.Unicode.Preamble))
        {
            return Encoding.Unicode.GetString(bytes[2..]);
        }

        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            return Encoding.Latin1.GetString(bytes);
        }
    }

    private static MeterLogText? With(char delimiter, string[] lines, MeterLogTerms terms)
    {
        for (int i = 0; i < lines.Length; i++)
        {
            ImmutableArray<string> header = Fields(lines[i], delimiter);
            if (header.Length > 1 && MeterLogColumns.IsHeader(header, terms))
            {
                return new(
                    delimiter,
                    i + 1,
                    header,
                    [
                        .. lines
                            .Index()
                            .Skip(i + 1)
                            .Where(line => line.Item.Trim().Length > 0)
                            .Select(line => (line.Index + 1L, Fields(line.Item, delimiter))),
                    ]
                );
            }
        }

        return null;
    }

    private static ImmutableArray<string> Fields(string line, char delimiter)
    {
        List<string> fields = [];
        StringBuilder field = new();
        bool isQuoted = false;
        foreach (char c in line)
        {
            if (c == '"')
            {
                isQuoted = !isQuoted;
            }
            else if (c == delimiter && !isQuoted)
            {
                fields.Add(field.ToString().Trim());
                field.Clear();
            }
            else
            {
                field.Append(c);
            }
        }

        return [.. fields, field.ToString().Trim()];
    }
}
