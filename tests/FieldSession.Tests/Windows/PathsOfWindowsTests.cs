using FieldSession.Tests.Faults;

namespace FieldSession.Tests.Windows;

/// <summary>
/// Names and texts as Windows has them: drives, shares, umlauts and blanks in names, line ends of two characters, letters through pipes.
/// </summary>
[Collection(FaultTests.Collection)]
public sealed class PathsOfWindowsTests(Stages stages) : IClassFixture<Stages>
{
    [WineTheory]
    [InlineData("a drive", "day.study")]
    [InlineData("a share", "day.study")]
    [InlineData("a drive", "Prüfung Süd 7 (naß).study")]
    [InlineData("a share", "Prüfung Süd 7 (naß).study")]
    public void A_study_is_made_sealed_entered_exported_and_verified_on(string place, string name)
    {
        using ALaidStage laid = stages.Lay(DayStage.Planned);
        string folder = place == "a drive" ? Wine.OnDriveZ(laid.Path) : Wine.AsShare(laid.Path);
        string study = $@"{folder}\{name}";

        Must(laid, 0, ["start", $@"{folder}\plan", study]);
        Must(laid, 0, ["codes", study, $@"{folder}\away.codes"]);
        Must(laid, 0, ["enter", study], "; naß und ±\n");
        Must(laid, 0, ["export", study, "--out", $@"{folder}\Tabellen für alle"]);
        Assert.True(File.Exists(laid.Here("Tabellen für alle/notes.csv")));
        Must(laid, 0, ["verify", study]);
        Assert.Equal("naß und ±", Logbook.Fold(Invariant.LinesOf(laid.Here(name))).Notes[^1].Words);
    }

    [WineFact]
    public void Letters_go_through_pipes_as_on_every_system()
    {
        using ALaidStage laid = stages.Lay(DayStage.Driven);
        string said = Must(laid, 0, ["enter", "day.study"], "; Größe ±3 – naß\n").Said;
        Assert.Contains("Größe ±3 – naß", said, StringComparison.Ordinal);
        Assert.DoesNotContain('\r', said + Must(laid, 0, ["review", "day.study"]).Said);
        Must(laid, 0, ["export", "day.study", "--out", "new"]);
        Assert.Contains("Größe ±3 – naß", File.ReadAllText(laid.Here("new/notes.csv")), StringComparison.Ordinal);
    }

    [WineFact]
    public void A_plan_and_tables_with_line_ends_of_Windows_give_the_same_study()
    {
        using ALaidStage plain = stages.Lay(DayStage.Planned);
        using ALaidStage laid = stages.Lay(DayStage.Planned);
        foreach (string file in new[] { "plan/plan.toml", "plan/route.csv", "specs.txt", "legs.csv" }.Select(laid.Here).Where(File.Exists))
        {
            File.WriteAllText(file, File.ReadAllText(file).ReplaceLineEndings("\r\n"));
        }

        foreach (ALaidStage day in new[] { plain, laid })
        {
            Must(day, 0, ["start", "plan", "day.study"]);
            Must(day, 0, ["codes", "day.study", "away.codes"]);
            Must(day, 0, ["enter", "day.study"], day == laid ? "; a note\r\n" : "; a note\n");
        }

        static string Facts(ALaidStage day) =>
            string.Join('\n', Invariant.LinesOf(day.Here("day.study")).Select(line => $"{EntryKinds.EntryIn(line)}"));
        Assert.Equal(Facts(plain), Facts(laid));
    }

    [WineFact]
    public void Readings_with_line_ends_of_Windows_are_compared_to_the_same_numbers()
    {
        using ALaidStage laid = stages.Lay(DayStage.Driven);
        Must(laid, 0, ["export", "day.study", "--out", "new"]);
        string text = File.ReadAllText(laid.Here("new/readings.csv"));
        File.WriteAllText(laid.Here("plain.csv"), text.ReplaceLineEndings("\n"));
        File.WriteAllText(laid.Here("windows.csv"), text.ReplaceLineEndings("\r\n"));
        string[] words = ["--reference", $"{stages.Codes[0]}", "--json"];

        Assert.Equal(
            Must(laid, 0, ["compare", "plain.csv", .. words]).Answers,
            Must(laid, 0, ["compare", "windows.csv", .. words]).Answers
        );
    }

    private static ProgramRun Must(ALaidStage laid, int code, string[] words, string typed = "")
    {
        ProgramRun run = ProgramRun.In(laid.Path, words, typed);
        Assert.True(run.Code == code, $"'{string.Join(' ', words)}' ended with {run.Code}, not {code}:\n{run.Said}");
        return run;
    }
}
