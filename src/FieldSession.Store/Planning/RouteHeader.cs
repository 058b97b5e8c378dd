using System.Collections.Immutable;
using CsvHelper;
using FieldSession.Journal;

namespace FieldSession.Store.Planning;

/// <summary>Reads the first line of the route: the names of its columns.</summary>
internal static class RouteHeader
{
    private const string Form = PlanFolderWords.RouteHeaderForm;

    private static string[] Known =>
    [
        "segment", "kind", "class", "speed_kmh", "speed_mph", "length_m", "length_mi", "limit_kmh", "limit_mph", "nominal_db", "start_mark", "phrase",
    ];

    /// <summary>The columns in lower case; null with troubles where one that is needed is not there.</summary>
    public static ImmutableList<string>? Of(CsvReader csv, Troubles troubles)
    {
        if (!csv.Read())
        {
            troubles.Refuse(PlanFile.Route, null, null, PlanFolderWords.FileIsEmpty, Form);
            return null;
        }

        ImmutableList<string> header = [.. csv.Current.ToArray().Select(name => name.Trim().ToLowerInvariant())];
        int line = (int)csv.LineNumber;
        RefuseTwice(header, line, troubles);
        WarnOfUnknown(header, line, troubles);
        string[] missing = [.. Missing(header)];
        foreach (string name in missing)
        {
            troubles.Refuse(PlanFile.Route, line, null, PlanFolderWords.ColumnIsMissing(name), header.Count == 1 ? PlanFolderWords.ColumnsAreCutByCommas(Form) : Form);
        }

        return missing.Length == 0 ? header : null;
    }

    private static void RefuseTwice(ImmutableList<string> header, int line, Troubles troubles)
    {
        foreach (string twice in header.Where(name => Known.Contains(name)).GroupBy(name => name).Where(same => same.Count() > 1).Select(same => same.Key))
        {
            troubles.Refuse(PlanFile.Route, line, twice, PlanFolderWords.ColumnIsThereTwice, PlanFolderWords.NameEachColumnOnce);
        }
    }

    private static void WarnOfUnknown(ImmutableList<string> header, int line, Troubles troubles)
    {
        foreach (string name in header.Except(Known))
        {
            if (NearWord.Of(name, Known.Except(header)) is { } near)
            {
                troubles.Warn(PlanFile.Route, line, null, PlanFolderWords.UnknownColumnIsPassedOver(name), PlanFolderWords.DidYouMean(near));
            }
        }
    }

    private static IEnumerable<string> Missing(ImmutableList<string> header)
    {
        string[][] needed = [["segment"], ["kind"], ["speed_kmh", "speed_mph"], ["length_m", "length_mi"]];
        return needed.Where(names => !names.Any(header.Contains)).Select(names => string.Join(" or ", names));
    }
}
