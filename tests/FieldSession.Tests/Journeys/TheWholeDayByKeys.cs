using FieldSession.State;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journeys;

/// <summary>The demo day on the screens, at 80x24, every act by keys: the same day as by lines.</summary>
public sealed class TheWholeDayByKeys
{
    private const string Parked = "parked<Enter>";

    private static readonly string[] BehindAColon = ["weather ", "calibration ", "trials ", "rate ", "slip "];

    [Fact]
    public void The_day_by_keys_ends_in_the_same_report_as_the_day_by_lines()
    {
        using ADemoDay day = new();
        using Tui tui = day.Screens();
        List<string> blind = [];
        tui.Watcher = blind.Add;
        Drive(tui, day);
        Review(tui);
        Predict(tui, day);
        tui.Watcher = null;
        Reveal(tui, day, blind);

        // More screens than keys that a whole day takes would mean that the search below saw too few of them.
        Assert.True(blind.Count > 600, $"{blind.Count} screens");
        Assert.All(
            blind,
            screen =>
            {
                Assert.DoesNotContain("STANDARD", screen, StringComparison.Ordinal);
                Assert.DoesNotContain("STIFFENED", screen, StringComparison.Ordinal);
            }
        );

        using ADemoDay byLines = TheWholeDayByEnter.Driven();
        Assert.Contains("report.md", tui.Keys("<F7>w").Screen, StringComparison.Ordinal);
        Assert.Equal(byLines.Book.Lines.Select(line => line.Json), day.Book.Lines.Select(line => line.Json));
        Assert.Equal(ReportCommand.Markdown(byLines.Book), File.ReadAllText(day.ReportPath));
    }

    // A line is typed as a co-driver types it; its Enter falls on the time at which the line by lines was written.
    private static void At(Tui tui, ADemoDay day, DateTimeOffset at, string keys)
    {
        tui.Keys(keys);
        day.Clock.Now = at - TimeSpan.FromMilliseconds(500);
        tui.Keys("<Enter>");
    }

    private static void Drive(Tui tui, ADemoDay day)
    {
        foreach ((DateTimeOffset at, string line) in ADemoDay.Lines("quillmere/day.txt"))
        {
            bool startsRun = line.StartsWith("run ", StringComparison.Ordinal);
            bool isWords = BehindAColon.Any(word => line.StartsWith(word, StringComparison.Ordinal));
            At(
                tui,
                day,
                at,
                startsRun ? ""
                    : isWords ? $":{line}"
                    : line
            );
        }

        Assert.True(day.Book.Study.OrderDriven);
        Assert.Contains("F4     the order is driven and the meter checked", tui.Screen, StringComparison.Ordinal);
    }

    private static void Review(Tui tui)
    {
        Assert.Contains("Type 'parked' and press Enter", tui.Keys("<F4>").Screen, StringComparison.Ordinal);
        Assert.Contains("give or take", tui.Keys(Parked).Screen, StringComparison.Ordinal);
        Assert.Contains("MAIN MEASURE: the main segments", tui.Keys("<PageDown>").Screen, StringComparison.Ordinal);
        tui.Keys("<PageDown><PageDown><End><CursorUp><Home>");
        Assert.Contains("63-69", tui.Keys("2<Enter>").Screen, StringComparison.Ordinal);
        Assert.Contains("F5: lock the predictions", tui.Keys("<Esc>").Screen, StringComparison.Ordinal);
    }

    private static void Predict(Tui tui, ADemoDay day)
    {
        DateTimeOffset[] at = [.. ADemoDay.Lines("quillmere/evening.txt").Select(line => line.At)];
        tui.Keys("<F5>1<Enter>2<Enter>4<Enter><Enter>n<Enter>1<Enter>not worth it for town<Enter>");
        At(tui, day, at[0], "");
        Assert.Contains("locked, hidden", tui.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("not worth it", tui.Screen, StringComparison.Ordinal);
        tui.Keys("1<Enter>2<Enter>3<Enter><Enter><Enter>1<Enter><Enter>");
        At(tui, day, at[1], "");
        Assert.Contains("not worth it for town", tui.Screen, StringComparison.Ordinal);
        Assert.Equal(Stage.Predicted, day.Book.Study.Stage);
    }

    private static void Reveal(Tui tui, ADemoDay day, List<string> blind)
    {
        tui.Keys($"<F6>{day.KeyPath}<Enter>not the passphrase<Enter>");
        Assert.Contains("wrong passphrase", tui.Screen, StringComparison.Ordinal);
        blind.Add(tui.Screen);
        tui.Keys($"{ADemoDay.Demo.Passphrase}");
        Assert.DoesNotContain("quillmere custodian", tui.Screen, StringComparison.Ordinal);
        blind.Add(tui.Screen);
        tui.Keys("<Enter>");
        blind.Add(tui.Screen);
        tui.Keys("STANDARD<Enter>STIFFENED<Enter>Ro<Enter>Ilse<Enter>");
        blind.Add(tui.Screen);
        At(tui, day, TheWholeDayByEnter.KeyOpenedAt, "");
        Assert.Contains("ok  it gives the published commitment", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("STIFFENED", tui.Screen, StringComparison.Ordinal);
    }
}
