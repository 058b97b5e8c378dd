using FieldSession.Comparing;

namespace FieldSession.Tests.References;

/// <summary>Reads the days of the reference cases.</summary>
internal static class CaseDay
{
    public static MeasuredDay Of(ReferenceCase reference) => new([.. reference.Table("data.csv").Select(Level)]);

    public static MeasuredDay FirstRuns(MeasuredDay day, int runs) => day with { Levels = [.. day.Levels.Where(level => level.Run <= runs)] };

    public static IReadOnlyList<ArchiveLine> Archive(ReferenceCase reference) => [.. reference.Table("archive.csv").Select(row => new ArchiveLine(
        row["day"], row["cls"] == "all" ? null : Class(row["cls"]), Get(row, "nu_run"), Get(row, "s_run"), Get(row, "kbar"), Get(row, "nu_e"), Get(row, "s_e")))];

    public static MeasureClass Class(string word) => word == "impact" ? MeasureClass.Impact : MeasureClass.Steady;

    private static double Get(Dictionary<string, string> row, string column) => ReferenceCase.Number(row[column]);

    private static MeasuredLevel Level(Dictionary<string, string> row) => new(
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
        row.GetValueOrDefault("slot"));
}
