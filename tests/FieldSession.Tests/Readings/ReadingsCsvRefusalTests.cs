using System.Text;
using FieldSession.Comparing;
using FieldSession.Store.Readings;

namespace FieldSession.Tests.Readings;

public class ReadingsCsvRefusalTests
{
    private const string Good = "1,417,A,smooth,58,60,";

    [Theory]
    [InlineData("1,417,A,smooth,NaN,60,", "column 'low': 'NaN': no number")]
    [InlineData("1,417,A,smooth,58,Infinity,", "column 'high': 'Infinity': no number")]
    [InlineData("1,417,A,smooth,58,1e999,", "column 'high': '1e999': no number")]
    [InlineData("1,417,A,smooth,58,6o,", "column 'high': '6o': no number")]
    [InlineData("1,417,A,smooth,58,\"60,5\",", "column 'high': '60,5': a number with a comma")]
    [InlineData("1,417,A,smooth,58,584,", "column 'high': '584': not a level that a meter shows")]
    [InlineData("1,417,A,smooth,-3,60,", "column 'low': '-3': not a level that a meter shows")]
    [InlineData("1,417,A,smooth,61,60,", "column 'low': '61': low is above high (60)")]
    [InlineData("1,417,A,smooth,58,,", "column 'high': '': low is given without high")]
    [InlineData("0,417,A,smooth,58,60,", "column 'run': '0': no whole number from 1")]
    [InlineData("1.5,417,A,smooth,58,60,", "column 'run': '1.5': no whole number from 1")]
    [InlineData(",417,A,smooth,58,60,", "column 'run': '': no run")]
    [InlineData("1,,A,smooth,58,60,", "column 'code': '': no code")]
    [InlineData("1,417,,smooth,58,60,", "column 'segment': '': no segment")]
    [InlineData("1,417,A,,58,60,", "column 'kind': '': no kind")]
    [InlineData("1,417,A,smooth,58,60,?", "column 'spoilt': '?': unclear whether the reading counts")]
    [InlineData("1,417,A,smooth,58,60,none", "column 'spoilt': 'none': unclear whether the reading counts")]
    [InlineData("1,417,A,smooth,58,60,q", "column 'spoilt': 'q': unclear whether the reading counts")]
    [InlineData("1,417,A\u001b[2J,smooth,58,60,", "column 'segment': 'A?[2J': no name")]
    [InlineData("1,417,A,smooth,58,60", "6 values, but the header names 7 columns")]
    [InlineData("1,417,A,smooth,58,60,,", "8 values, but the header names 7 columns")]
    [InlineData("run,code,segment,kind,low,high,spoilt", "the header is here a second time")]
    [InlineData("1,417,A\",smooth,58,60,", "a quote in the middle of a value")]
    [InlineData("1,417,\"A\"x,smooth,58,60,", "text after a closing quote")]
    [InlineData("1,417,\"A,smooth,58,60,", "a quote is opened here and never closed")]
    [InlineData("1,417,A\0,smooth,58,60,", "a NUL byte")]
    public void A_value_that_can_not_be_is_refused_with_its_line_and_column(string row, string expected)
    {
        string problem = CsvText.Problem(CsvText.Header, Good, row);

        Assert.StartsWith("day.csv, line 3", problem);
        Assert.Contains(expected, problem);
    }

    [Theory]
    [InlineData("minutes", "soon", "column 'minutes': 'soon': no number")]
    [InlineData("minutes", "-1", "column 'minutes': '-1': out of range")]
    [InlineData("minutes", "NaN", "column 'minutes': 'NaN': no number")]
    [InlineData("class", "loud", "column 'class': 'loud': no class")]
    [InlineData("seconds", "0", "column 'seconds': '0': out of range")]
    [InlineData("seconds", "long", "column 'seconds': 'long': no number")]
    public void An_optional_value_that_can_not_be_is_refused(string column, string value, string expected) =>
        Assert.Contains(expected, CsvText.Problem(CsvText.Header + "," + column, Good + "," + value));

    [Fact]
    public void An_impact_can_not_be_called_steady() =>
        Assert.Contains(
            "'steady': the kind impact is read as a peak",
            CsvText.Problem(CsvText.Header + ",class", "1,417,A,impact,58,60,,steady")
        );

