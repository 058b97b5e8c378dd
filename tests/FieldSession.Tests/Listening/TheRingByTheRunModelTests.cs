using System.Globalization;
using FieldSession.Comparing;
using FieldSession.Statistics;
using FieldSession.Tests.References;

namespace FieldSession.Tests.Listening;

/// <summary>
/// Levels of bands by the run model as it is (case R11-band-comparison-abba, numpy): the ring band one test, the explored bands Holm over
/// theirs.
/// </summary>
public sealed class TheRingByTheRunModelTests
{
    private static readonly RecordingCase Case = RecordingCase.Open("R11-band-comparison-abba");

    [Fact]
    public void The_ring_band_is_compared_as_readings_are()
    {
        ClassComparison ring = Compared("ring");

        Holds("ring.overall", ring.Overall!);
        Case.Holds("ring.overall.lo90", ring.Overall!.Lo90Db);
        Case.Holds("ring.overall.hi90", ring.Overall.Hi90Db);
        Case.Holds("ring.s_run", ring.SRunDb);
        Case.Holds("ring.nu_run", ring.NuRun);
        Case.Holds("ring.s_e", ring.SEDb);
        Case.Holds("ring.nu_e", ring.NuE);
        Case.Holds("ring.kbar", ring.Kbar);
        Case.Holds("ring.floor_applied", ring.FloorApplied ? 1 : 0);
        Case.Holds("ring.drift_in_model", ring.DriftInModel ? 1 : 0);
        Assert.NotEmpty(ring.Segments);
        Assert.All(ring.Segments, segment => Holds($"ring.seg.{segment.Segment}", segment.Estimate));
    }

    [Fact]
    public void Explored_bands_share_their_level_by_Holm()
    {
        string[] bands = [.. Case.Quantities("explored.").Select(name => name.Split('.')[1]).Distinct()];
        Assert.NotEmpty(bands);
        Estimate[] found = [.. bands.Select(band => Compared(band).Overall!)];
        double[] holm = Holm.Adjust([.. found.Select(one => one.P!.Value)]);
        Assert.All(
            bands.Index(),
            band =>
            {
                Case.Holds($"{band.Item}.overall.d", found[band.Index].DifferenceDb);
                Case.Holds($"explored.{band.Item}.p_holm", holm[band.Index]);
            }
        );
    }

    private static ClassComparison Compared(string band) =>
        BlindComparison.Of(DayOf(band), new ComparisonTerms("417", MarginDb: 2)).Comparisons.Single().Classes.Steady!;

    private static MeasuredDay DayOf(string band) =>
        new([
            .. from row in Case.Table("levels.csv")
            where row[4] == band
            let level = Number(row[5])
            select new MeasuredLevel(
                (int)Number(row[0]),
                row[2],
                row[3],
                "coarse",
                MeasureClass.Steady,
                level,
                level,
                Minutes: Number(row[1])
            ),
        ]);

    private static void Holds(string name, Estimate estimate)
    {
        Case.Holds($"{name}.d", estimate.DifferenceDb);
        Case.Holds($"{name}.se", estimate.StandardErrorDb);
        Case.Holds($"{name}.df", estimate.Df);
        Case.Holds($"{name}.lo95", estimate.Lo95Db);
        Case.Holds($"{name}.hi95", estimate.Hi95Db);
        Case.Holds($"{name}.p", estimate.P);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
