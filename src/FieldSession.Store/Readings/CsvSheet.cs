using System.Text;
using System.Text.Unicode;
using CsvHelper;
using FieldSession.Store.Exports;

namespace FieldSession.Store.Readings;

/// <summary>
/// A CSV file (RFC 4180, UTF-8, header required) read row by row, columns by name in any order and letter case, unknown columns passed
/// over.
/// What is wrong with the file as such (header, quotes, bytes, ragged rows, size) is told here; what a value may be is the reader's
/// business.
/// </summary>
internal sealed class CsvSheet : IDisposable
{
    private readonly CountedStream _bytes;
    private readonly CsvReader _reader;
    private readonly FileProblems _problems;
    private readonly string[] _names;
    private readonly int[] _places;
    private readonly string[] _texts;
    private bool _isMalformed;
    private int _headerCount;
    private int _rows;

    /// <summary>Opens a sheet; the stream is closed with it.</summary>
    /// <param name="stream">The file's bytes.</param>
    /// <param name="problems">Where problems go.</param>
    /// <param name="names">Every column that is read, required ones first.</param>
    public CsvSheet(Stream stream, FileProblems problems, IReadOnlyList<string> names)
    {
        _problems = problems;
        _names = [.. names];
        _places = new int[names.Count];
        _texts = new string[names.Count];
        _bytes = new CountedStream(stream);
        _reader = CsvReader.Create(
            _bytes,
            new CsvReaderOptions
            {
                // the header is read as the first row, so that its bytes can be looked at as well
                HasHeader = false,
                Separator = ',',
                Encoding = Encoding.UTF8,
                TrackLineNumbers = true,
                MaxRecordSize = CsvLimits.RecordBytes,
                PoolStrings = true,
                OnMalformedRecord = Malformed,
            }
        );
    }

    /// <summary>The line the current row begins on, from 1.</summary>
    public long Line => _reader.LineNumber;

    /// <summary>The text in a column of the current row, without blanks around it; empty where the file has no such column.</summary>
    public string this[int column] => _texts[column];

    /// <summary>Adds a problem of the current row.</summary>
    public void Problem(int column, string? value, string what, string allowed) =>
        _problems.Add(Line, _names[column], value, what, allowed);

    /// <summary>Reads the header. False: it is unusable, and the problems say why.</summary>
    /// <param name="required">How many of the columns, from the first, have to be there.</param>
    public bool ReadHeader(int required)
    {
        if (!Next())
        {
            if (!_problems.Any)
            {
                _problems.Add(ReadingsFileWords.FileIsEmpty, ReadingsFileWords.HeaderIsNeeded(string.Join(',', _names)));
            }

            return false;
        }

        _headerCount = _reader.FieldCount;
        return IsText() && FindColumns([.. Enumerable.Range(0, _headerCount).Select(i => _reader.GetString(i).Trim())], required);
    }

    /// <summary>Goes to the next row that holds anything in the columns read. False: there is none.</summary>
    public bool ReadRow()
    {
        while (Next())
        {
            if (++_rows > CsvLimits.Rows)
            {
                _problems.Add(Line, null, null, ReadingsFileWords.TooManyRows, ReadingsFileWords.SplitFile);
                return false;
            }

            if (IsText() && IsWhole() && Holds())
            {
                return true;
            }
        }

        if (_bytes.Count > CsvLimits.Bytes)
        {
            _problems.Add(ReadingsFileWords.FileIsTooLarge, "split it");
        }

        return false;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _reader.Dispose();
        _bytes.Dispose();
    }

    private bool Next()
    {
        _isMalformed = false;
        try
        {
            return _reader.Read();
        }
        catch (CsvFormatException tooLong)
        {
            long? line = tooLong.LineNumber > 0 ? tooLong.LineNumber : null;
            _problems.Add(line, null, null, ReadingsFileWords.LineOrQuotedTextIsTooLong, ReadingsFileWords.OneReadingALineClosedQuotes);
            return false;
        }
    }