    [Theory]
    [InlineData("1,862,A,smooth,58,60,,0,blue,1,am", "column 'code': '862': run 1 has 417 here on line 2; one code a run")]
    [InlineData("1,417,A,smooth,58,60,,5,blue,1,am", "column 'minutes': '5': run 1 has 0 here on line 2")]
    [InlineData("1,417,A,smooth,58,60,,,blue,1,am", "column 'minutes': '': run 1 has 0 here on line 2")]
    [InlineData("1,417,A,smooth,58,60,,0,red,1,am", "column 'car': 'red': run 1 has blue here on line 2")]
    [InlineData("1,417,A,smooth,58,60,,0,blue,2,am", "column 'slot': '2': run 1 has 1 here on line 2")]
    [InlineData("1,417,A,smooth,58,60,,0,blue,1,pm", "column 'session': 'pm': run 1 has am here on line 2")]
    [InlineData(
        "2,417,A,coarse,58,60,,0,blue,1,am",
        "column 'kind': 'coarse': segment A has the kind smooth on line 2; one kind a segment"
    )]
    public void A_run_and_a_segment_say_the_same_on_every_row(string row, string expected) =>
        Assert.Contains(expected, CsvText.Problem(CsvText.Header + ",minutes,car,slot,session", "1,417,A,smooth,58,60,,0,blue,1,am", row));

    [Fact]
    public void A_segment_lasts_as_long_on_every_row() =>
        Assert.Contains(
            "column 'seconds': '9': segment A has '8' here on line 2; one duration a segment",
            CsvText.Problem(CsvText.Header + ",seconds", "1,417,A,smooth,58,60,,8", "2,417,A,smooth,58,60,,9")
        );

    [Fact]
    public void A_file_of_more_than_five_million_rows_is_a_clear_no()
    {
        byte[] rows =
        [
            .. Encoding.UTF8.GetBytes(CsvText.Header + "\n" + Good),
            .. Enumerable.Repeat("\n,,,,,,", CsvLimits.Rows).SelectMany(row => Encoding.UTF8.GetBytes(row)),
        ];

        Assert.Contains("line 5000002: more than 5000000 rows; split the file", Assert.Single(CsvText.ReadBytes(rows).ProblemLines()));
    }

    [Fact]
    public void A_segment_has_one_class() =>
        Assert.Contains(
            "column 'class': 'impact': segment A is steady on line 2; one class a segment",
            CsvText.Problem(CsvText.Header + ",class", "1,417,A,kerb,58,60,,steady", "2,417,A,kerb,58,60,,impact")
        );

    [Theory]
    [InlineData("", "the file is empty")]
    [InlineData("run,code,segment,kind,low,high,spoilt\n", "no reading below the header")]
    [InlineData("run,code,segment,kind,low,high,spoilt\n1,417,A,smooth,,,\n", "no reading below the header")]
    [InlineData("run,code,segment,kind,low,high\n", "column 'spoilt': the column is missing")]
    [InlineData("run,code,segment,kind,low,high,spoilt,Code \n", "column 'code': the header names this column twice")]
    public void A_file_without_what_is_needed_is_refused(string text, string expected)
    {
        FileRead<MeasuredDay> read = CsvText.ReadBytes(Encoding.UTF8.GetBytes(text));

        Assert.Null(read.Content);
        Assert.Contains(expected, Assert.Single(read.ProblemLines()));
    }

    [Fact]
    public void Semicolons_are_told_to_become_commas()
    {
        FileRead<MeasuredDay> read = CsvText.Read("run;code;segment;kind;low;high;spoilt", "1;417;A;smooth;58,4;60;");

        Assert.Equal(7, read.Problems.Count);
        Assert.Contains("separate the columns by commas", read.Problems[0].ToString());
    }

    [Fact]
    public void Bytes_that_are_no_utf8_are_refused_with_their_line()
    {
        FileRead<MeasuredDay> read = CsvText.ReadBytes([
            .. Encoding.UTF8.GetBytes(CsvText.Header + "\n" + Good + "\n1,417,"),
            0xE4,
            .. Encoding.UTF8.GetBytes(",smooth,58,60,\n"),
        ]);

        Assert.Contains("day.csv, line 3: bytes that are not UTF-8", Assert.Single(read.ProblemLines()));
    }

    [Fact]
    public void A_file_in_utf16_is_refused()
    {
        FileRead<MeasuredDay> read = CsvText.ReadBytes([
            .. Encoding.Unicode.GetPreamble(),
            .. Encoding.Unicode.GetBytes(CsvText.Header + "\n" + Good + "\n"),
        ]);

        Assert.Null(read.Content);
    }

    [Theory]
    [InlineData(2_000_000, "more than 1 MiB")]
    [InlineData(1_100_000, "more than 1 MiB")]
    public void An_endless_line_is_refused(int length, string expected) =>
        Assert.Contains(expected, CsvText.Problem(CsvText.Header, $"1,417,{new string('A', length)},smooth,58,60,"));

    [Fact]
    public void A_quote_that_swallows_the_file_is_refused()
    {
        string problem = CsvText.Problem([CsvText.Header, "1,417,\"A,smooth,58,60,", .. Enumerable.Repeat(Good, 60_000)]);

        Assert.Contains("line 2: a line, or a quoted text, of more than 1 MiB", problem);
    }

