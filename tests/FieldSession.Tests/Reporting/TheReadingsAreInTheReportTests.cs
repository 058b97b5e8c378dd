using FieldSession.Reporting;
using FieldSession.Revealing;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Reporting;

/// <summary>The table of readings: run by segment, the runs of one code side by side.</summary>
public sealed class TheReadingsAreInTheReportTests
{
    [Fact]
    public void The_runs_of_one_code_are_side_by_side_and_every_segment_has_its_row()
    {
        ReadingsMap map = MapOf(Driven());
        Assert.Equal(["Segment", "417, run 1", "417, run 3", "862, run 2"], map.Columns);
        Assert.Equal(["Mill lane", "Quarry road", "Bridge joint"], map.Rows.Select(row => row.Name));
        Assert.Equal(["58-60", "58-60", "59-61"], map.Rows[0].Cells.Select(cell => cell.Levels));
    }

    [Fact]
    public void A_spoilt_reading_is_struck_out_with_its_cause_and_has_no_level_a_late_flag_is_kept()
    {
        ReadingsMap map = MapOf(Driven().Typed("flag 3.1 w"));
        MapCell spoilt = map.Rows[1].Cells[2];
        Assert.Equal(("64-66", "traffic", true, null), (spoilt.Levels, spoilt.Mark, spoilt.IsOut, spoilt.LevelDb));
        MapCell late = map.Rows[0].Cells[1];
        Assert.Equal(("wind late", false), (late.Mark, late.IsOut));
    }

    [Fact]
    public void A_missed_reading_is_an_empty_cell()
    {
        ADay day = new ADay().Ready();
        day.Typed("run 417", "5860", "m", "714", "run 862", "5961", "6466", "72");
        MapCell missed = MapOf(day).Rows[1].Cells[0];
        Assert.Equal(("", null, ""), (missed.Levels, missed.LevelDb, missed.Mark));
    }

    [Fact]
    public void A_level_far_from_the_mean_of_its_segment_is_marked_in_letters_too()
    {
        ADay day = new ADay().Ready();
        day.Typed("run 417", "5860", "6365", "714", "run 862", "6365", "6466", "72");
        ReadingsMap map = MapOf(day);
        Assert.Equal(
            [(MapHeat.FarBelow, "--"), (MapHeat.FarAbove, "++")],
            map.Rows[0].Cells.Select(cell => (cell.Heat, cell.Mark.Split(' ')[^1]))
        );
        Assert.Equal([MapHeat.Near, MapHeat.Near], map.Rows[1].Cells.Select(cell => cell.Heat));
    }

    private static ADay Driven()
    {
        ADay day = new ADay().Ready();
        day.Typed("run 417", "5860", "6365", "714", "run 862", "5961", "6466 t", "72", "run 417", "5860", "6465", "715");
        return day;
    }

    private static ReadingsMap MapOf(ADay day) =>
        DayReport
            .Of(day.Study, OpenedKey.In(day.Book.Entries), new Provenance(0, "", "1"))
            .Sections.Single(section => section.Part == ReportPart.Readings)
            .Blocks.OfType<ReadingsMap>()
            .Single();
}
