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
        tui.Keys(Down(24)).Keys("<CursorRight><CursorRight>");
        Golden.Approve($"tests/FieldSession.Tests/Screens/Pages/plan-{columns}x{rows}.txt", tui.Screen + "\n");
    }

    [Fact]
    public void From_nothing_to_a_plan_that_can_be_driven_by_keys_alone()
    {
        using Tui tui = Open();
        Assert.Contains("1 to mend", tui.Screen, StringComparison.Ordinal);
        tui.Keys("XX-7<Enter>Is it louder?<Enter>steady<Enter>0,8<Enter>");
        tui.Keys(Down(4)).Keys("Ro; Tam<Enter>Ilse<Enter>");
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
        EditedPlan table = new(_folder);
        using Tui tui = Open(120, 40, table);
        tui.Keys(Down(23)).Keys("<Ctrl+K>");
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
        tui.Keys(Down(23)).Keys("<CursorRight><CursorRight><CursorRight>50<Enter>");
        tui.Keys("<CursorLeft>");
        Assert.Contains("lasts 2.3 s at 80 km/h", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<CursorLeft>95<Enter>");
        Assert.Contains("the test speed is above the posted limit", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("1 to mend", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cell_is_brought_into_the_box_and_a_lone_hyphen_empties_it()
    {
        CopyDemo();
        EditedPlan table = new(_folder);
        using Tui tui = Open(80, 24, table);
        tui.Keys("<Tab>B<Enter>");
        Assert.Equal("QW-0114B", table.Sheet.Fields[0].Text);
        tui.Keys("-<Enter>");
        Assert.Equal("", table.Sheet.Fields[1].Text);
    }

    [Fact]
    public void Once_a_study_has_begun_its_plan_stands()
    {
        using Tui tui = new(new ADay(), screen: KeyTable.Plan);
        Assert.Contains("The plan of a study that is begun stands", tui.Screen, StringComparison.Ordinal);
        tui.Keys("x<Enter><Ctrl+N>");
        Assert.Contains("The plan of a study that is begun stands", tui.Screen, StringComparison.Ordinal);
    }

    private Tui Open(int columns = 80, int rows = 24, EditedPlan? table = null)
    {
        ADay day = new();
        return new Tui(day.Book, day.Clock, desk => desk with { PlanTable = table ?? new EditedPlan(_folder) }, columns, rows, KeyTable.Plan);
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
