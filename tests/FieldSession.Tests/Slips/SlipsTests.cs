using System.Text;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Slips;

/// <summary>200 runs typed by a slipping hand; docs/slips.md is printed from what came of them.</summary>
public sealed class SlipsTests
{
    private const int RunsOfRate = 20;
    private const int HighestPercent = 10;

    // Measured once with the same runs on the program as it was before its words, bounces and refused lines were guarded.
    private const int BeforeWhenLooking = 8;
    private const int BeforeWithoutLooking = 786;

    [Fact]
    public void Of_200_runs_with_slips_the_stop_points_out_what_is_wrong()
    {
        SlippingRunOutcome[][] looking = Driven(looks: true);
        SlippingRunOutcome[][] without = Driven(looks: false);
        Golden.Approve("docs/slips.md", Printed(looking, without));
        Assert.True(Unsaid(looking) < BeforeWhenLooking, string.Join('\n', looking.SelectMany(rate => rate).SelectMany(run => run.NotPointedOut)));
        Assert.True(Unsaid(without) < BeforeWithoutLooking / 4);
    }

    private static SlippingRunOutcome[][] Driven(bool looks) => [.. Enumerable.Range(1, HighestPercent).Select(percent => Enumerable.Range(0, RunsOfRate)
        .Select(run => SlippingRun.Of((percent * 1000) + run, percent / 100.0, looks)).ToArray())];

    private static int Unsaid(SlippingRunOutcome[][] rates) => rates.SelectMany(rate => rate).Sum(run => run.NotPointedOut.Count);

    private static string Printed(SlippingRunOutcome[][] looking, SlippingRunOutcome[][] without)
    {
        StringBuilder text = new(
            "# Slips\n\nFor whoever asks what a slip of the finger costs: printed by a test that drives 200 runs of eleven segments with a hand that slips.\n"
            + "A slip is a key left out, doubled, swapped with the next, added, Enter too early or too late, or words meant for another window; each is as\n"
            + "likely as the others. The co-driver looks at the screen once after every segment and sees what stands out (a refused line, something in the\n"
            + "box, another segment due, the sign of a flag), but does not read the figures again. `wrong` counts segments that are not as meant when the\n"
            + "run is over; `not pointed out` those that the stop neither asks about nor shows as missed or flagged.\n");
        text.Append("\n| slips for each key | keys | slips | readings | wrong | not pointed out | wrong, never looked | not pointed out, never looked |\n|---|---|---|---|---|---|---|---|\n");
        for (int i = 0; i < looking.Length; i++)
        {
            SlippingRunOutcome[] seen = looking[i];
            text.Append($"| {i + 1} % | {seen.Sum(r => r.Keys)} | {seen.Sum(r => r.Slips)} | {seen.Sum(r => r.Meant)} | {seen.Sum(r => r.Wrong)} | {seen.Sum(r => r.NotPointedOut.Count)} "
                + $"| {without[i].Sum(r => r.Wrong)} | {without[i].Sum(r => r.NotPointedOut.Count)} |\n");
        }

        text.Append($"\nOf all readings {Unsaid(looking)} are wrong without a word when the co-driver looks, {Unsaid(without)} when nobody looks until the stop. The same runs typed into the\n"
            + $"program before it guarded words, bounces and refused lines: {BeforeWhenLooking} and {BeforeWithoutLooking}.\n");
        string[] left = [.. looking.SelectMany(rate => rate).SelectMany(run => run.NotPointedOut)];
        text.Append(left.Length == 0 ? "" : $"\nWhat is left, segment by segment (`~` is Enter, `|` a thought):\n\n{string.Concat(left.Select(one => $"- {one.Replace("|", "\\|", StringComparison.Ordinal)}\n"))}");
        return text.ToString();
    }
}
