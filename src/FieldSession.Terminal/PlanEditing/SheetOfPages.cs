using System.Collections.Immutable;
using System.Globalization;
using FieldSession.Measures;
using FieldSession.State;
using FieldSession.Store.Planning;

namespace FieldSession.Terminal;

/// <summary>Lays the pages of a plan folder out as a sheet, with what is said of them beside the row that it is about.</summary>
internal static class SheetOfPages
{
    private const string Limits = "limits.";
    private const string Reasons = "limits.reasons.";

    /// <summary>The sheet.</summary>
    public static PlanSheet Of(PlanPages pages)
    {
        PlanReading reading = pages.Judged();
        IReadOnlyDictionary<string, string> texts = pages.Texts();
        ImmutableArray<PlanField> fields = pages.Fields(texts);
        IEnumerable<PlanRemark> Remarks(IEnumerable<PlanProblem> said, bool isProblem) =>
            said.Select(one => new PlanRemark(RowOf(one, pages, fields), $"{one.What}; {one.Allowed}", isProblem));
        return new PlanSheet
        {
            Fields = [.. fields.Select(field => new SheetField(field.Label, texts.GetValueOrDefault(field.Name, ""), HintOf(field)))],
            Columns = pages.Columns,
            ColumnHints = pages.ColumnHints,
            Segments = pages.Rows,
            Seconds = [.. pages.Rows.Select(row => SecondsOf(row, pages.IsImperial))],
            Limits = [.. AllLimits.InOrder.Select(held => LimitOf(held.Limit, texts))],
            Remarks = [.. Remarks(reading.Problems, true), .. Remarks(reading.Warnings, false)],
        };
    }

    private static string HintOf(PlanField field) => field.Name == "order" ? $"{field.Hint}; {PlanKeys.Orders} proposes some" : field.Hint;

    private static SheetLimit LimitOf(Limit limit, IReadOnlyDictionary<string, string> texts)
    {
        string plain = limit.Default.ToString("0.###", CultureInfo.InvariantCulture);
        string range = string.Create(CultureInfo.InvariantCulture, $"{limit.Lowest:0.###} to {limit.Highest:0.###}");
        return new SheetLimit(
            $"{limit.Words}, {UnitOf(limit)}",
            plain,
            texts.GetValueOrDefault(Limits + limit.Name, ""),
            texts.GetValueOrDefault(Reasons + limit.Name, ""),
            PlanEditingWords.LimitHint(limit, range, plain)
        );
    }

    // the unit is the end of the name: "wind_warn_m_s"
    private static string UnitOf(Limit limit)
    {
        if (limit.Name.EndsWith("_m_s", StringComparison.Ordinal))
        {
            return "m/s";
        }

        string end = limit.Name[(limit.Name.LastIndexOf('_') + 1)..];
        return UnitNames.GetValueOrDefault(end, end);
    }

    private static Dictionary<string, string> UnitNames =>
        new()
        {
            ["db"] = "dB",
            ["c"] = "degC",
            ["percent"] = "%",
            ["kpa"] = "kPa",
            ["kmh"] = "km/h",
            ["shore"] = "Shore A",
        };

    // the route is written with its header in line 1 and a segment a line
    private static int? RowOf(PlanProblem problem, PlanPages pages, ImmutableArray<PlanField> fields)
    {
        if (problem is { File: "route.csv" })
        {
            return problem.Line is > 1 and { } route && route - 2 < pages.Rows.Count ? fields.Length + route - 2 : null;
        }

        string? name = problem.Line is { } line ? pages.NameAt(line) : null;
        return name is null ? null
            : fields.FirstOrDefault(field => field.Name == name) is { } found ? fields.IndexOf(found)
            : LimitIn(name) is { } limit ? fields.Length + pages.Rows.Count + limit
            : null;
    }

    private static int? LimitIn(string name)
    {
        int at = AllLimits
            .InOrder.Select(held => held.Limit.Name)
            .ToList()
            .FindIndex(limit => name == Limits + limit || name == Reasons + limit);
        return at < 0 ? null : at;
    }

    private static double? SecondsOf(ImmutableArray<string> row, bool isImperial)
    {
        double speed = Number(row[2]) * (isImperial ? Speed.KmPerMile : 1);
        double metres = Number(row[3]) * (isImperial ? Speed.KmPerMile * 1000 : 1);
        return speed > 0 && metres > 0 ? metres / (speed / 3.6) : null;
    }

    private static double Number(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number) ? number : 0;
}
