using FieldSession.Sealing;
using FieldSession.State;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Custodian;

public sealed class TheFittingListTests
{
    private static readonly KeyLine Reference = new(new SpecCode("417"), "STANDARD", "KTXM");
    private static readonly KeyLine Other = new(new SpecCode("862"), "STIFFENED", "CDFH");

    [Fact]
    public void On_one_car_a_set_stays_on_where_the_next_run_has_the_same()
    {
        FittingRow[] rows = [.. FittingList.Of(Key(Day("R 1 1 R")))];
        Assert.Equal(["417", "862", "862", "417"], rows.Select(row => row.Line.Code.Digits));
        Assert.Equal(
            [FittingChange.FitAll, FittingChange.ChangeAll, FittingChange.LeaveOn, FittingChange.ChangeAll],
            rows.Select(row => row.Change)
        );
        Assert.Equal("STIFFENED", rows[3].Before!.Spec);
    }

    [Fact]
    public void Each_of_two_cars_is_followed_by_itself()
    {
        FittingRow[] rows = [.. FittingList.Of(Key(Day("R 1 1 R", "X", "Y", "X", "Y")))];
        Assert.Equal(
            [FittingChange.FitAll, FittingChange.FitAll, FittingChange.ChangeAll, FittingChange.ChangeAll],
            rows.Select(row => row.Change)
        );
        Assert.Equal(["X", "Y", "X", "Y"], rows.Select(row => row.Car));
        Assert.Equal("STANDARD", rows[2].Before!.Spec);
    }

    [Fact]
    public void After_a_refit_the_list_begins_with_what_is_on_the_car_now()
    {
        FittingPlan day = Day("R 1 R 1 R 1") with { FirstRun = 4, OnCars = [new SetOnCar(null, new SpecCode("531"), null)] };
        FittingRow first = FittingList.Of(Key(day)).First();
        Assert.Equal((4, FittingChange.LookAtMark), (first.Run, first.Change));
        KeySheet earlier = new(
            "T-1",
            [new KeyLine(new SpecCode("531"), "STIFFENED", "CDFH"), new KeyLine(new SpecCode("290"), "STANDARD", "KTXM")],
            "STANDARD",
            new string('0', 32)
        );
        Assert.Equal(FittingChange.LeaveOn, FittingList.Of(Key(day), earlier).First().Change);
        Assert.Equal(3, FittingList.Of(Key(day), earlier).Count());
    }

    [Fact]
    public void A_row_that_slips_into_a_message_names_no_spec()
    {
        FittingRow row = FittingList.Of(Key(Day("R 1"))).Last();
        Assert.Equal("run 2: 862", row.ToString());
        Assert.Equal("417", $"{row.Before}");
    }

    [Fact]
    public void The_table_has_a_row_for_each_place_and_a_wrong_passphrase_prints_nothing()
    {
        using AtThePrompt prompt = AWholeDay.Sealed("BULL, \"LARGE\"\n-MINUS\n");
        Dictionary<SpecCode, string> specs = prompt.SpecsIn("a.key");
        string[] rows = prompt
            .Must(0, ["fitting", prompt.Here("a.key"), "--csv"])
            .Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal("fitting,place,code,spec,mark", rows[0]);
        Assert.StartsWith($"1,R,{prompt.Now().CodeAsked}", rows[1]);
        Assert.Equal(3, rows.Length);
        string large = rows.Single(row => row.Contains("LARGE", StringComparison.Ordinal));
        Assert.EndsWith("\"BULL, \"\"LARGE\"\"\",\"BULL, \"\"LARGE\"\"\"", large);
        Assert.Contains(
            specs.Single(line => line.Value == "-MINUS").Key.Digits,
            rows.Single(row => row.EndsWith("'-MINUS,'-MINUS", StringComparison.Ordinal))
        );
        string no = prompt.Must(1, ["fitting", prompt.Here("a.key"), "--csv"], passphrase: "four loud words here");
        Assert.DoesNotContain("fitting,place", no);
        Assert.DoesNotContain("MINUS", no);
    }

    [Fact]
    public void Without_a_terminal_it_writes_only_on_a_further_word_and_names_it()
    {
        using AtThePrompt prompt = AWholeDay.Sealed();
        string no = prompt.Must(2, ["fitting", prompt.Here("a.key")]);
        Assert.DoesNotContain("BETA", no);
        Assert.All(new[] { "--print", "--csv", "--out" }, word => Assert.Contains(word, no));
        Assert.Contains("BETA, mark BETA", prompt.Must(0, ["fitting", prompt.Here("a.key"), "--print"]));
    }

