using FieldSession.State;
using FieldSession.Store.Exports;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Exports;

public sealed class HostileTextTests
{
    [Theory]
    [InlineData("=HYPERLINK(\"x\")", "'=HYPERLINK(\"x\")")]
    [InlineData("+1", "'+1")]
    [InlineData("-1 dB", "'-1 dB")]
    [InlineData("@sum", "'@sum")]
    [InlineData("\tx", "'\tx")]
    [InlineData("\rx", "'\rx")]
    [InlineData("'=1", "''=1")]
    [InlineData("'s lane", "'s lane")]
    [InlineData("a=1", "a=1")]
    [InlineData("'", "'")]
    [InlineData("", "")]
    public void A_text_that_looks_like_a_formula_gets_an_apostrophe_and_comes_back(string text, string cell)
    {
        Assert.Equal(cell, SpreadsheetText.Guarded(text));
        Assert.Equal(text, SpreadsheetText.Plain(cell));
    }

    [Fact]
    public void Notes_full_of_formulas_quotes_and_marks_come_back_as_they_were()
    {
        string[] notes =
        [
            "=cmd|' /C calc'!A0",
            "+41, \"quoted\", and 'more'",
            "@SUM(1+1)*cmd",
            "-2+3 dB",
            "\u202Eright to left\u202C \u200F\u05D0",
            "\U0001F697 over the joint; a\u0301",
            ",,,;\"\"\"",
            "<b>&amp;</b>",
            "'=twice",
            new('x', 3990),
        ];
        ADay day = new ADay().Ready().Typed("run 417", "5860");
        day.Typed([.. notes.Select(note => $"; {note}")]);
        using ExportedDay exported = new(day);
        string[] cells = [.. exported.Rows("notes").Select(row => row["words"])];
        Assert.Equal(day.Study.Notes.Select(note => note.Words), cells.Select(SpreadsheetText.Plain));
        Assert.Equal(notes, cells.Select(SpreadsheetText.Plain));
        Assert.DoesNotContain(cells, cell => cell[0] is '=' or '+' or '-' or '@');
    }

    [Fact]
    public void Hostile_names_of_segments_change_no_number()
    {
        Plan plan = ADay.ShortPlan with
        {
            Route =
            [
                ADay.ASegment(1, "=1+1", "smooth"),
                ADay.ASegment(2, "-\"Quarry\", road", "@own"),
                ADay.ASegment(3, "\u202E" + new string('\u05D0', 119), "impact"),
            ],
        };
        ADay day = new ADay(plan)
            .Ready()
            .Typed(
                "run 417",
                "5860",
                "6365",
                "714",
                "run 862",
                "5961",
                "6466",
                "72",
                "run 417",
                "5860",
                "6465",
                "715",
                "calibration after 93.9"
            );
        using ExportedDay exported = new(day);
        Assert.Equal(exported.StudyCompared(), exported.CsvCompared());
    }

    [Fact]
    public void More_notes_on_one_segment_than_a_row_can_bear_are_cut_there_and_whole_in_the_table_of_notes()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860");
        day.Typed([.. Enumerable.Range(0, 30).Select(_ => $"; {new string('\u05D0', 3990)}")]);
        day.Typed("6365", "714", "run 862", "5961", "6466", "72", "run 417", "5860", "6465", "715");
        using ExportedDay exported = new(day);
        Assert.Equal(30, exported.Rows("notes").Count);
        Assert.EndsWith("... (notes.csv has all)", exported.Rows("readings")[0]["note"], StringComparison.Ordinal);
        Assert.Equal(exported.StudyCompared(), exported.CsvCompared());
    }

    [Fact]
    public void A_number_below_zero_stays_a_number()
    {
        using ExportedDay exported = new(ExportedDay.Demo());
        Assert.Equal("-0.1", exported.Rows("sessions")[0]["drift_db"]);
    }
}
