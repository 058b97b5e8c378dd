using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using CsvHelper;
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
                PlanFile.Route, (int)broken.LineNumber, null, PlanFolderWords.QuotesDoNotFit(where),
                PlanFolderWords.QuotesForm);
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
