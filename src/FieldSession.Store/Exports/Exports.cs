using System.Collections.Immutable;
using FieldSession.Store.Exports.Tables;

namespace FieldSession.Store.Exports;

/// <summary>
/// Contents page 3: every file of an export, in the order of the job, but for <c>datapackage.json</c>, which describes them.
/// </summary>
public static class Exports
{
    /// <summary>Every file.</summary>
    public static ImmutableArray<ExportFile> All { get; } =
    [
        StudyTable.Table,
        StrandsTable.Table,
        PlanJson.File,
        SegmentsTable.Table,
        CodesTable.Table,
        SessionsTable.Table,
        WeatherTable.Table,
        AmendmentsTable.Table,
        ChecksTable.Table,
        OverridesTable.Table,
        RunsTable.Table,
        RerunsTable.Table,
        ReadingsTable.Table,
        NotesTable.Table,
        ExtraTable.Table,
        BandsTable.Table,
        RatingsTable.Table,
        ChoicesTable.Table,
        LegsTable.Table,
        PredictionsTable.Table,
        KeyTable.Table,
        ComparisonJson.File,
        ComparisonsTable.Table,
        RepeatabilityTable.Table,
        SegmentYieldTable.Table,
        VerdictTable.Table,
        SummaryText.File,
        JournalLines.File,
    ];
}
