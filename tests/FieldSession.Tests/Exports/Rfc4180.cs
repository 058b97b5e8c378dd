using System.Text;

namespace FieldSession.Tests.Exports;

/// <summary>A reader of CSV written after the grammar of RFC 4180, section 2, and nothing else; independent of the program's own.</summary>
internal static class Rfc4180
{
    /// <summary>The records of a file; every line must end with CR LF, every record have as many fields as the first.</summary>
    public static List<string[]> Read(string text)
    {
        List<string[]> records = [];
        int at = 0;
        while (at < text.Length)
        {
            List<string> record = [];
            do
            {
                record.Add(Field(text, ref at));
            } while (Taken(text, ref at, ","));

            Assert.True(Taken(text, ref at, "\r\n"), $"record {records.Count + 1} does not end with CR LF");
            records.Add([.. record]);
        }

        Assert.All(records, record => Assert.Equal(records[0].Length, record.Length));
        return records;
    }

    /// <summary>The rows below the header, each as column name to cell.</summary>
    public static List<Dictionary<string, string>> Rows(string text)
    {
        List<string[]> records = Read(text);
        return [.. records.Skip(1).Select(record => records[0].Zip(record).ToDictionary(cell => cell.First, cell => cell.Second))];
    }

    private static string Field(string text, ref int at)
    {
        if (!Taken(text, ref at, "\""))
        {
            int start = at;
            while (text[at] is not (',' or '\r' or '\n' or '"'))
            {
                at++;
            }

            return text[start..at];
        }

        StringBuilder field = new();
        while (!Taken(text, ref at, "\"") || text[at] == '"')
        {
            field.Append(text[at++]);
        }

        return field.ToString();
    }

    private static bool Taken(string text, ref int at, string wanted)
    {
        bool isThere = string.CompareOrdinal(text, at, wanted, 0, wanted.Length) == 0;
        at += isThere ? wanted.Length : 0;
        return isThere;
    }
}
