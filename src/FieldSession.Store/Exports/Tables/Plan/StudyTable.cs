using FieldSession.Archiving;
using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>The study itself.</summary>
internal static class StudyTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<(Plan Plan, ExportSource Source)>(
            ExportTable.StudyColumn,
            "The study itself: one row. All other tables name it in the column 'study', so that tables of many studies can "
                + "be put together.",
            [
                Column
                    .Text<(Plan Plan, ExportSource Source)>(
                        "name",
                        "what the crew calls it; two studies may have one name",
                        s => s.Plan.StudyName
                    )
                    .Always,
                Column.Text<(Plan Plan, ExportSource Source)>(
                    "asked",
                    "what it asks",
                    s => s.Plan.Question is { Length: > 0 } question ? question : null
                ),
                Column
                    .Count<(Plan Plan, ExportSource Source)>(
                        "specs",
                        "how many specs are compared, the control included",
                        s => s.Plan.SpecCount
                    )
                    .Always,
                Column
                    .Text<(Plan Plan, ExportSource Source)>(
                        "crew",
                        "the crew's names, in order of the alphabet",
                        s => ArchivedStudy.CrewInWordsOf(s.Plan)
                    )
                    .Always,
                Column
                    .Text<(Plan Plan, ExportSource Source)>(
                        "loop",
                        "the segments with their kinds, in driven order: studies with the same text drove the same loop",
                        s => ArchivedStudy.RouteOf(s.Plan)
                    )
                    .Always,
                Column.Text<(Plan Plan, ExportSource Source)>("car_facts", "the car, as the crew wrote it", s => s.Plan.Facts.Car),
                Column.Text<(Plan Plan, ExportSource Source)>(
                    "meter",
                    "the sound level meter, as the crew wrote it",
                    s => s.Plan.Facts.Meter
                ),
                Column
                    .Text<(Plan Plan, ExportSource Source)>(
                        "order_planned",
                        "the order of runs, by place: R the reference, 1, 2, ... the others",
                        s => string.Join(' ', s.Plan.Order)
                    )
                    .Always,
                Column
                    .Number<(Plan Plan, ExportSource Source)>(
                        "margin_db",
                        "dB",
                        "differences within this are equivalent, on steady segments",
                        s => s.Plan.MarginDb
                    )
                    .Always,
                Column.Time<(Plan Plan, ExportSource Source)>(
                    "began",
                    "when its first run started; empty: none did",
                    s => s.Source.Study.Runs.Count == 0 ? null : s.Source.Study.Runs[0].Started.At
                ),
                Column
                    .YesNo<(Plan Plan, ExportSource Source)>("finished", "whether the key is open", s => s.Source.Study.Opening is not null)
                    .Always,
                Column
                    .Count<(Plan Plan, ExportSource Source)>(
                        "lines",
                        "lines of the journal: of two states of one study the later has more",
                        s => s.Source.Lines.Count
                    )
                    .Always,
            ],
            source => source.Study.Plan is { } plan ? [(plan, source)] : []
        );
}
