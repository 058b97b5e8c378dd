using System.Globalization;
using FieldSession.Comparing;
using FieldSession.Store.Exports;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Exports;

public sealed class ExportedReadingsCompareTheSameTests
{
    [Fact]
    public void The_demo_day_exported_compares_as_the_study_itself()
    {
        using ExportedDay exported = new(ExportedDay.Demo());
        Assert.Equal(exported.StudyCompared(), exported.CsvCompared());
        Assert.Equal(exported.StudyComparedWithItsVerdicts().Trim(), exported.Text("comparison.json").Trim());
    }

    [Fact]
    public void So_does_a_day_with_a_void_session_late_flags_gaps_and_segments_read_twice_or_out_of_order()
    {
        using ExportedDay exported = new(ExportedDay.Untidy());
        ReadingCounts counts = ExportSource.Of(exported.Day.Book).Comparison.Readings;
        Assert.Equal(3, counts.Missed);
        Assert.Equal(["entry", "noise", "traffic", "void session"], counts.ByCause.Keys);
        Assert.Equal(exported.StudyCompared(), exported.CsvCompared());
    }

    [Fact]
    public void The_columns_that_compare_reads_are_first()
    {
        using ExportedDay exported = new(ExportedDay.Demo());
        Assert.StartsWith(
            "run,code,segment,kind,low,high,spoilt,minutes,seconds,class,session,note,",
            exported.Text("readings.csv"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Another_reader_finds_the_same_counts_and_sums_as_the_study_has()
    {
        using ExportedDay exported = new(ExportedDay.Demo());
        List<Dictionary<string, string>> rows = exported.Rows("readings");
        double[] middles = [.. rows.Select(row => (Number(row["low"]) + Number(row["high"])) / 2)];
        double[] inStudy = [.. exported.Day.Study.Runs.SelectMany(run => run.Readings).Select(reading => reading.Levels.MidpointDb)];
        Assert.Equal(99, rows.Count);
        Assert.Equal(11, rows.Count(row => row["spoilt"] == "traffic"));
        Assert.Equal(inStudy.Sum(), middles.Sum(), 9);
        Assert.Equal(
            (11, 9, 1, 2),
            (exported.Rows("segments").Count, exported.Rows("runs").Count, exported.Rows("sessions").Count, exported.Rows("codes").Count)
        );
        Assert.Equal(exported.Day.Study.Notes.Count, exported.Rows("notes").Count);
        Assert.Equal(
            exported.Day.Study.Weather.Sum(weather => weather.Air!.Value.Celsius),
            exported.Rows("weather").Sum(row => Number(row["air_c"])),
            9
        );
    }

    [Fact]
    public void A_late_flag_is_in_its_own_columns_and_spoils_nothing()
    {
        using ExportedDay exported = new(new ADay().Ready().Typed("run 417", "5860", "6365", "flag 1.1 w a gust"));
        Dictionary<string, string> late = exported.Rows("readings")[0];
        Assert.Equal(("", "wind", "a gust", "true"), (late["spoilt"], late["flag"], late["flag_words"], late["flag_late"]));
    }

    [Fact]
    public void A_missed_reading_is_a_row_with_empty_levels_and_unknown_is_empty_everywhere()
    {
        using ExportedDay exported = new(new ADay().Ready().Typed("run 417", "5860", "m", "end"));
        List<Dictionary<string, string>> rows = exported.Rows("readings");
        Assert.Equal(["58", "", ""], rows.Select(row => row["low"]));
        Assert.Equal(["60", "", ""], rows.Select(row => row["high"]));
        Assert.NotEqual("", rows[1]["line"]);
        Assert.Equal("", rows[2]["line"]);
        Assert.Equal("", exported.Rows("sessions")[0]["drift_db"]);
        Assert.All(
            exported.Names.Where(name => name.EndsWith(".csv", StringComparison.Ordinal)),
            name => Assert.DoesNotContain("NaN", exported.Text(name), StringComparison.Ordinal)
        );
    }

    [Fact]
    public void What_has_not_been_reached_in_a_run_that_is_on_is_not_missed()
    {
        using ExportedDay exported = new(new ADay().Ready().Typed("run 417", "5860"));
        Assert.Single(exported.Rows("readings"));
    }

    [Fact]
    public void A_study_without_anything_but_a_plan_can_be_exported()
    {
        using ExportedDay exported = new(new ADay(isSealed: false));
        Assert.Empty(exported.Rows("readings"));
        Assert.Equal(3, exported.Rows("segments").Count);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