    [Fact]
    public void More_than_a_thousand_columns_are_a_clear_no() =>
        Assert.Contains(
            "1207 columns; at most 1000 are read",
            CsvText.Problem(CsvText.Header + string.Concat(Enumerable.Repeat(",x", 1200)), Good)
        );

    [Fact]
    public void A_million_columns_are_a_clear_no()
    {
        FileRead<MeasuredDay> read = CsvText.Read(string.Concat(Enumerable.Repeat("x,", 1_000_000)));

        Assert.Null(read.Content);
        Assert.Single(read.ProblemLines());
    }

    [Theory]
    [InlineData("{0},417,A,smooth,58,60,", 100_001, "line 100002, column 'run': more than 100000 runs")]
    [InlineData("1,417,S{0},smooth,58,60,", 100_001, "line 100002, column 'segment': more than 100000 segments")]
    [InlineData("{0},{0},A,smooth,58,60,", 51, "line 52, column 'code': more than 50 codes")]
    public void A_column_that_holds_something_else_is_found_by_its_many_values(string row, int rows, string expected) =>
        Assert.Contains(expected, CsvText.Problem([CsvText.Header, .. Enumerable.Range(1, rows).Select(i => string.Format(row, i))]));

    [Theory]
    [InlineData("car")]
    [InlineData("session")]
    public void More_than_fifty_cars_or_sessions_are_a_clear_no(string column) =>
        Assert.Contains(
            $"line 52, column '{column}': more than 50 {column}s",
            CsvText.Problem([CsvText.Header + "," + column, .. Enumerable.Range(1, 51).Select(i => $"{i},417,A,smooth,58,60,,x{i}")])
        );

    [Theory]
    [InlineData("slot")]
    [InlineData("minutes")]
    public void More_than_a_thousand_runs_side_by_side_are_a_clear_no(string column) =>
        Assert.Contains(
            "1002 runs, some of them side by side",
            CsvText.Problem([
                CsvText.Header + "," + column,
                .. Enumerable.Range(1, 1002).Select(i => $"{i},{i % 2},A,smooth,58,60,,{i / 2}"),
            ])
        );

    [Fact]
    public void A_thousand_runs_one_after_the_other_are_read() =>
        Assert.Equal(
            1500,
            CsvText
                .Day([CsvText.Header + ",minutes", .. Enumerable.Range(1, 1500).Select(i => $"{i},417,A,smooth,58,60,,{i}")])
                .Levels.Count
        );

    [Fact]
    public void Many_runs_on_many_segments_are_a_clear_no()
    {
        string[] rows =
        [
            .. Enumerable.Range(1, 2500).Select(run => $"{run},417,A,smooth,58,60,"),
            .. Enumerable.Range(1, 2000).Select(i => $"1,417,S{i},smooth,58,60,"),
        ];

        Assert.Contains("line 4501, column 'segment': more than 5000000 runs times segments", CsvText.Problem([CsvText.Header, .. rows]));
    }

    [Fact]
    public void Many_runs_of_many_codes_are_a_clear_no() =>
        Assert.Contains(
            "line 19232, column 'segment': more than 1000000 runs times codes, cars and sessions",
            CsvText.Problem([CsvText.Header, .. Enumerable.Range(1, 19_231).Select(run => $"{run},{run % 50},A,smooth,58,60,")])
        );

    [Fact]
    public void Many_codes_on_many_segments_are_a_clear_no()
    {
        string[] rows =
        [
            .. Enumerable.Range(1, 50).Select(code => $"{code},{code},A,smooth,58,60,"),
            .. Enumerable.Range(1, 4000).Select(i => $"1,1,S{i},smooth,58,60,"),
        ];

        Assert.Contains("column 'segment': more than 200000 codes times segments", CsvText.Problem([CsvText.Header, .. rows]));
    }

    [Fact]
    public void Twenty_problems_are_told_and_the_rest_counted()
    {
        FileRead<MeasuredDay> read = CsvText.Read([CsvText.Header, .. Enumerable.Repeat("1,417,A,smooth,NaN,60,", 50)]);

        Assert.Equal((20, 30), (read.Problems.Count, read.MoreProblems));
        Assert.Equal("and 30 more", read.ProblemLines().Last());
    }

    [Fact]
    public void Every_problem_of_a_row_is_told_at_once()
    {
        FileRead<MeasuredDay> read = CsvText.Read(CsvText.Header, "x,417,A,smooth,NaN,200,?");

        Assert.Equal(["run", "high", "low", "spoilt"], read.Problems.Select(problem => problem.Column));
    }

    [Fact]
    public void A_problem_shows_no_more_than_forty_characters_of_a_value() =>
        Assert.Contains($"'{new string('9', 40)}...'", CsvText.Problem(CsvText.Header, $"{new string('9', 300)},417,A,smooth,58,60,"));
}
