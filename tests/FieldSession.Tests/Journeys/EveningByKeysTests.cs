using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journeys;

/// <summary>Before, keys, after: what happens on the screens of the evening.</summary>
public sealed class EveningByKeysTests
{
    private static ADay AllDriven =>
        new ADay()
            .Ready()
            .Typed(
                "run 417",
                "5860",
                "6365",
                "714",
                "run 862",
                "5961",
                "6466",
                "724",
                "run 417",
                "5860",
                "6365",
                "714",
                "calibration after 93.9"
            );

    [Theory]
    [InlineData("review", "Blind summary, by code only")]
    [InlineData("predict", "Each alone")]
    [InlineData("reveal", "The key stays shut")]
    [InlineData("report", "THE ANSWER")]
    public void A_screen_of_the_evening_is_shut_until_parked_is_typed(string screen, string shown)
    {
        using Tui tui = new(AllDriven, screen: screen);
        Assert.DoesNotContain(shown, tui.Screen, StringComparison.Ordinal);
        Assert.Contains("The driver never reads or types", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("'park' is not 'parked'", tui.Keys("park<Enter>").Screen, StringComparison.Ordinal);
        Assert.Contains(shown, tui.Keys("Parked<Enter>").Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Parked_is_asked_once_and_again_after_a_run_was_started()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860", "6365", "714");
        using Tui tui = new(day, screen: "review");
        Assert.Contains("THE ANSWER", tui.Keys("parked<Enter><F7>").Screen, StringComparison.Ordinal);
        tui.Keys("<F2><Enter><F4>parked<Enter>");
        Assert.Contains("Shut: run 2 is on", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<F2>mmm<F4>");
        Assert.Contains("Type 'parked' and press Enter", tui.Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("stop")]
    [InlineData("rate")]
    [InlineData("review")]
    [InlineData("predict")]
    [InlineData("reveal")]
    [InlineData("report")]
    [InlineData("legs")]
    public void The_word_is_taken_quietly_where_the_car_is_parked_already(string screen)
    {
        ADay day = AllDriven;
        int lines = day.Book.Lines.Count;
        using Tui tui = new(day, screen: screen);
        tui.Keys("parked<Enter>'Parked'<Enter>");
        Assert.Contains($"the car is parked; this is the {screen} screen", tui.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("is not understood", tui.Screen, StringComparison.Ordinal);
        Assert.Equal(lines, day.Book.Lines.Count);
    }

    [Fact]
    public void A_segment_is_followed_down_to_its_readings_and_notes_and_back()
    {
        ADay day = new ADay()
            .Ready()
            .Typed("run 417", "5860", "6365 t two lorries", "; grit in it", "714", "run 862", "5961", "6466", "724");
        using Tui tui = new(day, screen: "review");
        tui.Keys("parked<Enter><CursorRight><Enter>");
        Assert.Contains("2 of 3  Quarry road", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("spoilt: traffic, two lorries", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("run 1: grit in it", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("3 of 3  Bridge joint", tui.Keys("<CursorRight>").Screen, StringComparison.Ordinal);
        Assert.Contains("Blind summary", tui.Keys("<Esc>").Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_late_flag_is_typed_in_the_review_and_warned_of()
    {
        ADay day = AllDriven;
        using Tui tui = new(day, screen: "review");
        tui.Keys("parked<Enter>flag 2.1 t a van<Enter>");
        Assert.True(day.Study.Runs[1].Readings.First().Spoilt!.Late);
        Assert.Contains("flagged late", tui.Screen, StringComparison.Ordinal);
        Assert.True(tui.Screen.Contains("! 1 reading was flagged late", StringComparison.Ordinal), tui.Screen);
    }

    [Fact]
    public void Predictions_are_barred_with_the_reason_while_something_speaks_against_them()
    {
        using Tui tui = new(new ADay().Ready().Typed("run 417", "5860", "6365", "714"), screen: "predict");
        Assert.Contains("not now: 862 has not been driven", tui.Keys("parked<Enter>").Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void What_one_has_locked_is_seen_only_when_all_have()
    {
        ADay day = AllDriven;
        using Tui tui = new(day, screen: "predict");
        tui.Keys("parked<Enter>1<Enter>862<Enter>5<Enter>417<Enter>y<Enter>2<Enter>a sticker<Enter><Enter>");
        Assert.Single(day.Study.Predictions);
        Assert.Contains("locked, hidden", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<Ctrl+Z><Ctrl+Z>");
        Assert.DoesNotContain("sticker", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<Esc>1<Enter>1<Enter>1<Enter><Enter><Enter>3<Enter><Enter><Enter>");
        Assert.Contains("862 is the new spec, sure 5 of 5; 417 is quieter; would pay;", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("a sticker", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_prediction_that_the_disk_would_not_take_can_be_locked_again()
    {
        ADay day = AllDriven;
        using Tui tui = new(day, screen: "predict");
        tui.Keys("parked<Enter>1<Enter>862<Enter>5<Enter><Enter><Enter>1<Enter><Enter>");
        day.Journal.DiskIsFull = true;
        Assert.Contains("not saved: no space left", tui.Keys("<Enter>").Screen, StringComparison.Ordinal);
        day.Journal.DiskIsFull = false;
        tui.Keys("<Enter>");
        Assert.Equal("Ro", Assert.Single(day.Study.Predictions).Person);
    }

    [Fact]
    public void A_wrong_answer_is_asked_again_and_Esc_goes_back_a_question()
    {
        using Tui tui = new(AllDriven, screen: "predict");
        tui.Keys("parked<Enter>2<Enter>7<Enter>");
        Assert.Contains("'7' is not an answer here: type 1, 2", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("How sure are you?", tui.Keys("1<Enter>").Screen, StringComparison.Ordinal);
        Assert.Contains("Which code is the new spec?", tui.Keys("<Esc>").Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Going_to_another_screen_and_back_hides_a_half_told_prediction()
    {
        using Tui tui = new(AllDriven, screen: "predict");
        tui.Keys("parked<Enter>1<Enter>862<Enter><F4><F5>");
        Assert.Contains("who predicts?", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_typed_hidden_may_be_any_word()
    {
        using ADemoDay day = new();
        day.Typed("quillmere/day.txt").Typed("quillmere/evening.txt");
        using Tui tui = day.Screens(screen: "reveal");
        tui.Keys($"parked<Enter>{day.KeyPath}<Enter>parked<Enter>");
        Assert.Contains("wrong passphrase, or the file was changed", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_passphrase_reveals_nothing_and_no_box_keeps_it()
    {
        using ADemoDay day = new();
        day.Typed("quillmere/day.txt").Typed("quillmere/evening.txt");
        using Tui tui = day.Screens(screen: "reveal");
        tui.Watcher = screen => Assert.DoesNotContain("tulip", screen, StringComparison.Ordinal);
        tui.Keys($"parked<Enter>{day.KeyPath}<Enter>tulip tulip<Ctrl+A><Ctrl+C><Ctrl+X>tulip<Enter>");
        Assert.Contains("wrong passphrase, or the file was changed", tui.Screen, StringComparison.Ordinal);
        Assert.Null(day.Book.Study.Opening);
        tui.Keys("<Esc><Ctrl+Z><Ctrl+Z><Ctrl+V><Ctrl+Y>");
        Assert.Contains("key file", tui.Rows[^2], StringComparison.Ordinal);
        Assert.Equal("key file >", tui.Rows[^2].Trim());
    }

    [Fact]
    public void A_key_file_that_is_not_there_is_asked_for_again()
    {
        using ADemoDay day = new();
        day.Typed("quillmere/day.txt").Typed("quillmere/evening.txt");
        using Tui tui = day.Screens(screen: "reveal");
        tui.Keys("parked<Enter>nowhere.key<Enter>something long<Enter>");
        Assert.Contains("no such file", tui.Screen, StringComparison.Ordinal);
        Assert.StartsWith(" key file", tui.Rows[^2], StringComparison.Ordinal);
    }

    [Fact]
    public void Marks_that_do_not_agree_store_nothing_and_are_read_again_or_kept_as_read_and_read_again_later()
    {
        using ADemoDay day = new();
        day.Typed("quillmere/day.txt").Typed("quillmere/evening.txt");
        using Tui tui = day.Screens(screen: "reveal");
        tui.Keys($"parked<Enter>{day.KeyPath}<Enter>{ADemoDay.Demo.Passphrase}<Enter>STIFFENED<Enter>STANDARD<Enter>Ro<Enter>Ilse<Enter>");
        Assert.Contains(
            "nothing is stored yet: the mark read on 417 and 862 is NOT the one in the key",
            Words(tui.Screen),
            StringComparison.Ordinal
        );
        tui.Keys("<Enter>");
        Assert.Contains("the mark under the tape of the tyres driven as 417", tui.Screen, StringComparison.Ordinal);
        Assert.Null(day.Book.Study.Opening);
        tui.Keys("STANDARD<Enter>STIFENED<Enter>Ro<Enter>Ilse<Enter>as read<Enter>");
        Assert.Contains("NO  the mark read on 862 is NOT the one in the key", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("headline withholds the names", tui.Screen, StringComparison.Ordinal);
        Assert.False(day.Book.Study.Opening!.MarksAgree);
        tui.Keys("again<Enter>STANDARD<Enter>STIFFENED<Enter>Ro<Enter>Ilse<Enter><Enter>");
        Assert.Contains("ok  the marks read by Ro and Ilse agree", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("first read on the tyres of 862: STANDARD / STIFENED", tui.Screen, StringComparison.Ordinal);
        Assert.True(day.Book.Study.Opening!.MarksAgree);
    }

    [Fact]
    public void One_key_writes_the_report_and_says_where()
    {
        using ADemoDay day = new();
        day.Typed("quillmere/day.txt");
        using Tui tui = day.Screens(120, 40, "report");
        Assert.Contains($"written: {day.ReportPath}", tui.Keys("parked<Enter>w").Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("STIFFENED", File.ReadAllText(day.ReportPath), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(20, 5)]
    [InlineData(40, 10)]
    public void On_a_tiny_terminal_nothing_breaks_and_the_box_stays(int columns, int rows)
    {
        using Tui tui = new(AllDriven, columns, rows, "review");
        tui.Keys("parked<Enter>flag 2.1 t<Enter><End><Home>1<Enter>");
        Assert.True(tui.Rows.Any(row => row.StartsWith(" >", StringComparison.Ordinal)), tui.Screen);
    }

    private static string Words(string screen) => string.Join(' ', screen.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
