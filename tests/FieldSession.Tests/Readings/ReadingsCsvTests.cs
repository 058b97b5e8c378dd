using System.Text;
using FieldSession.Comparing;
using FieldSession.Store.Readings;

namespace FieldSession.Tests.Readings;

public class ReadingsCsvTests
{
    [Fact]
    public void A_row_becomes_a_reading()
    {
        MeasuredLevel level = Assert.Single(CsvText.Day(CsvText.Header, "1,417,Mill lane,smooth,58.5,60,").Levels);

        Assert.Equal(new MeasuredLevel(1, "417", "Mill lane", "smooth", MeasureClass.Steady, 58.5, 60), level);
    }

    [Fact]
    public void Columns_come_in_any_order_and_letter_case_and_others_are_passed_over()
    {
        MeasuredLevel level = Assert.Single(
            CsvText
                .Day(
                    "NOTE,High,low,spoilt,segment,Kind,Code,RUN,minutes,car,slot,session",
                    "\"two lorries, close\",60,58,t,Mill lane,smooth,417,3,35.5,blue,2,morning"
                )
                .Levels
        );

        Assert.Equal(
            new MeasuredLevel(3, "417", "Mill lane", "smooth", MeasureClass.Steady, 58, 60, true, "traffic", 35.5, "blue", "2", "morning"),
            level
        );
    }

    [Fact]
    public void One_value_may_are_in_high_alone()
    {
        MeasuredLevel level = Assert.Single(CsvText.Day(CsvText.Header, "1,417,Bridge joint,impact,,71.4,").Levels);

        Assert.Equal((71.4, 71.4, MeasureClass.Impact), (level.LowDb, level.HighDb, level.Class));
    }

    [Theory]
    [InlineData("", false, null)]
    [InlineData("0", false, null)]
    [InlineData("No", false, null)]
    [InlineData("false", false, null)]
    [InlineData("1", true, null)]
    [InlineData("Y", true, null)]
    [InlineData("yes", true, null)]
    [InlineData("t", true, "traffic")]
    [InlineData("W", true, "wind")]
    [InlineData("s", true, "speed")]
    [InlineData("r", true, "road")]
    [InlineData("n", true, "noise")]
    [InlineData("e", true, "entry")]
    [InlineData("Traffic", true, "traffic")]
    [InlineData("noise inside", true, "noise")]
    [InlineData("a tractor", true, "a tractor")]
    public void Spoilt_says_whether_a_reading_counts_and_why(string text, bool isSpoilt, string? cause)
    {
        MeasuredLevel level = Assert.Single(CsvText.Day(CsvText.Header, $"1,417,Mill lane,smooth,58,60,{text}").Levels);

        Assert.Equal((isSpoilt, cause), (level.Spoilt, level.Cause));
    }

    [Theory]
    [InlineData("kerb", "impact", MeasureClass.Impact)]
    [InlineData("kerb", "", MeasureClass.Steady)]
    [InlineData("impact", "", MeasureClass.Impact)]
    [InlineData("IMPACT", "Impact", MeasureClass.Impact)]
    [InlineData("smooth", "steady", MeasureClass.Steady)]
    public void The_class_is_said_by_its_column_or_else_by_the_kind(string kind, string said, MeasureClass expected)
    {
        MeasuredDay day = CsvText.Day(CsvText.Header + ",class", $"1,417,A,{kind},58,60,,{said}");

        Assert.Equal(expected, Assert.Single(day.Levels).Class);
    }

    [Fact]
    public void A_byte_order_mark_carriage_returns_empty_lines_and_a_missing_last_line_break_do_no_harm()
    {
        byte[] bytes =
        [
            0xEF,
            0xBB,
            0xBF,
            .. Encoding.UTF8.GetBytes(
                CsvText.Header + "\r\n1,417,Überführung,rough,58,60,\r\n\r\n,,,,,,\r\n2,862,Überführung,rough,59,61,"
            ),
        ];

        MeasuredDay day = CsvText.ReadBytes(bytes).Content!;

        Assert.Equal(["Überführung", "Überführung"], day.Levels.Select(level => level.Segment));
    }

    [Fact]
    public void A_row_with_neither_low_nor_high_is_a_missed_reading()
    {
        MeasuredDay day = CsvText.Day(CsvText.Header, "1,417,A,smooth,58,60,", "1,417,B,smooth,,,");

        Assert.Equal((1, 1), (day.Levels.Count, day.Missed));
        Assert.Equal(["A", "B"], day.Planned!.Select(segment => segment.Segment));
    }

    [Fact]
    public void Several_rows_of_one_run_and_segment_are_several_readings()
    {
        MeasuredDay day = CsvText.Day(CsvText.Header, "1,417,A,smooth,58,60,", "1,417,A,smooth,59,61,t");

        Assert.Equal([59.0, 60.0], day.Levels.Select(level => level.LevelDb));
    }

    [Fact]
    public void Many_rows_share_their_names()
    {
        MeasuredDay day = CsvText.Day(CsvText.Header, "1,417,A,smooth,58,60,a tractor", "1,417,A,smooth,59,61,a tractor");

        Assert.Same(day.Levels[0].Code, day.Levels[1].Code);
        Assert.Same(day.Levels[0].Segment, day.Levels[1].Segment);
        Assert.Same(day.Levels[0].Kind, day.Levels[1].Kind);
        Assert.Same(day.Levels[0].Cause, day.Levels[1].Cause);
    }

    [Fact]
    public void A_quoted_value_may_hold_commas_quotes_and_line_breaks()
    {
        MeasuredDay day = CsvText.Day(
            CsvText.Header + ",note",
            "1,417,\"Mill lane, \"\"upper\"\"\",smooth,58,60,,\"a\nb\"",
            "2,862,C,smooth,58,60,,"
        );

        Assert.Equal(["Mill lane, \"upper\"", "C"], day.Levels.Select(level => level.Segment));
    }

    [Fact]
    public void A_study_file_is_told_from_a_csv_without_the_ending()
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        string text = Path.Combine(folder, "readings");
        string binary = Path.Combine(folder, "study");
        File.WriteAllText(text, CsvText.Header);
        File.WriteAllBytes(binary, [1, 0, 2]);

        Assert.True(ReadingsSource.IsCsv(text));
        Assert.False(ReadingsSource.IsCsv(binary));
        Directory.Delete(folder, recursive: true);
    }
}
