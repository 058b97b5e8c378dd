using System.Text.Json;
using FieldSession.Comparing;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Readings;
using FieldSession.Tests.References;

namespace FieldSession.Tests.Commands;

public sealed class CompareCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_csv_is_compared_as_text_of_80_columns()
    {
        (int code, string output, string error) = Run(new CompareWords(Csv(ADay), "417"));

        Assert.Equal((ExitCode.Done, ""), (code, error));
        Assert.Contains("862 against 417", output);
        Assert.Contains("positive means louder", output);
        Assert.Contains("clean readings", output);
        Assert.Contains("not known yet", output);
        Assert.All(output.Split(Environment.NewLine), line => Assert.InRange(line.Length, 0, 80));
        Assert.All(output, letter => Assert.True(char.IsAscii(letter)));
    }

    [Fact]
    public void A_csv_is_compared_as_json()
    {
        (int code, string output, _) = Run(new CompareWords(Csv(ADay), "862", "0,5", "1.5", Json: true));

        using JsonDocument json = JsonDocument.Parse(output);
        Assert.Equal(ExitCode.Done, code);
        Assert.Equal("862", json.RootElement.GetProperty("reference").GetString());
        Assert.Equal(0.5, json.RootElement.GetProperty("margin_db").GetDouble());
        Assert.Equal(1.5, json.RootElement.GetProperty("impact_margin_db").GetDouble());
    }

    [Fact]
    public void Margins_of_a_study_hold_unless_others_are_typed()
    {
        string study = Path.Combine(_folder, "day.study");
        File.WriteAllBytes(study, [0]);
        DayOfStudy day = new(CsvText.Day(ADay), new ComparisonTerms("862", 0.7, 1.7), []);

        (_, string output, _) = Run(new CompareWords(study, ImpactMargin: "3", Json: true), _ => day);

        using JsonDocument json = JsonDocument.Parse(output);
        Assert.Equal("862", json.RootElement.GetProperty("reference").GetString());
        Assert.Equal(0.7, json.RootElement.GetProperty("margin_db").GetDouble());
        Assert.Equal(3, json.RootElement.GetProperty("impact_margin_db").GetDouble());
    }

    [Fact]
    public void An_archive_lends_its_repeatability()
    {
        ReferenceCase reference = ReferenceCase.Open("06-aba-archive");
        string[] rows =
        [
            .. CaseDay
                .Of(reference)
                .Levels.Select(level =>
                    $"{level.Run},{level.Code},{level.Segment},{level.Kind},{level.LowDb},{level.HighDb},{(level.Spoilt ? 1 : 0)}"
                ),
        ];
        string archive = Path.Combine(AppContext.BaseDirectory, "References", "cases", "06-aba-archive", "archive.csv");

        (int code, string output, _) = Run(new CompareWords(Csv([CsvText.Header, .. rows]), "B", Archive: archive, Json: true));

        using JsonDocument json = JsonDocument.Parse(output);
        JsonElement all = json.RootElement.GetProperty("comparisons")[0].GetProperty("classes").GetProperty("all");
        Assert.Equal(ExitCode.Done, code);
        Assert.True(all.GetProperty("prior_used").GetBoolean());
        Assert.Equal(0.343671390269535, all.GetProperty("s_run_used").GetDouble(), 1e-9);
    }

    [Fact]
    public void An_unknown_reference_is_refused_and_the_codes_are_named()
    {
        (int code, string output, string error) = Run(new CompareWords(Csv(ADay), "999"));

        Assert.Equal((ExitCode.Wrong, ""), (code, output));
        Assert.Contains("--reference 999: no run on this code; the codes are 417, 862", error);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("-1")]
    [InlineData("NaN")]
    [InlineData("1e9")]
    [InlineData("wide")]
    public void A_margin_that_is_none_is_refused(string margin)
    {
        (int code, string output, string error) = Run(new CompareWords(Csv(ADay), Margin: margin));

        Assert.Equal((ExitCode.Wrong, ""), (code, output));
        Assert.Contains($"--margin {margin}: not a margin", error);
    }

    [Fact]
    public void The_command_line_hands_every_option_on()
    {
        using StringWriter output = new();
        string[] typed = [Csv(ADay), "--reference", "862", "--margin", "0.7", "--impact-margin", "1.7", "--json"];

        int code = CompareCommand
            .Make(_ => throw new InvalidOperationException("this is no study"))
            .Parse(typed)
            .Invoke(new() { Output = output });

        using JsonDocument json = JsonDocument.Parse(output.ToString());
        Assert.Equal(ExitCode.Done, code);
        Assert.Equal("862", json.RootElement.GetProperty("reference").GetString());
        Assert.Equal(0.7, json.RootElement.GetProperty("margin_db").GetDouble());
        Assert.Equal(1.7, json.RootElement.GetProperty("impact_margin_db").GetDouble());
    }

    [Fact]
    public void Problems_of_the_csv_go_to_the_error_output()
    {
        (int code, string output, string error) = Run(new CompareWords(Csv(CsvText.Header, "1,417,A,smooth,NaN,60,")));

        Assert.Equal((ExitCode.Wrong, ""), (code, output));
        Assert.Contains("line 2, column 'low': 'NaN'", error);
    }

    [Fact]
    public void A_file_that_is_not_there_and_a_folder_are_refused()
    {
        (int missing, _, string missingWords) = Run(new CompareWords(Path.Combine(_folder, "nothing.csv")));
        (int missingArchive, _, string archiveWords) = Run(new CompareWords(Csv(ADay), Archive: Path.Combine(_folder, "old.csv")));
        (int isFolder, _, string folderWords) = Run(new CompareWords(_folder));

        Assert.Equal((ExitCode.Wrong, ExitCode.Wrong, ExitCode.Wrong), (missing, missingArchive, isFolder));
        Assert.Contains("nothing.csv: there is no such file", missingWords);
        Assert.Contains("old.csv: there is no such file", archiveWords);
        Assert.Contains("this is a folder", folderWords);
    }

    [Fact]
    public void A_file_that_can_not_be_read_says_so()
    {
        string study = Path.Combine(_folder, "day.study");
        File.WriteAllBytes(study, [0]);

        (int code, _, string error) = Run(new CompareWords(study), _ => throw new IOException("locked by another program"));

        Assert.Equal(ExitCode.Damaged, code);
        Assert.Contains("locked by another program; nothing was changed", error);
    }

    [Fact]
    public void An_archive_that_can_not_be_read_is_the_file_that_is_named()
    {
        string tooLong = Path.Combine(_folder, new string('a', 5000));

        (int code, string output, string error) = Run(new CompareWords(Csv(ADay), Archive: tooLong));
        (int isFolder, _, string folderWords) = Run(new CompareWords(Csv(ADay), Archive: _folder));

        Assert.Equal((ExitCode.Damaged, "", ExitCode.Wrong), (code, output, isFolder));
        Assert.StartsWith($"{tooLong}: can't be read", error);
        Assert.StartsWith($"{_folder}: this is a folder", folderWords);
    }

    [Fact]
    public void The_text_says_what_the_result_hangs_on()
    {
        (_, string output, _) = Run(new CompareWords(Csv(ADay), "417"));

        Assert.Contains("with one thing changed:", output);
        Assert.Contains("no archive: if runs repeat with 0.5 dB, which is assumed", output);
        Assert.Contains("level of exposure, d", output);
    }

    private static string[] ADay =>
        [
            CsvText.Header,
            .. Enumerable
                .Range(1, 4)
                .SelectMany(run =>
                    Enumerable
                        .Range(1, 3)
                        .Select(segment =>
                            $"{run},{(run is 1 or 4 ? 417 : 862)},A rather long name of a segment "
                            + $"{segment},{(segment == 3 ? "impact" : "smooth")},{55 + segment + run % 3 * 0.4}"
                            + $",{57 + segment + run % 2 * 0.3}"
                            + $",{(run + segment == 4 ? "t" : "")}"
                        )
                ),
        ];

    private string Csv(params string[] lines)
    {
        string path = Path.Combine(_folder, "day.csv");
        File.WriteAllLines(path, lines);
        return path;
    }

    private static (int Code, string Output, string Error) Run(CompareWords words, Func<string, DayOfStudy>? open = null)
    {
        using StringWriter output = new();
        using StringWriter error = new();
        int code = new CompareCommand(open ?? (_ => throw new InvalidOperationException("this is no study"))).Run(output, error, words);
        return (code, output.ToString(), error.ToString());
    }
}
