using System.Text.RegularExpressions;
using FieldSession.Terminal.Commands;
using FieldSession.Terminal.Starting;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Screens;

/// <summary>What the screens of the evening look like, at three sizes of terminal.</summary>
public sealed partial class EveningPagesTests
{
    public static TheoryData<int, int> Sizes =>
        new()
        {
            { 60, 20 },
            { 80, 24 },
            { 120, 40 },
        };

    [Theory]
    [MemberData(nameof(Sizes))]
    public void The_review_looks_as_approved(int columns, int rows)
    {
        using ADemoDay day = new();
        day.Typed("quillmere/day.txt");
        using Tui tui = day.Screens(columns, rows, "review");
        Approve("review-shut", columns, rows, tui);
        Approve("review-summary", columns, rows, tui.Keys("parked<Enter>"));
        Approve("review-segments", columns, rows, tui.Keys("<End>"));
        Approve("review-one", columns, rows, tui.Keys("7<Enter>"));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void The_predictions_look_as_approved(int columns, int rows)
    {
        using ADemoDay day = new();
        day.Typed("quillmere/day.txt");
        using Tui tui = day.Screens(columns, rows, "predict");
        Approve("predict-crew", columns, rows, tui.Keys("parked<Enter>"));
        Approve("predict-asking", columns, rows, tui.Keys("1<Enter>2<Enter>4<Enter>"));
        tui.Keys("<Enter>n<Enter>1<Enter>not worth it for town<Enter>");
        Approve("predict-lock", columns, rows, tui);
        tui.Keys("<Enter>1<Enter>2<Enter>3<Enter><Enter><Enter>1<Enter><Enter><Enter>");
        Approve("predict-told", columns, rows, tui);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void The_reveal_and_the_report_look_as_approved(int columns, int rows)
    {
        using ADemoDay day = new();
        day.Typed("quillmere/day.txt");
        using Tui tui = day.Screens(columns, rows, "reveal");
        Approve("reveal-barred", columns, rows, tui.Keys("parked<Enter>"));
        day.Typed("quillmere/evening.txt");
        tui.Keys($"quillmere.key<Enter>{ADemoDay.Demo.Passphrase}<Enter>STANDARD<Enter>");
        Approve("reveal-marks", columns, rows, tui);
        tui.Keys("STIFFENED<Enter>Ro<Enter>Ilse<Enter><Enter>");
        Approve("reveal-open", columns, rows, tui);
        Approve("report-top", columns, rows, tui.Keys("<F7>"));
        Approve("report-result", columns, rows, tui.Keys("<PageDown><PageDown>"));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void The_start_screen_looks_as_approved(int columns, int rows)
    {
        StartDesk desk = new()
        {
            Recent =
            [
                new("/crew/winter/QW-0114.study", "QW-0114: all 6 runs driven; next: the blind review, then the predictions"),
                new(
                    "/crew/a/folder/with/a/very/long/name/that/goes/on/and/on/for/ever/DM-0207.study",
                    "DM-0207: 3 of 9 runs driven; next: run 4"
                ),
            ],
            Open = _ => null,
        };
        using StartTui tui = new(desk, columns, rows);
        Golden.Approve(Name("start", columns, rows), tui.Screen + "\n");
    }

    [Fact]
    public void A_margin_amended_after_the_day_is_told_below_the_main_measure_as_chosen_after_the_data()
    {
        using ADemoDay day = new();
        day.Typed("quillmere/day.txt");
        Assert.Equal(ExitCode.Done, EnterCommand.Run(day.Book, day.Outside("amend margin_db=3 because it looks better")));
        using Tui tui = day.Screens(120, 160, "review");
        string screen = tui.Keys("parked<Enter>").Screen;
        Assert.Contains("CHOSEN AFTER THE DATA", screen);
        Assert.Contains("margin 1 dB", screen);
        Assert.Matches(@"Carrowedge, Millrasp street, margin 3 dB: [+-][\d.]+ dB, ", Blanks().Replace(screen, " "));
        Assert.True(screen.IndexOf("CHOSEN AFTER", StringComparison.Ordinal) > screen.IndexOf("verdict", StringComparison.Ordinal));
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    private static void Approve(string page, int columns, int rows, Tui tui) =>
        Golden.Approve(Name(page, columns, rows), tui.Screen + "\n");

    private static string Name(string page, int columns, int rows) => $"tests/FieldSession.Tests/Screens/Pages/{page}-{columns}x{rows}.txt";
}
