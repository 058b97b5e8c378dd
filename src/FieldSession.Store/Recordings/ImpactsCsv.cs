using FieldSession.Signals;
using FieldSession.Store.Disks;
using FieldSession.Store.Readings;

namespace FieldSession.Store.Recordings;

/// <summary>An impact in a recording.</summary>
/// <param name="Segment">The segment it lies on; impacts of one segment share a decay time.</param>
/// <param name="Window">From 0.5 s and more before it to 0.8 s and more behind the last axle's hit.</param>
public sealed record ListedImpact(string Segment, TimeWindow Window);

/// <summary>Reads impacts: one a line with the columns segment, window_start_s, window_end_s, in seconds from the first sample.</summary>
public static class ImpactsCsv
{
    private const int Segment = 0;
    private const int Start = 1;
    private const int End = 2;
    private const int Most = 1000;
    private const double LongestS = 60;

    /// <summary>Reads a file.</summary>
    /// <exception cref="IOException">There is no such file, or it can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read, or it is a folder.</exception>
    public static FileRead<IReadOnlyList<ListedImpact>> Read(string path)
    {
        FileStream stream = FileKind.OpenToRead(path);
        FileProblems problems = new(path);
        using CsvSheet sheet = new(stream, problems, ["segment", "window_start_s", "window_end_s"]);
        List<ListedImpact> impacts = [];
        if (sheet.ReadHeader(3))
        {
            while (sheet.ReadRow())
            {
                Take(sheet, impacts);
            }

            if (!problems.Any && impacts.Count is 0 or > Most)
            {
                problems.Add(impacts.Count == 0 ? ImpactsWords.None : ImpactsWords.TooMany, ImpactsWords.Form);
            }
        }

        return problems.Any ? new(null, problems.InWords, problems.More) : new(impacts, [], 0);
    }

    private static void Take(CsvSheet sheet, List<ListedImpact> impacts)
    {
        double? start = CsvNumbers.Number(sheet[Start]);
        double? end = CsvNumbers.Number(sheet[End]);
        if (sheet[Segment].Length is 0 or > CsvLimits.NameLength)
        {
            sheet.Problem(Segment, sheet[Segment], ImpactsWords.NoSegment, ImpactsWords.Form);
        }
        else if (start is not >= 0)
        {
            sheet.Problem(Start, sheet[Start], ImpactsWords.NoTime, ImpactsWords.Form);
        }
        else if (!(end > start) || end - start > LongestS)
        {
            sheet.Problem(End, sheet[End], ImpactsWords.NoWindow, ImpactsWords.Form);
        }
        else
        {
            impacts.Add(new(sheet[Segment], new(start.Value, end.Value)));
        }
    }
}

/// <summary>What is said about a list of impacts.</summary>
internal static class ImpactsWords
{
    public const string None = "no impact";
    public const string TooMany = "more than 1000 impacts";
    public const string NoSegment = "not the name of a segment";
    public const string NoTime = "no time";
    public const string NoWindow = "does not end after its start, within 60 s";
    public const string Form = "a line holds segment, window_start_s and window_end_s, in seconds of the recording";
}
