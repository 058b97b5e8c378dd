using FieldSession.State;
using FieldSession.Store.Planning;
using FieldSession.Terminal;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Screens;

public sealed class PlanScreenTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("fieldsession-screen").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_plan_screen_looks_as_approved(int columns, int rows)
    {
        CopyDemo();
        using Tui tui = Open(columns, rows);
        tui.Keys(Down(49)).Keys("<CursorRight><CursorRight>");
        Golden.Approve($"tests/FieldSession.Tests/Screens/Pages/plan-{columns}x{rows}.txt", tui.Screen + "\n");
    }

    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_orders_look_as_approved(int columns, int rows)
    {
        CopyDemo();
        using Tui tui = Open(columns, rows);
        tui.Keys("<Ctrl+O><CursorDown>");
        Golden.Approve($"tests/FieldSession.Tests/Screens/Pages/plan-orders-{columns}x{rows}.txt", tui.Screen + "\n");
    }

    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_limits_look_as_approved(int columns, int rows)
    {
        CopyDemo();
        using Tui tui = Open(columns, rows);
        tui.Keys("<Ctrl+T><Ctrl+T><CursorDown><CursorDown>6,5<Enter>a hill road<Enter>");
        Golden.Approve($"tests/FieldSession.Tests/Screens/Pages/plan-limits-{columns}x{rows}.txt", tui.Screen + "\n");
    }

    [Theory]
    [InlineData("", "the study's short name; empty: the folder's name")]
    [InlineData("<CursorDown><CursorDown>", "steady, impact or all; empty: steady")]
    [InlineData("<CursorDown><CursorDown><CursorDown>", "separated by ;")]
    [InlineData("<CursorDown><CursorDown><CursorDown><CursorDown>", "empty: 1.0")]
    [InlineData("<Ctrl+T><CursorRight>", "smooth, coarse, concrete, rough, cobble, impact")]
    [InlineData("<End>", "spoilt_uneven_points: 0 to 100; empty: 20")]
    [InlineData("<End><Home>", "the study's short name")]
    public void What_a_cell_takes_is_said_where_nothing_is_wrong(string keys, string hint)
    {
        CopyDemo();
        using Tui tui = Open();
        tui.Keys(keys);
        Assert.Contains(hint, tui.Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    public void The_cell_under_the_cursor_is_seen_whole_on_a_narrow_screen_too(int columns, int rows)
    {
        CopyDemo();
        using Tui tui = Open(columns, rows);
        tui.Keys("<Ctrl+T>" + string.Concat(Enumerable.Repeat("<CursorRight>", 6)));
        Assert.Contains(
            "start_mark",
            tui.Screen.Split('\n').Single(line => line.Contains(" segment  ", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
        Assert.Contains("town sign with the he", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("= town sign with the", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_down_and_up_comes_back_to_the_same_row_and_home_moves_within_the_box()
    {
        CopyDemo();
        EditedPlan table = new(_folder, _ => []);
        using Tui tui = Open(80, 24, table);
        tui.Keys("<CursorDown><PageDown><PageUp>x<Home>y<Enter>");
        Assert.Equal("yx", table.Sheet.Fields[1].Text);
    }

    [Fact]
    public void A_limit_and_its_reason_are_typed_side_by_side_and_written_to_their_tables()
    {
        CopyDemo();
        EditedPlan table = new(_folder, _ => []);
        using Tui tui = Open(80, 24, table);
        tui.Keys("<Ctrl+T><Ctrl+T>0,4<Enter>");
        Assert.Contains(
            table.Sheet.Remarks,
            remark => remark.Row == table.Sheet.FirstLimit && remark.Words.Contains("without a reason", StringComparison.Ordinal)
        );
        tui.Keys("old meter<Enter><Ctrl+S>");
        Limits limits = PlanFolder.Read(_folder).Plan!.Limits;
        Assert.Equal((0.4, "old meter"), (limits.CalibrationDriftWarnDb, limits.Reasons!["calibration_drift_warn_db"]));
        tui.Keys("<CursorUp>900<Enter>");
        Assert.Contains("1 to fix", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_weak_is_counted_and_reached_by_one_key()
    {
        CopyDemo();
        string plan = Path.Combine(_folder, "plan.toml");
        File.WriteAllText(plan, File.ReadAllText(plan).Replace("R 1 R 1 R 1 R 1 R", "R 1 R 1 R 1", StringComparison.Ordinal));
        using Tui tui = Open();
        Assert.Contains("good, 2 to look at (Ctrl+W)", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<Ctrl+W>");
        Assert.Contains("1 of 2: the order does not begin and end with R", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<Ctrl+W>");
        Assert.Contains("2 of 2: a steady drift does not cancel", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<Ctrl+W><Home>");
        Assert.Contains("the study's short name", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void An_order_is_proposed_judged_and_taken_by_its_number()
    {
        CopyDemo();
        EditedPlan table = new(_folder, _ => []);
        using Tui tui = Open(80, 24, table);
        tui.Keys("<Ctrl+O>");
        Assert.Contains("R 1 R 1 R", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("could show", tui.Screen, StringComparison.Ordinal);
        tui.Keys("99<Enter>");
        Assert.Contains("there are orders 1 to", tui.Screen, StringComparison.Ordinal);
        tui.Keys("3<Enter>");
        Assert.Contains("order 3 is in the plan", tui.Screen, StringComparison.Ordinal);
        Assert.Empty(table.Sheet.Remarks);
        string taken = table.Sheet.Fields.Single(field => field.Label == "order of runs").Text;
        tui.Keys("<Ctrl+O><CursorDown><Esc>");
        Assert.Equal(taken, table.Sheet.Fields.Single(field => field.Label == "order of runs").Text);
        tui.Keys("<Ctrl+S>");
        Assert.Equal(taken, string.Join(' ', PlanFolder.Read(_folder).Plan!.Order));
    }

    [Fact]
    public void An_order_is_taken_with_the_names_of_those_who_share_the_wheel()
    {
        CopyDemo();
        EditedPlan table = new(_folder, _ => []);
        using Tui tui = Open(80, 24, table);
        tui.Keys("<Ctrl+O>5 Ro, Una<Enter>");
        Assert.Contains("'Una' is not in the crew; the crew is Ro, Tam", tui.Screen, StringComparison.Ordinal);
        tui.Keys("5 Ro, Tam<Enter><Ctrl+S>");
        Plan plan = PlanFolder.Read(_folder).Plan!;
        Assert.Equal(("R 1 1 R R 1 1 R", 4), (string.Join(' ', plan.Order), plan.DriverOrder!.Count(name => name == "Ro")));
    }

    [Fact]
    public void Leaving_with_something_unwritten_needs_the_key_twice()
    {
        CopyDemo();
        using Tui tui = Open();
        tui.Keys("XX<Enter><Ctrl+Q>");
        Assert.Contains("the plan is not written", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<CursorDown><Ctrl+Q>");
        Assert.Contains("the plan is not written", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void An_order_that_can_not_be_is_replaced_by_a_proposed_one_but_a_route_is_needed()
    {
        using Tui tui = Open();
        tui.Keys("<Ctrl+O>");
        Assert.Contains("Fix the plan first", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<Ctrl+N>Mill lane<Enter>smooth<Enter>80<Enter>900<Enter>").Keys("<Home>" + Down(8) + "R 7 R<Enter>");
        Assert.Contains("1 to fix", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<Ctrl+O>1<Enter>");
        Assert.DoesNotContain("to fix", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void The_help_opens_by_F1_and_a_question_mark_goes_into_the_box()
    {
        CopyDemo();
        EditedPlan table = new(_folder, _ => []);
        using Tui tui = Open(80, 24, table);
        tui.Keys("<F1>");
        Assert.Contains("proposes orders of runs", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<F1><CursorDown>why?<Enter>");
        Assert.Equal("why?", table.Sheet.Fields[1].Text);
    }

    [Fact]
    public void From_nothing_to_a_plan_that_can_be_driven_by_keys_alone()
    {
        using Tui tui = Open();
        Assert.Contains("1 to fix", tui.Screen, StringComparison.Ordinal);
        tui.Keys("XX-7<Enter>Is it louder?<Enter>steady<Enter><Enter>0,8<Enter>");
        tui.Keys(Down(5)).Keys("Ro; Tam<Enter>Ilse<Enter>");
        tui.Keys("<Ctrl+N>Mill lane<Enter>smooth<Enter>80<Enter>900<Enter>80<Enter>");
        Assert.Contains("40.5", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("not written, good", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<Ctrl+S>");
        Assert.Contains("written to", tui.Screen, StringComparison.Ordinal);
        Plan plan = PlanFolder.Read(_folder).Plan!;
        Assert.Equal(("XX-7", "Is it louder?", 0.8, "Ilse"), (plan.StudyName, plan.Question, plan.MarginDb, plan.Custodian));
        Assert.Equal(["Ro", "Tam"], plan.Crew.Select(member => member.Name));
        Assert.Equal("Mill lane", Assert.Single(plan.Route).Name);
    }

    [Fact]
    public void A_segment_is_copied_moved_and_deleted_in_its_place()
    {
        CopyDemo();
        EditedPlan table = new(_folder, _ => []);
        using Tui tui = Open(120, 40, table);
        tui.Keys(Down(49)).Keys("<Ctrl+K>");
        Assert.Equal("Tarnholt road 2", table.Sheet.Segments[2][0]);
        tui.Keys("<Ctrl+L>");
        Assert.Equal("Tarnholt road 2", table.Sheet.Segments[3][0]);
        tui.Keys("<Ctrl+U><Ctrl+U>");
        Assert.Equal("Tarnholt road 2", table.Sheet.Segments[1][0]);
        tui.Keys("<Ctrl+D>");
        Assert.Equal(PlanFolder.Read(_folder).Plan!.Route.Select(segment => segment.Name), table.Sheet.Segments.Select(row => row[0]));
    }

    [Fact]
    public void A_warning_and_a_problem_are_shown_at_once_where_they_are()
    {
        CopyDemo();
        using Tui tui = Open();
        tui.Keys(Down(49)).Keys("<CursorRight><CursorRight><CursorRight>50<Enter>");
        tui.Keys("<CursorLeft>");
        Assert.Contains("lasts 2.3 s at 80 km/h", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<CursorLeft>95<Enter>");
        Assert.Contains("the test speed is above the posted limit", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("1 to fix", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cell_is_brought_into_the_box_and_a_lone_hyphen_empties_it()
    {
        CopyDemo();
        EditedPlan table = new(_folder, _ => []);
        using Tui tui = Open(80, 24, table);
        tui.Keys("<Tab>B<Enter>");
        Assert.Equal("QW-0114B", table.Sheet.Fields[0].Text);
        tui.Keys("-<Enter>");
        Assert.Equal("", table.Sheet.Fields[1].Text);
    }

    [Fact]
    public void Once_a_study_has_begun_its_plan_is_fixed()
    {
        using Tui tui = new(new ADay(), screen: ScreenName.Plan);
        Assert.Contains("The plan of a study that has begun is fixed", tui.Screen, StringComparison.Ordinal);
        tui.Keys("x<Enter><Ctrl+N>");
        Assert.Contains("The plan of a study that has begun is fixed", tui.Screen, StringComparison.Ordinal);
    }

    private Tui Open(int columns = 80, int rows = 24, EditedPlan? table = null)
    {
        ADay day = new();
        return new Tui(
            day.Book,
            day.Clock,
            desk => desk with { PlanTable = table ?? new EditedPlan(_folder, _ => []) },
            columns,
            rows,
            ScreenName.Plan
        );
    }

    private static string Down(int rows) => string.Concat(Enumerable.Repeat("<CursorDown>", rows));

    private void CopyDemo()
    {
        foreach (string name in new[] { "plan.toml", "route.csv" })
        {
            File.Copy(Path.Combine(Repository.Root, "demo", "quillmere", name), Path.Combine(_folder, name));
        }
    }
}
