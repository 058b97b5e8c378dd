using System.Text;
using FieldSession.Archiving;
using FieldSession.State;
using FieldSession.Store.Readings;

namespace FieldSession.Tests.Readings;

public class ArchiveCsvTests
{
    private const string Header = "day,cls,S,nu_run,s_run,kbar,nu_e,s_e";

    [Fact]
    public void The_archive_of_the_reference_case_reads_line_by_line()
    {
        IReadOnlyList<ArchiveRow> lines = ArchiveCsv
            .Read(Path.Combine(AppContext.BaseDirectory, "References", "cases", "06-aba-archive", "archive.csv"))
            .Content!;

        Assert.Equal(15, lines.Count);
        Assert.Equal(new ArchiveRow(new EarlierScatter("1", "all", 1, 0.41, 0.1, 9, 0.72)), lines[0]);
        Assert.Equal(new ArchiveRow(new EarlierScatter("5", "impact", 1, 0.35, 0.5, 1, 0.95)), lines[14]);
    }

    [Fact]
    public void A_scatter_without_degrees_of_freedom_is_unknown() =>
        Assert.Equal(
            new ArchiveRow(new EarlierScatter("1", "impact", 0, null, 1, 0, null)),
            Assert.Single(Read(Header, "1,impact,1,0,NA,1,0,").Content!)
        );

    [Theory]
    [InlineData("1,loud,8,1,0.4,0.1,9,0.7", "column 'cls': 'loud': no class")]
    [InlineData(",all,8,1,0.4,0.1,9,0.7", "column 'day': '': no day")]
    [InlineData("1,all,8,1,NA,0.1,9,0.7", "column 's_run': 'NA': no number")]
    [InlineData("1,all,8,1,-0.4,0.1,9,0.7", "column 's_run': '-0.4': below 0")]
    [InlineData("1,all,8,1,0.4,x,9,0.7", "column 'kbar': 'x': no number")]
    [InlineData("1,all,8,1,0.4,0.1,9,", "column 's_e': '': no number")]
    public void A_value_that_can_not_be_is_refused(string row, string expected) =>
        Assert.Contains($"archive.csv, line 2, {expected}", Assert.Single(Read(Header, row).ProblemLines()));

    [Fact]
    public void A_day_has_one_line_a_class() =>
        Assert.Contains(
            "line 3, column 'day': '1': this day has a line for all already",
            Assert.Single(Read(Header, "1,all,8,1,0.4,0.1,9,0.7", "1,all,8,1,0.4,0.1,9,0.7").ProblemLines())
        );

    [Fact]
    public void An_archive_without_a_day_is_refused() =>
        Assert.Contains("no day below the header", Assert.Single(Read(Header).ProblemLines()));

    private static FileRead<IReadOnlyList<ArchiveRow>> Read(params string[] lines) =>
        ArchiveCsv.Read(new MemoryStream(Encoding.UTF8.GetBytes(string.Join('\n', lines))), "archive.csv");
}
