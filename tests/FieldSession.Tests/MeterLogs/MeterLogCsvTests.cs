using System.Globalization;
using System.Text;
using FieldSession.Store.MeterLogs;
using FieldSession.Store.Readings;
using FieldSession.Tests.References;

namespace FieldSession.Tests.MeterLogs;

/// <summary>The same levels in several dialects of CSV (case R10-log-dialects); no product's own format.</summary>
public class MeterLogCsvTests
{
    private static readonly RecordingCase Case = RecordingCase.Open("R10-log-dialects");
    private static readonly MeterLogTerms Plus1 = new(Zone: TimeSpan.FromHours(1));

    [Theory]
    [InlineData("a-iso.csv", false)]
    [InlineData("b-semicolon.csv", true)]
    [InlineData("c-preamble.csv", true)]
    [InlineData("f-latin1.csv", true)]
    [InlineData("g-two-levels.csv", true)]
    public void Every_dialect_gives_the_same_series_and_says_which_columns_it_took(string file, bool needsZone)
    {
        MeterLog log = Taken(file, needsZone ? Plus1 : new());
        HoldsSeries(log);
        Assert.Equal(Case.Text($"{file}.map"), log.Columns);
        Assert.Empty(log.Remarks);
    }

    [Fact]
    public void Slashed_dates_are_asked_about_and_then_read()
    {
        Assert.Contains("--dates mdy", Refused("d-tab-us.txt", Plus1), StringComparison.Ordinal);
        HoldsSeries(Taken("d-tab-us.txt", Plus1 with { DayFirst = false }));
        Assert.Equal(new DateTime(2026, 3, 2), Taken("d-tab-us.txt", Plus1 with { DayFirst = true }).BegunAt!.Value.Date);
        Assert.Equal("refused", Case.Text("h-ambiguous.csv"));
        Assert.Contains("--dates dmy or --dates mdy", Refused("h-ambiguous.csv", Plus1), StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_above_12_proves_the_order_of_dates()
    {
        MeterLog log = Of("Date,Time,dB\n2/13/2026,10:00:00,54\n2/13/2026,10:00:01,55\n", Plus1).Content!;
        Assert.Equal(new DateTime(2026, 2, 13), log.BegunAt!.Value.Date);
    }

    [Fact]
    public void Elapsed_time_has_no_start_unless_it_is_told()
    {
        MeterLog log = Taken("e-elapsed.csv", new());
        Assert.Null(log.BegunAt);
        Assert.Equal([0, 1, 2, 3, 4, 5], log.Lines.Select(line => line.AtS));
        HoldsSeries(Taken("e-elapsed.csv", new(Start: new(2026, 2, 3, 10, 15, 20, TimeSpan.FromHours(1)))));
    }

    [Fact]
    public void What_holds_no_level_is_no_value_and_never_0()
    {
        MeterLog log = Taken("i-gap.csv", Plus1);
        Case.Holds("i-gap.csv.values", log.Lines.Count(line => line.LevelDb is not null));
        Assert.Contains("no level in line 5", log.Remarks);
    }

    [Fact]
    public void A_log_that_goes_back_in_time_is_refused_with_the_line()
    {
        Assert.Equal("refused", Case.Text("j-back.csv"));
        Assert.Contains("line 5", Refused("j-back.csv", Plus1), StringComparison.Ordinal);
        Assert.Contains("the time goes back", Refused("j-back.csv", Plus1), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("time,LAeq\n2026-02-03 10:15:20,54\n2026-02-03 10:15:21,55\n", "--zone")]
    [InlineData("time,LAeq\n10:15:20,54\n10:15:21,55\n", "--start")]
    [InlineData("time,LAF,LAS\n2026-02-03 10:15:20,54,54\n", "'LAF', 'LAS': two columns may hold it; choose with --level")]
    [InlineData("time,x,y\n2026-02-03 10:15:20,54,54\n", "no line of it names a time and a level")]
    [InlineData("time,LAeq\nsoon,54\nlater,55\n", "'soon': no time")]
    [InlineData("time,LAeq\n2026-02-03 10:15:20,1054\n2026-02-03 10:15:21,55\n", "line 2, column 'LAeq': '1054'")]
    [InlineData("time,LAeq\n2026-02-03 10:15:20,-\n2026-02-03 10:15:21,\n", "has no level")]
    [InlineData("time,LAeq\n", "fewer than two lines")]
    [InlineData("", "no line of it names")]
    public void What_can_t_be_read_in_one_way_says_what_to_give(string text, string told)
    {
        bool isAboutZone = told is "--zone" or "--start";
        Assert.Contains(told, string.Join('\n', Of(text, isAboutZone ? new() : Plus1).ProblemLines()), StringComparison.Ordinal);
    }

    [Fact]
    public void Columns_can_be_chosen_by_name()
    {
        string text = "clock;weather;LAF;LAS\n2026-02-03 10:15:20;54,0;61,0;60,5\n2026-02-03 10:15:21;54,1;61,2;60,6\n";
        MeterLog log = Of(text, Plus1 with { TimeColumn = "Clock", LevelColumn = "las" }).Content!;
        Assert.Equal("clock:LAS", log.Columns);
        Assert.Equal([60.5, 60.6], log.Lines.Select(line => line.LevelDb));
        Assert.Contains(
            "there is no such column",
            string.Join('\n', Of(text, Plus1 with { TimeColumn = "clock", DateColumn = "day", LevelColumn = "las" }).ProblemLines()),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Gaps_and_words_in_place_of_levels_are_told()
    {
        MeterLog log = Of(
            "time,LAeq\n2026-02-03 10:00:00,54\n2026-02-03 10:00:01,OVER\n2026-02-03 10:00:02,54\n2026-02-03 10:00:09,54\n",
            Plus1
        ).Content!;
        Assert.Equal(["'OVER' instead of a level in line 3", "a gap of 7 s before line 5"], log.Remarks.ToArray());
        Assert.Equal(1, log.StepS);
    }

    private static void HoldsSeries(MeterLog log)
    {
        Assert.Equal(6, log.Lines.Length);
        for (int i = 0; i < 6; i++)
        {
            Assert.Equal(
                DateTimeOffset.Parse(Case.Text($"series.{i}.utc"), CultureInfo.InvariantCulture),
                log.BegunAt!.Value.AddSeconds(log.Lines[i].AtS)
            );
            Case.Holds($"series.{i}.laeq", log.Lines[i].LevelDb);
        }
    }

    private static MeterLog Taken(string file, MeterLogTerms terms)
    {
        FileRead<MeterLog> read = MeterLogCsv.Read(Case.PathOf(file), terms);
        Assert.True(read.Content is not null, string.Join('\n', read.ProblemLines()));
        return read.Content;
    }

    private static string Refused(string file, MeterLogTerms terms)
    {
        FileRead<MeterLog> read = MeterLogCsv.Read(Case.PathOf(file), terms);
        Assert.Null(read.Content);
        return string.Join('\n', read.ProblemLines());
    }

    private static FileRead<MeterLog> Of(string text, MeterLogTerms terms)
    {
        using MemoryStream stream = new(Encoding.UTF8.GetBytes(text));
        return MeterLogCsv.Read(stream, "log.csv", terms);
    }
}
