using FieldSession.Journal;
using FieldSession.Store.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journal;

/// <summary>
/// Studies outlive programs: the demo day as programs of the past wrote it, one for each form that a study ever had, is kept as test data
/// and read to the end by this one. The folders are named by the day and hour of the program that wrote them; three have the LiteDB file as
/// well, from each form of that.
/// </summary>
public sealed class PastStudiesTests
{
    private static string Kept => Path.Combine(Repository.Root, "tests/FieldSession.Tests/Journal/Past");

    public static TheoryData<string> Past =>
        [.. Directory.GetDirectories(Kept).Select(folder => Path.GetFileName(folder)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Past))]
    public void A_study_of_the_past_is_reviewed_reported_exported_continued_and_verified(string past)
    {
        using AtThePrompt day = Laid(past);

        Assert.DoesNotContain("newer program", day.Must(0, ["review", day.Study]), StringComparison.Ordinal);
        day.Must(0, ["report", day.Study, "--out", day.Here("report")]);
        Assert.Contains("STIFFENED (862) against STANDARD (417)", File.ReadAllText(day.Here("report/report.md")), StringComparison.Ordinal);
        day.Must(0, ["export", day.Study, "--out", day.Here("tables")]);
        day.Must(0, ["enter", day.Study], "; read again years later\n");
        Assert.Contains("the journal holds", day.Must(0, ["verify", day.Study]), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Past))]
    public void Each_line_of_the_past_is_a_fact_that_is_still_known(string past)
    {
        using AtThePrompt day = Laid(past);
        IReadOnlyList<Line> lines = JournalCheck.Of(day.Study).LinesToFirstFailing;

        Assert.Equal(File.ReadLines(Path.Combine(Kept, past, "day.journal")).Count(), lines.Count);
        Assert.DoesNotContain(lines, line => EntryKinds.EntryIn(line) is EntryByNewerProgram);
    }

    private static AtThePrompt Laid(string past)
    {
        AtThePrompt day = new();
        foreach (string file in Directory.GetFiles(Path.Combine(Kept, past)))
        {
            File.Copy(file, day.Here(Path.GetFileName(file)));
        }

        return day;
    }
}
