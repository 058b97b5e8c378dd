using System.Text;
using FieldSession.Comparing;
using FieldSession.Store.Readings;

namespace FieldSession.Tests.Readings;

/// <summary>Readings CSVs as a test writes them.</summary>
internal static class CsvText
{
    public const string Header = "run,code,segment,kind,low,high,spoilt";

    public static FileRead<MeasuredDay> Read(params string[] lines) => ReadBytes(Encoding.UTF8.GetBytes(string.Join('\n', lines) + "\n"));

    public static FileRead<MeasuredDay> ReadBytes(byte[] bytes) => ReadingsCsv.Read(new MemoryStream(bytes), "day.csv");

    public static MeasuredDay Day(params string[] lines)
    {
        FileRead<MeasuredDay> read = Read(lines);
        Assert.True(read.Content is not null, string.Join('\n', read.ProblemLines()));
        return read.Content;
    }

    /// <summary>The one problem of a file with one row that is wrong below the header.</summary>
    public static string Problem(params string[] lines)
    {
        FileRead<MeasuredDay> read = Read(lines);
        Assert.Null(read.Content);
        return Assert.Single(read.ProblemLines());
    }
}