    private void Malformed(CsvMalformedRecord record)
    {
        _isMalformed = true;
        (string what, string allowed) = record.Reason switch
        {
            CsvMalformedReason.UnterminatedQuote => (ReadingsFileWords.QuoteIsNeverClosed, ReadingsFileWords.CloseQuote),
            CsvMalformedReason.TextAfterClosingQuote => (ReadingsFileWords.TextBehindClosingQuote, ReadingsFileWords.QuoteWholeValue),
            _ => (ReadingsFileWords.QuoteInMiddleOfValue, ReadingsFileWords.QuoteWholeValue),
        };
        _problems.Add(record.LineNumber, null, null, what, allowed);
    }

    /// <summary>Quotes in order, and bytes that are text: no NUL, valid UTF-8, not endlessly many.</summary>
    private bool IsText()
    {
        if (_isMalformed)
        {
            return false;
        }

        ReadOnlySpan<byte> raw = _reader.RawRecord;
        (string What, string Allowed)? problem = raw switch
        {
            { Length: > CsvLimits.RecordBytes } => (ReadingsFileWords.LineIsTooLong, ReadingsFileWords.OneReadingALine),
            _ when raw.Contains((byte)0) => (ReadingsFileWords.NulByte, ReadingsFileWords.SaveAsCsv),
            _ when _bytes.IsWide || !Utf8.IsValid(raw) => (ReadingsFileWords.NoUtf8, ReadingsFileWords.SaveAsCsv),
            _ when _reader.FieldCount > CsvLimits.Columns => ($"{_reader.FieldCount} columns", ReadingsFileWords.AtMostColumnsAreRead),
            _ => null,
        };
        if (problem is { } found)
        {
            _problems.Add(Line, null, null, found.What, found.Allowed);
        }

        return problem is null;
    }

    private bool FindColumns(string[] header, int required)
    {
        bool good = true;
        for (int column = 0; column < _names.Length; column++)
        {
            string name = _names[column];
            _places[column] = Array.FindIndex(header, text => IsName(text, name));
            if (header.Count(text => IsName(text, name)) > 1)
            {
                _problems.Add(Line, name, null, ReadingsFileWords.ColumnIsThereTwice, ReadingsFileWords.NameColumnOnce);
                good = false;
            }
            else if (_places[column] < 0 && column < required)
            {
                _problems.Add(Line, name, null, ReadingsFileWords.ColumnIsMissing, Advice(header));
                good = false;
            }
        }

        return good;
    }

    private string Advice(string[] header) =>
        header is [string only] && only.AsSpan().ContainsAny(';', '\t')
            ? ReadingsFileWords.SeparateByCommas
            : ReadingsFileWords.HeaderForm(string.Join(',', _names));

    /// <summary>Every row has as many values as the header has names (RFC 4180, 2.4).</summary>
    private bool IsWhole()
    {
        if (_reader.FieldCount == _headerCount)
        {
            return true;
        }

        _problems.Add(
            Line,
            null,
            null,
            ReadingsFileWords.RowIsRagged(_reader.FieldCount, _headerCount),
            ReadingsFileWords.QuoteValueWithComma
        );
        return false;
    }

    /// <summary>Takes the texts out; false: all are empty, or they are the header once more.</summary>
    private bool Holds()
    {
        bool isEmpty = true;
        for (int column = 0; column < _names.Length; column++)
        {
            _texts[column] = _places[column] < 0 ? "" : SpreadsheetText.Plain(_reader.GetString(_places[column]).Trim());
            isEmpty &= _texts[column].Length == 0;
        }

        if (IsName(_texts[0], _names[0]) && IsName(_texts[1], _names[1]))
        {
            _problems.Add(Line, null, null, ReadingsFileWords.HeaderIsRepeated, ReadingsFileWords.TakeLineOut);
            return false;
        }

        return !isEmpty;
    }

    private static bool IsName(string text, string name) => text.Equals(name, StringComparison.OrdinalIgnoreCase);
}
