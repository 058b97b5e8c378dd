using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journeys;

/// <summary>The demo day from the shell: every line through 'enter', then the evening's commands.</summary>
public sealed class TheWholeDayByEnter
{
    /// <summary>When the key is opened, whichever way the day is driven.</summary>
    internal static DateTimeOffset KeyOpenedAt => new(2026, 2, 3, 19, 0, 0, TimeSpan.Zero);

    [Fact]
    public void The_day_goes_from_calibration_to_the_report_with_the_names_in_it()
    {
        using ADemoDay day = Driven();
        string report = File.ReadAllText(ReportCommand.Write(day.Book, Path.GetDirectoryName(day.ReportPath)!));
        Assert.Contains("STIFFENED (862)", report, StringComparison.Ordinal);
        Assert.Contains("they agree with the key", report, StringComparison.Ordinal);
        Assert.Contains("The key gives the published commitment", report, StringComparison.Ordinal);
    }

    [Fact]
    public void Before_the_reveal_no_command_says_a_spec_s_name()
    {
        using ADemoDay day = new();
        day.Typed("quillmere/day.txt");
        ReviewCommand.Print(day.Book, day.Outside(""));
        day.Typed("quillmere/evening.txt");
        Assert.DoesNotContain("STANDARD", day.Said, StringComparison.Ordinal);
        Assert.DoesNotContain("STIFFENED", day.Said, StringComparison.Ordinal);
    }

    /// <summary>The day to the opened key.</summary>
    internal static ADemoDay Driven()
    {
        ADemoDay day = new();
        day.Typed("quillmere/day.txt");
        ReviewCommand.Print(day.Book, day.Outside(""));
        day.Typed("quillmere/evening.txt");
        day.Clock.Now = KeyOpenedAt;
        RevealWords words = new("", [day.KeyPath], ["417=STANDARD", "862=STIFFENED"], ["Ro", "Ilse"]);
        Assert.Equal(ExitCode.Done, RevealCommand.Run(day.Book, words, day.Outside("")));
        return day;
    }
}
