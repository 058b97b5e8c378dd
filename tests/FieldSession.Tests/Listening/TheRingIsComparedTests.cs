using System.Text.Json;
using FieldSession.Comparing;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Listening;

/// <summary>A whole day with made sound in which one code's ring is 6 dB weaker, which dB(A) hardly shows.</summary>
public sealed class TheRingIsComparedTests
{
    [Fact]
    public void A_weaker_ring_is_found_in_the_right_direction_from_the_first_line_to_the_report()
    {
        using ADayWithRecorder day = new(steady: 4, order: "R 1 1 R R 1");
        day.RingDb = (code, _) => IsCandidate(day, code) ? 60 : 66;
        day.RingLastsS = code => IsCandidate(day, code) ? 0.18 : 0.3;
        day.Tone();
        for (int run = 0; run < 6; run++)
        {
            day.Drive();
        }

        day.Tone(94, "after.wav");
        day.Listen();
        SpecCode candidate = day.Study.Codes.Single(code => code != day.Study.ReferenceCode);
        day.Prompt.Predict(candidate);
        RingFinding ring = RingFinding.Of(day.Study)!;
        RingPair pair = Assert.Single(ring.Pairs);
        Assert.Null(ring.WhyNone);
        Assert.True(ring.IsCalibrated);
        Assert.Equal(candidate.Digits, pair.Code);
        Assert.True(pair.Main.Overall!.Hi95Db < 0, $"{pair.Main.Overall}");
        Assert.InRange(pair.Main.Overall.DifferenceDb, -6.5, -3);
        Assert.InRange(ring.Found!.PeakHz, 210, 228);
        Assert.All(ring.Spectra, HasItsInterval);
        Assert.InRange(pair.Lasting!.Ratio, 0.4, 0.85);
        Assert.All(pair.Explored.Where(band => band.Name == "200"), band => Assert.True(band.Estimate.DifferenceDb < 0));

        using JsonDocument json = JsonDocument.Parse(day.Prompt.Must(0, ["compare", day.Prompt.Study, "--json"]));
        JsonElement member = json.RootElement.GetProperty("comparisons")[0].GetProperty("ring");
        Assert.Equal(pair.Main.Overall.DifferenceDb, member.GetProperty("overall").GetProperty("d").GetDouble(), 1e-12);
        Assert.True(member.GetProperty("calibrated").GetBoolean());
        Assert.Equal(
            ["meter", "ring", "ear", "worth"],
            json.RootElement.GetProperty("verdicts").EnumerateArray().Select(line => line.GetProperty("line").GetString()!)
        );

        day.Prompt.Must(0, ["report", day.Prompt.Study, "--out", day.Prompt.Here("report")]);
        string report = File.ReadAllText(day.Prompt.Here("report/report.md"));
        Assert.Contains("Ring: MEASURED", report, StringComparison.Ordinal);
        Assert.Contains("Mean spectrum of each spec", report, StringComparison.Ordinal);
        Assert.Contains("by band, the ring band first, the others explored, 7 rows: ", report, StringComparison.Ordinal);
    }

    private static void HasItsInterval(RingSpectrum line)
    {
        Assert.Equal(line.LevelsDb.Length, line.HalfWidthsDb.Length);
        Assert.All(line.HalfWidthsDb, half => Assert.InRange(half, 0.01, 15));
    }

    // the first run is on the reference
    private static bool IsCandidate(ADayWithRecorder day, SpecCode code) => day.Study.Runs is [var first, ..] && first.Code != code;
}
