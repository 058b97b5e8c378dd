using FieldSession.State;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Listening;

/// <summary>
/// Before the last prediction is locked nothing that anybody can read holds the ring by code: the crew know which way the feature pushes
/// it.
/// </summary>
public sealed class TheRingIsCoveredTests
{
    // all that a crew can ask for in the evening
    private static readonly string[][] Asked =
    [
        ["review"],
        ["compare"],
        ["compare", "--json"],
        ["report", "--out", "REPORT"],
        ["export", "--out", "TABLES"],
        ["verify"],
        ["archive", "."],
    ];

    [Fact]
    public void Until_the_last_prediction_no_answer_and_no_file_holds_a_ring_and_a_code_and_then_they_do()
    {
        using ADayWithRecorder day = new() { RingDb = (code, _) => int.Parse(code.Digits, null) % 2 == 0 ? 61.37 : 64.89 };
        for (int run = 0; run < 4; run++)
        {
            day.Drive();
        }

        string said = day.Listen();
        string[] rings = [.. RingsOf(day.Study)];
        Assert.NotEmpty(rings);
        NoRingIn(said, rings);
        foreach (string stage in new[] { "", "calibration after 94.0", $"predict Ro feature={day.Study.Codes.First()} sure=4" })
        {
            if (stage.Length > 0)
            {
                day.Prompt.Enter(stage + "\n");
            }

            Assert.All(Answers(day), answer => NoRingIn(answer, rings));
        }

        Assert.Contains("is covered until", day.Prompt.Must(0, ["compare", day.Prompt.Study]), StringComparison.Ordinal);
        day.Prompt.Enter($"predict Tam feature={day.Study.Codes.First()} sure=4\n");
        string opened = string.Concat(Answers(day));
        Assert.Contains("Ring in recordings, 178 to 282 Hz", opened, StringComparison.Ordinal);
        Assert.Contains("\"band_hz\"", opened, StringComparison.Ordinal);
        Assert.Contains(rings, ring => opened.Contains(ring, StringComparison.Ordinal));
    }

    [Fact]
    public void The_ring_opens_early_only_with_a_reason_and_only_once_there_is_one()
    {
        using ADayWithRecorder day = new();
        day.Drive();
        Assert.Contains(
            "no recording was taken yet",
            day.Prompt.Must(1, ["enter", day.Prompt.Study], "ring open because the owner asks\n"),
            StringComparison.Ordinal
        );
        day.Listen();
        Assert.Contains(
            "uncovering the ring early needs a reason",
            day.Prompt.Must(1, ["enter", day.Prompt.Study], "ring open\n"),
            StringComparison.Ordinal
        );
        day.Prompt.Enter("ring open because the owner asks\n");
        Assert.True(RingCover.IsOpen(day.Study));
        Assert.Equal("the owner asks", day.Study.RingOpening!.Why);
    }

    [Fact]
    public void The_evening_s_screen_tells_the_ring_by_segment_once_it_is_uncovered_and_the_report_who_predicted_after_it()
    {
        using ADayWithRecorder day = new();
        for (int run = 0; run < 4; run++)
        {
            day.Drive();
        }

        day.Listen();
        day.Prompt.Enter("calibration after 94.0\n");
        Assert.Contains(
            "Recordings of 4 of 4 runs; what they hold is covered until the last prediction",
            Review(day),
            StringComparison.Ordinal
        );
        day.Prompt.Enter("ring open because the owner asks\n");
        Assert.Matches("Ring in recordings, 178 to 282 Hz[\\s\\S]*  Lane 2 +[-+0-9]", Review(day));
        day.Prompt.Enter($"predict Ro feature={day.Study.Codes.First()} sure=4\npredict Tam feature={day.Study.Codes.First()} sure=4\n");
        day.Prompt.Must(0, ["report", day.Prompt.Study, "--out", day.Prompt.Here("report")]);
        Assert.Contains(
            "Ro and Tam predicted after the ring was uncovered (the owner asks)",
            File.ReadAllText(day.Prompt.Here("report/report.md")),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Typed_levels_of_the_ring_s_bands_are_covered_as_well()
    {
        using ADayWithRecorder day = new();
        for (int run = 0; run < 2; run++)
        {
            day.Drive();
            day.Prompt.Enter($"extra c=80.5 l200={61 + run}.37\n");
        }

        Assert.All(Answers(day), answer => NoRingIn(answer, ["61.37", "62.37", "200 Hz, "]));
        day.Prompt.Enter(
            $"calibration after 94.0\npredict Ro feature={day.Study.Codes.First()} sure=4\npredict Tam "
                + $"feature={day.Study.Codes.First()} sure=4\n"
        );
        Assert.Contains("61.37", string.Concat(Answers(day)), StringComparison.Ordinal);
    }

    private static string Review(ADayWithRecorder day)
    {
        using OpenedStudy opened = OpenedStudy.ToRead(day.Prompt.Study, day.Prompt.Outside());
        using Tui tui = new(opened.Logbook, day.Prompt.Clock, desk => desk, 120, 120, "review");
        tui.Keys("parked<Enter>");
        return tui.Screen;
    }

    private static void NoRingIn(string answer, string[] rings) =>
        Assert.DoesNotContain(rings, ring => answer.Contains(ring, StringComparison.Ordinal));

    // as the journal writes them: three digits behind the point meet nothing else
    private static IEnumerable<string> RingsOf(Study study) =>
        study
            .Recordings.SelectMany(recording => recording.Segments)
            .SelectMany(heard => new[] { heard.RingDb, heard.RingMedianDb, heard.BandDb(-7), heard.BandDb(-6) })
            .OfType<double>()
            .Select(level => level.ToString("0.000", System.Globalization.CultureInfo.InvariantCulture));

    private static string[] Answers(ADayWithRecorder day)
    {
        List<string> answers = [];
        foreach (string[] words in Asked)
        {
            string[] typed =
                words[0] == "archive"
                    ? ["archive", day.Prompt.Here(".")]
                    :
                    [
                        words[0],
                        day.Prompt.Study,
                        .. words.Skip(1).Select(word => word is "REPORT" or "TABLES" ? day.Prompt.Here(word) : word),
                    ];
            day.Prompt.Run(typed);
            answers.Add(day.Prompt.Said);
        }

        foreach (string folder in new[] { "REPORT", "TABLES" }.Where(folder => Directory.Exists(day.Prompt.Here(folder))))
        {
            answers.AddRange(Directory.EnumerateFiles(day.Prompt.Here(folder), "*", SearchOption.AllDirectories).Select(File.ReadAllText));
            Directory.Delete(day.Prompt.Here(folder), recursive: true);
        }

        return [.. answers];
    }
}
