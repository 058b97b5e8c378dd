using System.Diagnostics;
using FieldSession.Store.Journaling;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Crashes;
using FieldSession.Tests.Journaling;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.House;

/// <summary>
/// Through how many files of the program one has to read to follow a key to the disk, or a command to what it prints: the files on the
/// stack when the disk is flushed, or the first line is printed.
/// </summary>
public sealed class HopsTests
{
    private const int MostOfAKey = 12;
    private const int MostOfACommand = 6;

    private static readonly string Source = Path.Combine(Repository.Root, "src") + Path.DirectorySeparatorChar;

    [Fact]
    public void A_reading_goes_from_its_Enter_to_the_disk_through_at_most_twelve_files()
    {
        ADay day = new ADay().Ready().Typed("run 417");
        string[] way = [];
        MemoryDisk disk = new()
        {
            LiesAtFlush = path =>
            {
                way = path == CrashDay.Paths.Journal ? FilesOnTheStack() : way;
                return false;
            },
        };
        using (StudyFile begun = CrashDay.Create(disk))
        {
            day.Book.Lines.ToList().ForEach(begun.Append);
        }

        using StudyFile file = CrashDay.Open(disk);
        using Tui tui = new(Logbook.Open(file, day.Clock, "00000000000000aa"), day.Clock, desk => desk);
        way = [];

        tui.Keys("5860<Enter>");

        Assert.True(way.Length is > 5 and <= MostOfAKey, string.Join(", ", way));
    }

    [Theory]
    [InlineData("review")]
    [InlineData("compare")]
    [InlineData("report", "--out")]
    [InlineData("export", "--out")]
    [InlineData("verify")]
    [InlineData("archive")]
    public void A_command_goes_to_the_first_line_that_it_prints_through_at_most_six_files(string command, string? option = null)
    {
        using Folder folder = new();
        new EndlessDay(folder).Begin();
        Outside crew = new("run 417", "5860", "6163", "71", "run 862", "5860", "6163", "71");
        crew.Run("enter", folder.Study);
        string[] way = [];
        using Watched output = new(() => way = way.Length > 0 ? way : FilesOnTheStack());
        string[] words = [command, command == "archive" ? folder.Path : folder.Study];

        CommandLine.Run(option is null ? words : [.. words, option, folder["out"]], crew.World with { Output = output });

        Assert.True(way.Length is > 0 and <= MostOfACommand, string.Join(", ", way));
    }

    private static string[] FilesOnTheStack() =>
        [
            .. new StackTrace(fNeedFileInfo: true)
                .GetFrames()
                .Select(frame => frame.GetFileName())
                .OfType<string>()
                .Where(file => file.StartsWith(Source, StringComparison.Ordinal))
                .Distinct(),
        ];

    private sealed class Watched(Action seen) : StringWriter
    {
        public override void Write(char value) => seen();

        public override void Write(string? value) => seen();

        public override void WriteLine(string? value) => seen();
    }
}
