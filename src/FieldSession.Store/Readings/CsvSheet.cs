using System.Text;
using System.Text.Unicode;
using CsvHelper;
using FieldSession.Store.Exports;

namespace FieldSession.Store.Readings;

/// <summary>
/// A CSV file (RFC 4180, UTF-8, header required) read row by row, columns by name in any order and letter case, unknown columns passed over.
/// What is wrong with the file as such (header, quotes, bytes, ragged rows, size) is told here; what a value may be is the reader's business.
/// </summary>
internal sealed class CsvSheet : IDisposable
{
    private readonly CountedStream bytes;
    private readonly CsvReader reader;
    private readonly FileProblems problems;
    private readonly string[] names;
    private readonly int[] places;
    private readonly string[] texts;
    private bool isMalformed;
    private int headerCount;
    private int rows;

    /// <summary>Opens a sheet; the stream is closed with it.</summary>
    /// <param name="stream">The file's bytes.</param>
    /// <param name="problems">Where problems go.</param>
    /// <param name="names">Every column that is read, required ones first.</param>
    public CsvSheet(Stream stream, FileProblems problems, IReadOnlyList<string> names)
    {
        this.problems = problems;
        this.names = [.. names];
        places = new int[names.Count];
        texts = new string[names.Count];
        bytes = new CountedStream(stream);
        reader = CsvReader.Create(bytes, new CsvReaderOptions
        {
            // the header is read as the first row, so that its bytes can be looked at as well
            HasHeader = false,
            Separator = ',',
            Encoding = Encoding.UTF8,
            TrackLineNumbers = true,
            MaxRecordSize = CsvLimits.RecordBytes,
            PoolStrings = true,
            OnMalformedRecord = Malformed,
        });
    }

    /// <summary>The line the current row begins on, from 1.</summary>
    public long Line => reader.LineNumber;

    /// <summary>The text in a column of the current row, without blanks around it; empty where the file has no such column.</summary>
    public string this[int column] => texts[column];

    /// <summary>Adds a problem of the current row.</summary>
    public void Problem(int column, string? value, string what, string allowed) =>
        problems.Add(Line, names[column], value, what, allowed);

    /// <summary>Reads the header. False: it is unusable, and the problems say why.</summary>
    /// <param name="required">How many of the columns, from the first, have to be there.</param>
    public bool ReadHeader(int required)
    {
        if (!Next())
        {
            if (!problems.Any)
            {
                problems.Add("the file is empty", $"a header is needed: {string.Join(',', names)}");
            }

            return false;
        }

        headerCount = reader.FieldCount;
        return IsText() && FindColumns([.. Enumerable.Range(0, headerCount).Select(i => reader.GetString(i).Trim())], required);
    }

    /// <summary>Goes to the next row that holds anything in the columns read. False: there is none.</summary>
    public bool ReadRow()
    {
        while (Next())
        {
            if (++rows > CsvLimits.Rows)
            {
                problems.Add(Line, null, null, $"more than {CsvLimits.Rows} rows", "split the file");
                return false;
            }

            if (IsText() && IsWhole() && Holds())
            {
                return true;
            }
        }

        if (bytes.Count > CsvLimits.Bytes)
        {
            problems.Add($"the file is larger than {CsvLimits.Bytes >> 20} MiB", "split it");
        }

        return false;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        reader.Dispose();
        bytes.Dispose();
    }

    private bool Next()
    {
        isMalformed = false;
        try
        {
            return reader.Read();
        }
        catch (CsvFormatException tooLong)
        {
            long? line = tooLong.LineNumber > 0 ? tooLong.LineNumber : null;
            problems.Add(line, null, null, "a line, or a quoted text, of more than 1 MiB", "write one reading a line, and close every quote");
            return false;
        }
    }

    private void Malformed(CsvMalformedRecord record)
    {
        isMalformed = true;
        (string what, string allowed) = record.Reason switch
        {
            CsvMalformedReason.UnterminatedQuote => ("a quote is opened here and never closed", "close it with \""),
            CsvMalformedReason.TextAfterClosingQuote => ("text behind a closing quote", "quote the whole value, and write a quote inside it as \"\""),
            _ => ("a quote in the middle of a value", "quote the whole value, and write a quote inside it as \"\""),
        };
        problems.Add(record.LineNumber, null, null, what, allowed);
    }

    /// <summary>Quotes in order, and bytes that are text: no NUL, valid UTF-8, not endlessly many.</summary>
    private bool IsText()
    {
        if (isMalformed)
        {
            return false;
        }

        ReadOnlySpan<byte> raw = reader.RawRecord;
        (string What, string Allowed)? problem = raw switch
        {
            { Length: > CsvLimits.RecordBytes } => ("a line of more than 1 MiB", "write one reading a line"),
            _ when raw.Contains((byte)0) => ("a NUL byte: this is no text", "save the file as CSV in UTF-8"),
            _ when bytes.IsWide || !Utf8.IsValid(raw) => ("bytes that are no UTF-8", "save the file as CSV in UTF-8"),
            _ when reader.FieldCount > CsvLimits.Columns => ($"{reader.FieldCount} columns", $"at most {CsvLimits.Columns} are read"),
            _ => null,
        };
        if (problem is { } found)
        {
            problems.Add(Line, null, null, found.What, found.Allowed);
        }

        return problem is null;
    }

    private bool FindColumns(string[] header, int required)
    {
        bool good = true;
        for (int column = 0; column < names.Length; column++)
        {
            string name = names[column];
            places[column] = Array.FindIndex(header, text => IsName(text, name));
            if (header.Count(text => IsName(text, name)) > 1)
            {
                problems.Add(Line, name, null, "the header names this column twice", "name it once");
                good = false;
            }
            else if (places[column] < 0 && column < required)
            {
                problems.Add(Line, name, null, "the column is missing", Advice(header));
                good = false;
            }
        }

        return good;
    }

    private string Advice(string[] header) => header is [string only] && only.AsSpan().ContainsAny(';', '\t')
        ? "separate the columns by commas, and write numbers with a point"
        : $"the header names the columns: {string.Join(',', names)}";

    /// <summary>Every row has as many values as the header has names (RFC 4180, 2.4).</summary>
    private bool IsWhole()
    {
        if (reader.FieldCount == headerCount)
        {
            return true;
        }

        problems.Add(
            Line,
            null,
            null,
            $"{reader.FieldCount} values, but the header names {headerCount} columns",
            "quote a value that has a comma in it; leave empty what is unknown");
        return false;
    }

    /// <summary>Takes the texts out; false: all are empty, or they are the header once more.</summary>
    private bool Holds()
    {
        bool isEmpty = true;
        for (int column = 0; column < names.Length; column++)
        {
            texts[column] = places[column] < 0 ? "" : SpreadsheetText.Plain(reader.GetString(places[column]).Trim());
            isEmpty &= texts[column].Length == 0;
        }

        if (IsName(texts[0], names[0]) && IsName(texts[1], names[1]))
        {
            problems.Add(Line, null, null, "the header stands here again", "take this line out");
            return false;
        }

        return !isEmpty;
    }

    private static bool IsName(string text, string name) => text.Equals(name, StringComparison.OrdinalIgnoreCase);
}
