using System.Text;
using FieldSession.Comparing;
using FieldSession.Store.Readings;

namespace FieldSession.Tests.References;

/// <summary>Reads the days of the reference cases.</summary>
internal static class CaseDay
{
    public static MeasuredDay Of(ReferenceCase reference) => new([.. reference.Table("data.csv").Select(Level)]);

    /// <summary>The day as it is in the table, or read from it by the program's own reader.</summary>
    public static MeasuredDay Of(ReferenceCase reference, bool throughCsv) => throughCsv ? ThroughCsv(reference) : Of(reference);

    public static MeasuredDay ThroughCsv(ReferenceCase reference)
    {
        string[] lines = File.ReadAllLines(reference.PathOf("data.csv"));
        string header = string.Join(
            ',',
            lines[0]
                .Split(',')
                .Select(column =>
                    column.Trim('"') switch
                    {
                        "t" => "minutes",
                        "cls" => "class",
                        "excluded" => "spoilt",
                        _ => column,
                    }
                )
        );
        byte[] bytes = Encoding.UTF8.GetBytes(string.Join('\n', [header, .. lines.Skip(1)]));
        FileRead<MeasuredDay> read = ReadingsCsv.Read(new MemoryStream(bytes), "data.csv");
        Assert.True(read.Content is not null, string.Join('\n', read.ProblemLines()));
        return read.Content;
    }

    public static MeasuredDay FirstRuns(MeasuredDay day, int runs) =>
        day with
        {
            Levels = [.. day.Levels.Where(level => level.Run <= runs)],
        };

    public static IReadOnlyList<ArchiveLine> Archive(ReferenceCase reference) =>
        [
            .. reference
                .Table("archive.csv")
                .Select(row => new ArchiveLine(
                    row["day"],
                    row["cls"] == "all" ? null : Class(row["cls"]),
                    Get(row, "nu_run"),
                    Get(row, "s_run"),
                    Get(row, "kbar"),
                    Get(row, "nu_e"),
                    Get(row, "s_e")
                )),
        ];

    public static IReadOnlyList<ArchiveLine> Archive(ReferenceCase reference, bool throughCsv) =>
        throughCsv
            ? StudyTerms.LinesOf(ArchiveCsv.Read(reference.PathOf("archive.csv")).Content!.Select(row => row.Scatter))
            : Archive(reference);

    public static MeasureClass Class(string word) => word == "impact" ? MeasureClass.Impact : MeasureClass.Steady;

    private static double Get(Dictionary<string, string> row, string column) => ReferenceCase.Number(row[column]);

    private static MeasuredLevel Level(Dictionary<string, string> row) =>
        new(
            int.Parse(row["run"]),
            row["code"],
            row["segment"],
            row["kind"],
            Class(row["cls"]),
            Get(row, "low"),
            Get(row, "high"),
            row["excluded"] == "1",
            null,
            Get(row, "t"),
            row.GetValueOrDefault("car"),
            row.GetValueOrDefault("slot")
        );
}
