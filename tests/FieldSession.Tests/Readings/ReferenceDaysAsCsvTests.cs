using System.Text;
using FieldSession.Comparing;
using FieldSession.Store.Readings;
using FieldSession.Tests.References;

namespace FieldSession.Tests.Readings;

/// <summary>The days of the reference cases, read through the CSV reader; sources: SOURCE.md beside each case.</summary>
public class ReferenceDaysAsCsvTests
{
    [Theory]
    [InlineData("01-aba-wholedB")]
    [InlineData("02-abba-classes")]
    [InlineData("03-abab-missing")]
    [InlineData("04-ababab-drift")]
    [InlineData("05-abba-floor")]
    [InlineData("06-aba-archive")]
    [InlineData("07-three-codes")]
    [InlineData("08-two-cars")]
    [InlineData("09-filter-noise")]
    [InlineData("22-quillmere")]
    [InlineData("23-dunmarrow")]
    public void A_reference_day_reads_as_the_readings_it_holds(string name) =>
        Assert.Equal(CaseDay.Of(ReferenceCase.Open(name)).Levels, Read(name).Levels);

    [Theory]
    [InlineData("01-aba-wholedB", "B")]
    [InlineData("02-abba-classes", "B")]
    [InlineData("05-abba-floor", "B")]
    [InlineData("08-two-cars", "B")]
    public void A_reference_day_read_as_csv_compares_as_expected(string name, string reference)
    {
        Comparison comparison = Comparison.Of(Read(name), new ComparisonTerms(reference, 1, 1));

        Dictionary<string, object?> found = FoundNumbers.Of(comparison.Comparisons.Single().Classes);
        int rows = ReferenceCase.Open(name).Check(found, leaveOut: quantity => !found.ContainsKey(quantity));
        Assert.True(rows > 100, $"only {rows} rows were held against the reference");
    }

    private static MeasuredDay Read(string name)
    {
        string path = Path.Combine(AppContext.BaseDirectory, "References", "cases", name, "data.csv");
        string[] lines = File.ReadAllLines(path);
        string header = string.Join(',', lines[0].Split(',').Select(column => column switch
        {
            "t" => "minutes",
            "cls" => "class",
            "excluded" => "spoilt",
            _ => column,
        }));
        byte[] bytes = Encoding.UTF8.GetBytes(string.Join('\n', [header, .. lines.Skip(1)]));
        FileRead<MeasuredDay> read = ReadingsCsv.Read(new MemoryStream(bytes), name);
        Assert.True(read.Content is not null, string.Join('\n', read.ProblemLines()));
        return read.Content;
    }
}