    [Fact]
    public void The_sheet_is_private_never_over_another_file_and_its_slips_name_the_code_alone()
    {
        using AtThePrompt prompt = AWholeDay.Sealed();
        string sheet = Elsewhere("sheet.txt");
        prompt.Must(0, ["fitting", prompt.Here("a.key"), "--out", sheet]);
        string text = File.ReadAllText(sheet);
        string[] slips = [.. text.Split("- - - -").Skip(1).Where(slip => slip.Contains("run", StringComparison.Ordinal))];
        Assert.Equal(6, slips.Length);
        Assert.All(slips, slip => Assert.Matches(@"run \d of 6:  code \d\d\d\s*$", slip));
        Assert.All(slips, slip => Assert.DoesNotContain("A", slip.ToUpperInvariant().Replace("CODE", "", StringComparison.Ordinal)));
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(sheet));
        }

        Assert.Contains("never written over", prompt.Must(2, ["fitting", prompt.Here("a.key"), "--out", sheet]));
        Assert.Equal(text, File.ReadAllText(sheet));
        Directory.Delete(Path.GetDirectoryName(sheet)!, recursive: true);
    }

    [Theory]
    [InlineData("sheet.txt")]
    [InlineData("plan/sheet.txt")]
    public void Beside_the_study_or_inside_its_folder_no_sheet_is_written(string name)
    {
        using AtThePrompt prompt = AWholeDay.Sealed();
        Assert.Contains("day.study", prompt.Must(2, ["fitting", prompt.Here("a.key"), "--out", prompt.Here(name)]));
        Assert.False(File.Exists(prompt.Here(name)));
        Assert.DoesNotContain("BETA", prompt.Said);
    }

    [Theory]
    [InlineData("list.txt", "is in that folder")]
    [InlineData("plan/list.txt", "inside the folder of the study")]
    [InlineData("", "does not say where")]
    public void Redirected_into_the_study_s_folder_or_nobody_knows_where_it_says_no_and_writes_nothing(string file, string why)
    {
        using AtThePrompt prompt = AWholeDay.Sealed();
        foreach (string word in new[] { "--csv", "--print" })
        {
            StringWriter output = new();
            StringWriter error = new();
            int code = CommandLine.Run(
                ["fitting", prompt.Here("a.key"), word],
                prompt.Outside() with
                {
                    Output = output,
                    Error = error,
                    Passphrase = AtThePrompt.Passphrase,
                    OutputFile = file.Length == 0 ? "" : prompt.Here(file),
                }
            );
            Assert.Equal(2, code);
            Assert.Contains(why, error.ToString());
            Assert.Empty(output.ToString());
        }
    }

    [Fact]
    public void At_a_terminal_it_first_asks_whether_the_crew_can_see_the_screen()
    {
        using AtThePrompt prompt = AWholeDay.Sealed();
        StringWriter error = new();
        int code = CommandLine.Run(
            ["fitting", prompt.Here("a.key")],
            prompt.Outside("yes\n") with
            {
                Error = error,
                Passphrase = AtThePrompt.Passphrase,
                HasTerminal = true,
            }
        );
        Assert.Equal(1, code);
        Assert.Contains("can anybody in the crew see this screen?", error.ToString());
        Assert.Contains("nothing is shown", error.ToString());
    }

    [Fact]
    public void On_the_screen_it_is_a_page_for_the_sets_and_one_for_each_run()
    {
        using FittingTui tui = new(Key(Day("R 1 1 R")));
        Assert.Contains("R      417    KTXM          STANDARD", tui.Screen);
        Assert.Contains("page 1 of 5", tui.Screen);
        tui.Keys("<Enter>");
        Assert.Contains("run 1 of 4", tui.Screen);
        Assert.Contains("fit all four", tui.Screen);
        tui.Keys("<Enter><Enter>");
        Assert.Contains("leave all four on", tui.Screen);
        tui.Keys("<PageUp>");
        Assert.Contains("change all four: STANDARD comes off", tui.Screen);
        tui.Keys("<Enter><Enter><Enter><Enter>");
        Assert.Contains("page 5 of 5", tui.Screen);
        Assert.Contains("this is the last page", tui.Screen);
        Assert.All(tui.Rows, row => Assert.True(row.Length <= 80, row));
        tui.Keys("<Esc>");
        Assert.True(tui.HasEnded);
    }

    private static string Elsewhere(string name) => Path.Combine(Directory.CreateTempSubdirectory("fieldsession-custodian").FullName, name);

    private static FittingPlan Day(string order, params string[] cars) =>
        new(
            1,
            new string('a', 64),
            [.. order.Split(' ').Select(place => place == "R" ? Place.Reference : new Place(1))],
            cars.Length > 0 ? [.. cars] : null
        );

    private static KeySheet Key(FittingPlan day) => new("T-1", [Reference, Other], "STANDARD", new string('0', 32), day);
}
