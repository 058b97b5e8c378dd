using FieldSession.Terminal;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Screens;

public sealed class EveryBoxTakesPastedLinesTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("fieldsession-pasted").FullName;

    public static TheoryData<string> Screens => [.. AllScreens.Rows.Select(row => row.Name)];

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(Screens))]
    public void As_one_line_and_loses_none(string screen)
    {
        ADay day = new();
        using Tui tui = new(day.Book, day.Clock, desk => desk with { PlanTable = new EditedPlan(_folder, _ => []) }, screen: screen);
        tui.Paste("first\r\nsecond\nthird");
        Assert.Contains("first second third", tui.Screen, StringComparison.Ordinal);
    }
}
