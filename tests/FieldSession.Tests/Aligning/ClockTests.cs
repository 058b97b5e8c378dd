using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Aligning;
using FieldSession.Signals;
using FieldSession.Tests.Acoustics;
using FieldSession.Tests.References;

namespace FieldSession.Tests.Aligning;

/// <summary>How two clocks differ (case R09-clock-offset: numbers that the day was made with, and numpy's).</summary>
public class ClockTests
{
    private const double WindowS = 8;
    private static readonly RecordingCase Case = RecordingCase.Open("R09-clock-offset");

    [Fact]
    public void Two_marks_tell_the_offset()
    {
        ClockOffset offset = ByMarks();

        Case.Holds("marks.offset_s", offset.OffsetS);
        Case.Holds("true.clock_offset_s", offset.OffsetS);
        Assert.Equal(ClockMark.KeyHalfRangeS, offset.HalfRangeS);
        Assert.Equal(0, offset.RateError);
    }

    [Fact]
    public void Typed_levels_alone_tell_a_wide_range_and_don_t_contradict_the_marks()
    {
        TypedAlignment typed = TypedAlignment.Of(Entries(), Log(), WindowS)!;

        Case.Holds("typed.best_s", typed.BestS);
        Case.Holds("typed.lo_s", typed.LowS);
        Case.Holds("typed.hi_s", typed.HighS);
        Case.Holds("typed.used", typed.Used);
        Case.Holds("typed.contradicts_marks", typed.Offset.Contradicts(ByMarks(), 700) ? 1 : 0);
        Assert.True((typed.Offset with { OffsetS = 20 }).Contradicts(ByMarks(), 700));
    }

    [Fact]
    public void Marks_that_drift_apart_give_the_rate_of_the_clock()
    {
        ClockOffset offset = ClockOffset.OfMarks([new(0, 10), new(3600, 3613), new(7200, 7216)])!;
        Assert.Equal(3 / 3600.0, offset.RateError, 1e-12);
        Assert.Equal(3613, offset.RecorderS(3600), 1e-9);
        Assert.Equal(7216, offset.RecorderS(7200), 1e-9);
        Assert.Null(ClockOffset.OfMarks([]));
    }

    [Fact]
    public void Too_few_readings_tell_no_offset() => Assert.Null(TypedAlignment.Of([.. Entries().Take(3)], Log(), WindowS));

    /// <summary>Source: the rule itself, worked by hand.</summary>
    [Theory]
    [InlineData(100, 30, null, 0.5, 70.0, 98.0)]
    [InlineData(100, 30, 80.0, 0.5, 80.0, 98.0)]
    [InlineData(100, 30, null, 2.5, 72.5, 95.5)]
    [InlineData(100, 30, 96.0, 0.5, null, null)]
    public void A_window_is_the_plan_s_seconds_before_the_typing(
        double stored,
        double plan,
        double? before,
        double halfRange,
        double? from,
        double? to
    )
    {
        TimeWindow? window = ReadWindow.OfSteady(stored, plan, before, halfRange);
        Assert.Equal(from, window?.FromS);
        Assert.Equal(to, window?.ToS);
        if (window is not null)
        {
            Assert.Equal(to + 1, ReadWindow.OfImpact(stored, plan, before, halfRange)?.ToS);
        }
    }

    [Fact]
    public void Three_knocks_are_found_amid_noise_and_two_are_no_mark()
    {
        const int RateHz = 16_000;
        double[] sound = InventedSound.Noise(1, RateHz, 60, 0.001);
        double[] decay = [.. InventedSound.Noise(2, RateHz, 0.1, 0.2).Select((sample, i) => sample * Math.Exp(-i / 250.0))];
        foreach (double at in new[] { 20.0, 20.42, 20.85, 40, 40.4 })
        {
            for (int i = 0; i < decay.Length; i++)
            {
                sound[(int)(at * RateHz) + i] += decay[i];
            }
        }

        Knocks knocks = new(RateHz);
        InventedSound.InBlocks(sound, knocks);

        Assert.Equal(20.85, Assert.Single(knocks.Thirds()), 0.011);
    }

    private static ClockOffset ByMarks() =>
        ClockOffset.OfMarks([.. Case.Table("marks.csv").Select(row => new ClockMark(Number(row[0]), Number(row[1])))])!;

    private static TypedRange[] Entries() =>
        [.. Case.Table("entries.csv").Select(row => new TypedRange(Number(row[2]), Number(row[3]), Number(row[4])))];

    private static ImmutableArray<LoggedLevel> Log() =>
        [.. Case.Table("log.csv").Select(row => new LoggedLevel(Number(row[0]), Number(row[1])))];

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
