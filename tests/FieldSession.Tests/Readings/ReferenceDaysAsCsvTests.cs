using FieldSession.Tests.References;

namespace FieldSession.Tests.Readings;

/// <summary>
/// The days of the reference cases, read through the CSV reader; sources: SOURCE.md beside each case. That they compare as expected is held
/// where the days themselves are.
/// </summary>
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
    [InlineData("21-tiny-designs")]
    [InlineData("22-quillmere")]
    [InlineData("23-dunmarrow")]
    public void A_reference_day_reads_as_the_readings_it_holds(string name)
    {
        ReferenceCase reference = ReferenceCase.Open(name);
        Assert.Equal(CaseDay.Of(reference).Levels, CaseDay.ThroughCsv(reference).Levels);
    }
}
