using System.Globalization;
using System.Text;
using FieldSession.Aligning;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Listening;

public sealed class MeterLogInAStudyTests
{
    [Fact]
    public void Tens_and_swapped_digits_are_found_and_traffic_is_proposed_and_nothing_is_left_out()
    {
        using ADayWithRecorder day = new(steady: 7, order: "R 1");
        day.Drive();
        day.Drive();
        string log = LogOf(day, aheadS: 0, loud: (1, 4));
        day.Prompt.Enter($"correct 1.2 {Off(day, 1, 2, 10)}\ncorrect 2.3 {Swapped(day, 2, 3)}\n");

        string said = day.Prompt.Must(0, ["log", day.Prompt.Study, log, "--zone", "Z"]);

        Assert.Contains("! run 1, 2 Lane 2: ten off", said, StringComparison.Ordinal);
        Assert.Contains("'correct 1.2 LOW-HIGH' where it is wrong", said, StringComparison.Ordinal);
        Assert.Contains("! run 2, 3 Lane 3: ", said, StringComparison.Ordinal);
        Assert.Contains("traffic proposed: run 1, 4 Lane 4; 'flag 1.4 t'", said, StringComparison.Ordinal);
        Assert.Contains("by file time within 2.0 s", said, StringComparison.Ordinal);
        Assert.All(day.Study.Runs.SelectMany(run => run.Readings), reading => Assert.Null(reading.Spoilt));
        string[] doubts =
        [
            .. Assert.Single(day.Study.LogComparisons).DoubtsIn(day.Study).Select(doubt => doubt.Run.PlaceOf(doubt.Reading)),
        ];
        Assert.Equal(["1.2", "2.3"], doubts.Except(["1.4"]));
        Assert.DoesNotContain(day.Study.Codes, code => said.Contains(code.Digits, StringComparison.Ordinal));
    }

    [Fact]
    public void A_meter_s_clock_that_is_wrong_is_told_by_the_typed_levels()
    {
        using ADayWithRecorder day = new(steady: 7, order: "R 1");
        day.Drive();
        day.Drive();

        string said = day.Prompt.Must(0, ["log", day.Prompt.Study, LogOf(day, aheadS: 25, loud: null), "--zone", "Z"]);

        LogComparison log = Assert.Single(day.Study.LogComparisons);
        Assert.Equal(ClockSource.TypedLevels, log.ClockBy);
        Assert.Equal(25, log.OffsetS, 6.0);
        Assert.Contains("by typed levels within", said, StringComparison.Ordinal);
        Assert.Empty(log.DoubtsIn(day.Study));
    }

    [Fact]
    public void A_log_of_another_day_and_one_that_goes_back_in_time_are_refused()
    {
        using ADayWithRecorder day = new();
        day.Drive();
        string other = day.Prompt.Write("other.csv", "date,time,laeq\n2026-02-07,10:00:00,60\n2026-02-07,10:00:01,61\n");
        string back = day.Prompt.Write("back.csv", "date,time,laeq\n2026-02-03,10:00:05,60\n2026-02-03,10:00:01,61\n");

        Assert.Contains(
            "the log does not cover any reading; give --offset",
            day.Prompt.Must(2, ["log", day.Prompt.Study, other, "--zone", "Z"]),
            StringComparison.Ordinal
        );
        Assert.Contains("the time goes back", day.Prompt.Must(2, ["log", day.Prompt.Study, back, "--zone", "Z"]), StringComparison.Ordinal);
        Assert.Contains("give --zone", day.Prompt.Must(2, ["log", day.Prompt.Study, other]), StringComparison.Ordinal);
        Assert.Empty(day.Study.LogComparisons);
    }

    // the middle of each typed reading for the seconds before it, with a display that wanders
    private static string LogOf(ADayWithRecorder day, int aheadS, (int Run, int Segment)? loud)
    {
        StringBuilder log = new("date,time,laeq\n");
        Random lot = new(4);
        foreach (Run run in day.Study.Runs)
        {
            DateTimeOffset from = run.Started.At;
            foreach (Reading reading in run.Readings)
            {
                for (DateTimeOffset at = from; at < reading.Mark.At; at = at.AddSeconds(1))
                {
                    bool isLoud = loud == (run.Number, reading.Segment) && (reading.Mark.At - at).TotalSeconds is > 5 and < 10;
                    double level = reading.Levels.MidpointDb + (1.6 * (lot.NextDouble() - 0.5)) + (isLoud ? 8 : 0);
                    log.Append(
                        CultureInfo.InvariantCulture,
                        $"{at.AddSeconds(aheadS):yyyy-MM-dd},{at.AddSeconds(aheadS):HH:mm:ss},{level:0.0}\n"
                    );
                }

                from = reading.Mark.At;
            }
        }

        return day.Prompt.Write("meter.csv", log.ToString());
    }

    private static string Off(ADayWithRecorder day, int run, int segment, double by)
    {
        Reading reading = day.Study.Runs[run - 1].ReadingsOn(segment)[0];
        return string.Create(CultureInfo.InvariantCulture, $"{reading.Levels.LowDb + by:0.0}-{reading.Levels.HighDb + by:0.0}");
    }

    // 63.1-65.1 typed as 36.1-65.1: the digits of one end
    private static string Swapped(ADayWithRecorder day, int run, int segment)
    {
        Reading reading = day.Study.Runs[run - 1].ReadingsOn(segment)[0];
        int whole = (int)reading.Levels.LowDb;
        double swapped = (whole % 10 * 10) + (whole / 10) + (reading.Levels.LowDb - whole);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{Math.Min(swapped, reading.Levels.HighDb):0.0}-{Math.Max(swapped, reading.Levels.HighDb):0.0}"
        );
    }
}
