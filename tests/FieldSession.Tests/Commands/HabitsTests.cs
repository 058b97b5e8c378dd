using FieldSession.Measures;
using FieldSession.Store.Exports;
using FieldSession.Terminal;
using FieldSession.Terminal.Commands;
using FieldSession.Terminal.Look;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Commands;

public sealed class HabitsTests
{
    private static readonly Habits Comma = new(HasDecimalComma: true, HasTwelveHourClock: true);

    [Fact]
    public void A_decimal_comma_and_a_12_hour_clock_are_two_lines_in_a_file()
    {
        (Habits habits, string? refusal) = Habits.Of(["# mine", "", "decimal = comma", "Clock=12"]);
        Assert.Null(refusal);
        Assert.Equal(Comma, habits);
    }

    [Theory]
    [InlineData("decimal = semicolon")]
    [InlineData("clock 12")]
    [InlineData("units = miles")]
    public void A_line_that_is_no_habit_is_refused_with_its_number_and_what_to_write(string line)
    {
        (Habits habits, string? refusal) = Habits.Of(["decimal = comma", line]);
        Assert.Equal(new Habits(), habits);
        Assert.Equal(
            $"line 2: '{line}' is not a habit; write 'decimal = comma' or 'decimal = point', 'clock = 12' or 'clock = 24', "
                + "'letters = block' or 'letters = plain'",
            refusal
        );
    }

    [Fact]
    public void Block_letters_are_switched_off_for_a_screen_reader()
    {
        Habits habits = Habits.Of(["letters = plain"]).Habits;
        Assert.Equal(LetterForm.Plain, habits.Letters);
        using ADemoDay day = new ADemoDay().Typed("quillmere/day.txt");
        foreach ((int columns, int rows) in new[] { (60, 20), (80, 24), (120, 40) })
        {
            using Tui plain = new(day.Book, day.Clock, desk => desk with { Letters = habits.Letters }, columns, rows);
            Assert.DoesNotMatch("[▀▄█]", plain.Screen);
            Assert.Contains("order driven", plain.Screen, StringComparison.Ordinal);
            Assert.Contains("66-69", plain.Screen, StringComparison.Ordinal);
            using Tui large = new(day.Book, day.Clock, desk => desk, columns, rows);
            Assert.Matches("[▀▄█]", large.Screen);
        }
    }

    [Fact]
    public void Levels_scores_distances_and_consumptions_are_read_in_the_users_way() =>
        Assert.Equal(
            "58,5-60,25 dB, 7,25, 0,62 mi, 6,1 degC, 3,107 mi/kWh, 38,5 kWh",
            Comma.Follow(() =>
                $"{LevelRange.FromDb(58.5, 60.25)} dB, {Score.FromPoints(7.25)}, {Distance.FromMetres(1000).In(UnitSystem.Imperial)}, "
                + $"{Temperature.FromCelsius(6.1).In(UnitSystem.Metric)}, "
                + $"{new Consumption(20, EnergyCarrier.Electricity).In(UnitSystem.Imperial)}, "
                + $"{Energy.Of(38.5, EnergyUnit.KilowattHour)}"
            )
        );

    [Fact]
    public void The_time_of_day_is_told_on_the_users_clock()
    {
        DateTime afternoon = new(2026, 2, 3, 14, 5, 0, DateTimeKind.Utc);
        Assert.Equal("2:05 PM", Comma.Follow(() => $"{afternoon:t}"));
        Assert.Equal("14:05", new Habits().Follow(() => $"{afternoon:t}"));
    }

    [Fact]
    public void A_day_on_screens_with_a_comma_is_the_same_journal_and_the_same_report_on_disk()
    {
        (string Journal, string Report) point = AfterTheDay(new Habits());
        (string Journal, string Report) comma = AfterTheDay(Comma);
        Assert.Equal(point.Journal, comma.Journal);
        Assert.Equal(point.Report, comma.Report);
    }

    [Fact]
    public void Every_file_that_is_exported_is_the_same_whatever_the_habits_around_it() =>
        Assert.Equal(ExportedAfterTheDay(new Habits()), ExportedAfterTheDay(Comma));

    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_screens_show_them_and_nothing_runs_out_of_its_place(int columns, int rows) =>
        Comma.Follow(() =>
        {
            using ADemoDay day = new ADemoDay().Typed("quillmere/day.txt");
            day.Clock.Now = new DateTimeOffset(2026, 2, 3, 14, 5, 0, TimeSpan.Zero);
            using Tui drive = day.Screens(columns, rows);
            Assert.EndsWith("2:05 PM", drive.Screen.Split('\n')[0].TrimEnd(), StringComparison.Ordinal);
            using Tui review = day.Screens(columns, rows, "review");
            review.Keys("parked<Enter>");
            Assert.DoesNotMatch(@"[+-]\d+\.\d", review.Screen);
            Assert.True(review.Screen.Split('\n').All(line => line.TrimEnd().Length <= columns));
            return 0;
        });

    private static (string Journal, string Report) AfterTheDay(Habits habits) =>
        habits.Follow(() =>
        {
            using ADemoDay day = new ADemoDay().Typed("quillmere/day.txt").Typed("quillmere/energy.txt").Typed("quillmere/evening.txt");
            string path = ReportCommand.Write(day.Book, Path.GetDirectoryName(day.ReportPath)!);
            return (string.Join('\n', day.Journal.Lines), File.ReadAllText(path) + File.ReadAllText(Path.ChangeExtension(path, ".html")));
        });

    private static string ExportedAfterTheDay(Habits habits) =>
        habits.Follow(() =>
        {
            using ADemoDay day = new ADemoDay().Typed("quillmere/day.txt").Typed("quillmere/energy.txt");
            return Exported(day.Book);
        });

    private static string Exported(Logbook book)
    {
        string folder = Directory.CreateTempSubdirectory("fieldsession-habits").FullName;
        try
        {
            ExportFolder.Write(folder, ExportSource.Of(book), CancellationToken.None);
            return string.Join(
                '\n',
                Directory
                    .GetFiles(folder)
                    .Order(StringComparer.Ordinal)
                    .Select(path => $"{path[folder.Length..]}\n{File.ReadAllText(path)}")
            );
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
