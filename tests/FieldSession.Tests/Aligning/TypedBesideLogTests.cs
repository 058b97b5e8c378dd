using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Aligning;
using FieldSession.Tests.References;

namespace FieldSession.Tests.Aligning;

/// <summary>Typed readings beside a log (case R12-typed-beside-log: slips that were made on purpose, and numpy's numbers).</summary>
public class TypedBesideLogTests
{
    private const double StepS = 0.125;
    private static readonly RecordingCase Case = RecordingCase.Open("R12-typed-beside-log");

    [Fact]
    public void Slips_and_trucks_are_found_and_nothing_else()
    {
        TypedBesideLog found = TypedBesideLog.Of(Readings(), StepS);
        string[][] entries = Case.Table("entries.csv");

        Case.Holds("median_residual_db", found.MedianDb);
        Case.Holds("limit_db", found.LimitDb);
        Assert.Equal(24, found.Entries.Length);
        Assert.All(
            found.Entries.Index(),
            entry =>
            {
                string number = entries[entry.Index][0];
                bool isFlagged = entries[entry.Index].Length > 3 && entries[entry.Index][3] == "t";
                Assert.Equal(Case.Text($"entry.{number}.word"), Word(entry.Item.Fit));
                Assert.Equal(
                    Case.Text($"entry.{number}.traffic"),
                    !entry.Item.HasTraffic ? "no"
                        : isFlagged ? "flagged already"
                        : "proposed"
                );
            }
        );
    }

    [Fact]
    public void A_meter_that_reads_5_dB_more_than_the_log_does_no_harm()
    {
        BesideLog[] shifted =
        [
            .. Readings()
                .Select(reading =>
                    reading with
                    {
                        Typed = reading.Typed with { LowDb = reading.Typed.LowDb + 5, HighDb = reading.Typed.HighDb + 5 },
                    }
                ),
        ];
        TypedBesideLog found = TypedBesideLog.Of(shifted, StepS);
        Assert.Equal(Case.Number("median_residual_db") + 5, found.MedianDb!.Value, 1e-9);
        Assert.Equal(EntryFit.TenOff, found.Entries[9].Fit);
        Assert.Equal(2, found.Entries.Count(entry => entry.Fit != EntryFit.Fits));
    }

    [Fact]
    public void Where_nothing_was_logged_nothing_is_said()
    {
        EntryFinding finding = Assert.Single(TypedBesideLog.Of([new(new(0, 50, 52), [])], StepS).Entries);
        Assert.Equal(new EntryFinding(EntryFit.NotHeard, null, false), finding);
    }

    [Fact]
    public void An_automatic_gain_flattens_the_slope_and_a_fixed_one_does_not()
    {
        Random lot = new(1);
        double[] typed = [.. Enumerable.Range(0, 40).Select(i => 50.0 + (i % 20))];
        GainSlope steady = GainSlope.Of([.. typed.Select(level => (level, level - 80 + (0.7 * (lot.NextDouble() - 0.5))))])!;
        GainSlope automatic = GainSlope.Of([.. typed.Select(level => (level, (0.3 * level) - 40 + (0.7 * (lot.NextDouble() - 0.5))))])!;

        Assert.False(steady.IsSuspect);
        Assert.Equal(1, steady.Slope, 0.03);
        Assert.True(automatic.IsSuspect);
        Assert.Null(GainSlope.Of([(50, -30), (60, -20)]));
        Assert.Null(GainSlope.Of([.. Enumerable.Range(0, 9).Select(i => (50 + (0.1 * i), (i % 2) * 3.0))])!.IsSuspect);
    }

    [Fact]
    public void A_meter_left_on_slow_shows_in_narrow_ranges()
    {
        double[] fast = [4, 4.2, 3.9, 4.1, 4.3, 4];
        double[] slow = [2, 2.1, 1.9, 2, 2.2, 2];
        Assert.True(MeterSetting.IsLikeSlow([2, 2, 2, 3, 2, 2], fast, slow));
        Assert.False(MeterSetting.IsLikeSlow([4, 4, 5, 4, 3, 4], fast, slow));
        Assert.Null(MeterSetting.IsLikeSlow([4, 4, 5], [4, 4, 4], [2, 2, 2]));
        Assert.Null(MeterSetting.IsLikeSlow([2, 2, 2, 2, 2, 2], slow, slow));
    }

    private static BesideLog[] Readings()
    {
        Dictionary<string, ImmutableArray<double>> windows = Case.Table("windows.csv")
            .ToDictionary(row => row[0], row => row.Skip(1).Select(Number).ToImmutableArray());
        return [.. Case.Table("entries.csv").Select(row => new BesideLog(new(0, Number(row[1]), Number(row[2])), windows[row[0]]))];
    }

    private static string Word(EntryFit fit) =>
        fit switch
        {
            EntryFit.Fits => "fits",
            EntryFit.TenOff => "ten off",
            EntryFit.DigitsSwapped => "digits swapped",
            _ => "does not fit",
        };

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
