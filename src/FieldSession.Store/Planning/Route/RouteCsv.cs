using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using CsvHelper;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Store.Planning;

/// <summary>Reads the route (CSV, RFC 4180): one segment a row, columns by name in any order, others passed over.</summary>
internal static class RouteCsv
{
    private const int MostSegments = 1000;

    /// <summary>The route; null with a trouble where the header is none.</summary>
    public static RouteReading? Parse(string text, Troubles troubles)
    {
        CsvReaderOptions options = new()
        {
            HasHeader = false,
            Separator = ',',
            SkipEmptyLines = true,
            TrimWhitespace = true,
            TrackLineNumbers = true,
            MalformedData = CsvMalformedDataHandling.Throw,
            IncludeValuesInExceptions = false,
        };
        using CsvReader csv = CsvReader.Create(Encoding.UTF8.GetBytes(text), options);
        try
        {
            return RouteHeader.Of(csv, troubles) is { } header ? RowsOf(csv, header, troubles) : null;
        }
        catch (CsvFormatException broken)
        {
            string where = broken.LineNumber.ToString(CultureInfo.InvariantCulture);
            troubles.Refuse(
                PlanFile.Route,
                (int)broken.LineNumber,
                null,
                PlanFolderWords.QuotesDoNotFit(where),
                PlanFolderWords.QuotesForm
            );
            return null;
        }
    }

    private static RouteReading RowsOf(CsvReader csv, ImmutableList<string> header, Troubles troubles)
    {
        ImmutableList<Segment>.Builder segments = ImmutableList.CreateBuilder<Segment>();
        ImmutableList<int>.Builder lines = ImmutableList.CreateBuilder<int>();
        Dictionary<string, int> names = new(StringComparer.OrdinalIgnoreCase);
        int rows = 0;
        while (!troubles.IsFull && csv.Read())
        {
            RouteRow row = new(header, csv.Current.ToArray(), (int)csv.LineNumber, troubles);
            if (row.IsEmpty)
            {
                continue;
            }

            if (++rows > MostSegments)
            {
                row.Refuse(null, PlanFolderWords.TooManySegments(MostSegments), PlanFolderWords.CutIntoSeveralStudies);
                break;
            }

            if (row.ToSegment(rows) is { } segment && IsNew(segment, row, names))
            {
                segments.Add(segment);
                lines.Add(row.Line);
            }
        }

        if (rows == 0)
        {
            troubles.Refuse(PlanFile.Route, null, null, PlanFolderWords.RouteHasNoSegment, PlanFolderWords.WriteOneSegmentARow);
        }

        return new RouteReading(segments.ToImmutable(), lines.ToImmutable(), header.Contains("speed_mph"));
    }

    private static bool IsNew(Segment segment, RouteRow row, Dictionary<string, int> names)
    {
        if (names.TryAdd(segment.Name, row.Line))
        {
            return true;
        }

        row.Refuse("segment", PlanFolderWords.SegmentNameIsTaken(segment, names), PlanFolderWords.GiveEachSegmentOwnName);
        return false;
    }
}

/// <summary>The route as read.</summary>
/// <param name="Segments">The segments in driven order.</param>
/// <param name="Lines">The line of the file in which each segment is.</param>
/// <param name="IsImperial">Whether its speeds are written in miles per hour.</param>
internal sealed record RouteReading(ImmutableList<Segment> Segments, ImmutableList<int> Lines, bool IsImperial);

/// <summary>Reads the first line of the route: the names of its columns.</summary>
internal static class RouteHeader
{
    private const string Form = PlanFolderWords.RouteHeaderForm;

    private static string[] Known =>
        [
            "segment",
            "kind",
            "class",
            "speed_kmh",
            "speed_mph",
            "length_m",
            "length_mi",
            "limit_kmh",
            "limit_mph",
            "nominal_db",
            "start_mark",
            "phrase",
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
            troubles.Refuse(
                PlanFile.Route,
                line,
                null,
                PlanFolderWords.ColumnIsMissing(name),
                header.Count == 1 ? PlanFolderWords.ColumnsAreCutByCommas(Form) : Form
            );
        }

        return missing.Length == 0 ? header : null;
    }

    private static void RefuseTwice(ImmutableList<string> header, int line, Troubles troubles)
    {
        foreach (
            string twice in header
                .Where(name => Known.Contains(name))
                .GroupBy(name => name)
                .Where(same => same.Count() > 1)
                .Select(same => same.Key)
        )
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
                troubles.Warn(
                    PlanFile.Route,
                    line,
                    null,
                    PlanFolderWords.UnknownColumnIsPassedOver(name),
                    PlanFolderWords.DidYouMean(near)
                );
            }
        }
    }

    private static IEnumerable<string> Missing(ImmutableList<string> header)
    {
        string[][] needed =
        [
            ["segment"],
            ["kind"],
            ["speed_kmh", "speed_mph"],
            ["length_m", "length_mi"],
        ];
        return needed.Where(names => !names.Any(header.Contains)).Select(names => string.Join(" or ", names));
    }
}
