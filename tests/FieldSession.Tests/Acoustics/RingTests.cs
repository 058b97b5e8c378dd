using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Acoustics;
using FieldSession.Signals;
using FieldSession.Store.Recordings;
using FieldSession.Tests.References;

namespace FieldSession.Tests.Acoustics;

/// <summary>
/// Search of the ring and its decay (cases R07-ring-search and R08-impact-decay; numpy, scipy, and numbers the signals were made with).
/// </summary>
public class RingTests
{
    private static readonly RecordingCase Search = RecordingCase.Open("R07-ring-search");
    private static readonly RecordingCase Decay = RecordingCase.Open("R08-impact-decay");

    [Fact]
    public void The_band_is_found_and_stays_when_codes_change_places()
    {
        (ImmutableArray<double> hz, SearchedLine[] lines) = Lines();

        FoundRing found = RingSearch.Find(hz, lines)!;
        FoundRing permuted = RingSearch.Find(hz, [.. lines.Select(line => line with { Group = -line.Group })])!;

        Search.Holds("peak_hz", found.PeakHz);
        Search.Holds("excess_db", found.ExcessDb);
        Search.Holds("f1_hz", found.Band.LowerHz);
        Search.Holds("f2_hz", found.Band.UpperHz);
        Search.Holds("permuted.f1_hz", permuted.Band.LowerHz);
        Search.Holds("permuted.f2_hz", permuted.Band.UpperHz);
    }

    [Fact]
    public void Flat_noise_has_no_ring()
    {
        (ImmutableArray<double> hz, _) = Lines();
        Assert.Null(RingSearch.Find(hz, [new(0, [.. hz.Select((_, i) => 50 + (0.5 * Math.Sin(i)))])]));
    }

    [Theory]
    [InlineData("joint")]
    [InlineData("viaduct")]
    [InlineData("slab")]
    public void The_ring_after_impacts_lasts_as_long_as_it_was_made(string segment)
    {
        (string Segment, TimeWindow Window)[] impacts =
        [
            .. Decay.Table("impacts.csv").Select(row => (row[0], new TimeWindow(Number(row[1]), Number(row[2])))),
        ];
        using SoundFile file = SoundFile.Open(Decay.PathOf("impacts.flac"));
        RecordingMeter meter = new(file.Reader.Format.RateHz, 1, [], [.. impacts.Select(impact => impact.Window)]);
        SoundPass.Through(file.Reader, 1, meter);
        RecordingLevels heard = meter.Finish();

        RingDecayTime? found = RingDecay.Of(
            impacts
                .Index()
                .Where(impact => impact.Item.Segment == segment)
                .Select(impact => (IReadOnlyList<double>)heard.Impacts[impact.Index]),
            heard.LowRateHz,
            RingBand.Decay
        );

        Decay.Holds($"{segment}.T60_s", found?.T60S);
        if (segment != "slab")
        {
            Decay.Holds($"{segment}.T60_true_s", found!.T60S);
            Decay.Holds($"{segment}.lo_s", found.LowS);
            Decay.Holds($"{segment}.hi_s", found.HighS);
            Decay.Holds($"{segment}.events", found.Events);
        }
    }

    [Fact]
    public void Too_short_an_impact_or_silence_has_no_decay()
    {
        Assert.Null(RingDecay.Of([new double[100], new double[4800]], 1600, RingBand.Decay));
    }

    private static (ImmutableArray<double> Hz, SearchedLine[] Lines) Lines()
    {
        string[][] rows = Search.Table("psd.csv");
        ImmutableArray<double> hz = [.. rows.Select(row => Number(row[2])).Distinct()];
        return (
            hz,
            [
                .. rows.GroupBy(row => (row[0], row[1]))
                    .Select(line => new SearchedLine(
                        int.Parse(line.Key.Item2, CultureInfo.InvariantCulture),
                        [.. line.Select(row => Number(row[3]))]
                    )),
            ]
        );
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
