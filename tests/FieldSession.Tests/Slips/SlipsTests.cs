using System.Text;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Slips;

/// <summary>
/// Runs typed by a slipping hand. The suite drives one run for each rate; FIELDSESSION_SLIPS=1 drives all 200, and prints docs/slips.md
/// with FIELDSESSION_APPROVE=1.
/// </summary>
public sealed class SlipsTests
{
    private const string Document = "docs/slips.md";
    private const string Variable = "FIELDSESSION_SLIPS";
    private const int RunsOfRate = 20;
    private const int HighestPercent = 10;

    // Measured once with the same runs on the program as it was before words, bounces and refused lines were guarded.
    private const int WrongBefore = 109;
    private const int UnsaidBefore = 8;
    private const int UnsaidBeforeWithoutLooking = 786;

    private static bool IsLong => Environment.GetEnvironmentVariable(Variable) == "1";

    [Fact]
    public void The_stop_points_out_what_slips_have_left_wrong()
    {
        SlippingRunOutcome[][] looking = Driven(IsLong ? RunsOfRate : 1, looks: true);
        SlippingRunOutcome[][] without = Driven(IsLong ? RunsOfRate : 1, looks: false);
        if (IsLong)
        {
            Golden.Approve(Document, Printed(looking, without));
        }
        else
        {
            string document = File.ReadAllText(Path.Combine(Repository.Root, Document));
            Assert.Contains(OfTheSuite(looking, without), document, StringComparison.Ordinal);
            Assert.Contains($"| all {RunsOfRate * HighestPercent} runs |", document, StringComparison.Ordinal);
        }

        Assert.True(Unsaid(looking) < UnsaidBefore, string.Join('\n', All(looking).SelectMany(run => run.NotPointedOut)));
        Assert.True(Unsaid(without) < UnsaidBeforeWithoutLooking / 3);
    }

    private static SlippingRunOutcome[][] Driven(int runs, bool looks) =>
        [
            .. Enumerable
                .Range(1, HighestPercent)
                .Select(percent =>
                    Enumerable.Range(0, runs).Select(run => SlippingRun.Of((percent * 1000) + run, percent / 100.0, looks)).ToArray()
                ),
        ];

    private static IEnumerable<SlippingRunOutcome> All(SlippingRunOutcome[][] rates) => rates.SelectMany(rate => rate);

    private static int Unsaid(SlippingRunOutcome[][] rates) => All(rates).Sum(run => run.NotPointedOut.Count);

    // the first run of each rate, so that the suite sees at once where the document is no longer true
    private static string OfTheSuite(SlippingRunOutcome[][] looking, SlippingRunOutcome[][] without) =>
        Row("the first run of each rate", [.. looking.Select(rate => rate[0])], [.. without.Select(rate => rate[0])]);

    private static string Row(string what, SlippingRunOutcome[] seen, SlippingRunOutcome[] blind) =>
        $"| {what} | {seen.Sum(r => r.Keys)} | {seen.Sum(r => r.Slips)} | {seen.Sum(r => r.Meant)} | "
        + $"{seen.Sum(r => r.Wrong)} | {seen.Sum(r => r.NotPointedOut.Count)} "
        + $"| {blind.Sum(r => r.Wrong)} | {blind.Sum(r => r.NotPointedOut.Count)} |\n";

    private static string Printed(SlippingRunOutcome[][] looking, SlippingRunOutcome[][] without)
    {
        StringBuilder text = new(
            $"""
            # Slips

            For whoever asks what typing errors do to a day. Here you can see how many wrong readings slips of the finger leave behind, and which ones.

            Printed by a test that drives {RunsOfRate
                * HighestPercent} runs of eleven segments through the drive screen, key by key, with a hand that slips.
            `{Variable}=1` drives them all again.

            **The hand.** Each key may go wrong, at the rate in the first column. It is left out, doubled or swapped with the next, or a key is added. Enter comes too early,
            or only after the next reading has begun. Or the words were meant for another window. Each of these is as likely as the others.

            **The co-driver** looks at the screen once after every segment, and sees what catches the eye. That is a refused line, something in the box, another
            segment than the one ahead, the sign of a flag. The figures are not read again. Whoever sees something takes acts back until the
            screen shows what was meant, and types the rest once more, with care.

            **Wrong** is a segment that is not as meant when the run is over. **Not pointed out** is one that the stop neither asks about nor shows as
            flagged, missed or not read. In the last two columns nobody looks at the screen before the stop.


            """.ReplaceLineEndings(
                "\n"
            )
        );
        text.Append(
            "| slips for each key | keys | slips | readings | wrong | not pointed out | wrong, nobody looked | not pointed "
                + "out, nobody looked |\n|---|---|---|---|---|---|---|---|\n"
        );
        for (int i = 0; i < looking.Length; i++)
        {
            text.Append(Row($"{i + 1} %", looking[i], without[i]));
        }

        text.Append(Row($"all {RunsOfRate * HighestPercent} runs", [.. All(looking)], [.. All(without)]));
        text.Append(OfTheSuite(looking, without));
        text.Append(
            $"\nThe same runs typed into the program before it guarded words, bounces and refused lines: {WrongBefore} wrong, "
                + $"{UnsaidBefore} of them not pointed out. "
                + $"Where nobody looked, {UnsaidBeforeWithoutLooking} were not pointed out.\n"
        );
        text.Append(Left(looking));
        return text.ToString();
    }

    private static string Left(SlippingRunOutcome[][] rates)
    {
        string[] left = [.. All(rates).SelectMany(run => run.NotPointedOut)];
        return left.Length == 0
            ? ""
            : "\nA figure swapped or left out in a peak, or a flag that was not given, leaves a reading that could be right. "
                + "The large figures of what was stored, and\n"
                + "the list at the stop, are the only guard against it. "
                + "What the stop does not point out, segment by segment (`~` is Enter, `|` a "
                + $"thought):\n\n{string.Concat(left.Select(one => $"- {one}\n"))}";
    }
}
