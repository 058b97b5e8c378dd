using System.Collections.Immutable;
using System.Text.RegularExpressions;
using FieldSession.Store.Readings;

namespace FieldSession.Store.MeterLogs;

/// <summary>
/// Which columns of a log hold time, date and level: by header words, or as somebody says. Where two fit it is asked, never guessed.
/// </summary>
/// <param name="Time">Place of the column with the time, or time and date.</param>
/// <param name="Date">Place of the column with the date; null: none.</param>
/// <param name="Level">Place of the column with the level.</param>
/// <param name="IsElapsed">Whether the time counts seconds from the start.</param>
internal sealed partial record MeterLogColumns(int Time, int? Date, int Level, bool IsElapsed)
{
    private static readonly ImmutableHashSet<string> TimeWords =
    [
        "time",
        "timestamp",
        "datetime",
        "date time",
        "date/time",
        "zeit",
        "uhrzeit",
        "datum/zeit",
    ];
    private static readonly ImmutableHashSet<string> DateWords = ["date", "datum"];
    private static readonly ImmutableHashSet<string> ElapsedWords = ["elapsed", "elapsed_s", "elapsed s", "elapsed time", "seconds"];

    // the energy mean of each step first; fast and slow are named by one word each, so that both together are asked about
    private static readonly ImmutableArray<ImmutableHashSet<string>> LevelWords =
    [
        ["laeq", "laeq_db"],
        ["laf", "las", "laf_db", "las_db"],
        ["level", "pegel", "pegel db", "value", "db", "dba", "db(a)", "spl"],
    ];

    /// <summary>Whether a line names a time and a level.</summary>
    public static bool IsHeader(ImmutableArray<string> fields, MeterLogTerms terms) =>
        fields.Any(field => IsTime(field) || Is(field, terms.TimeColumn))
        && fields.Any(field => IsLevel(field) || Is(field, terms.LevelColumn));

    /// <summary>The columns of a header; null: the problems say what to choose.</summary>
    /// <param name="text">The log.</param>
    /// <param name="terms">What somebody says about it.</param>
    /// <param name="problems">Where problems go.</param>
    public static MeterLogColumns? Of(MeterLogText text, MeterLogTerms terms, FileProblems problems)
    {
        int? time = Chosen(text, terms.TimeColumn, [TimeWords, ElapsedWords], MeterLogWords.ChooseTime, problems);
        int? date =
            terms.DateColumn is null && !text.Header.Any(field => DateWords.Contains(Word(field)))
                ? null
                : Chosen(text, terms.DateColumn, [DateWords], MeterLogWords.ChooseDate, problems);
        int? level = Chosen(text, terms.LevelColumn, LevelWords, MeterLogWords.ChooseLevel, problems);
        return problems.Any || time is null || level is null
            ? null
            : new(time.Value, date, level.Value, ElapsedWords.Contains(Word(text.Header[time.Value])));
    }

    /// <summary>The columns as their headers write them.</summary>
    public string InWords(ImmutableArray<string> header) => $"{(Date is { } date ? $"{header[date]}+" : "")}{header[Time]}:{header[Level]}";

    private static int? Chosen(
        MeterLogText text,
        string? named,
        IEnumerable<ImmutableHashSet<string>> words,
        string choose,
        FileProblems problems
    )
    {
        if (named is not null)
        {
            int place = text.Header.ToList().FindIndex(field => Is(field, named));
            if (place < 0)
            {
                problems.Add(text.HeaderLine, named, null, MeterLogWords.NoSuchColumn, MeterLogWords.OneOfHeaders);
            }

            return place < 0 ? null : place;
        }

        foreach (ImmutableHashSet<string> rank in words)
        {
            int[] places = [.. text.Header.Index().Where(field => rank.Contains(Word(field.Item))).Select(field => field.Index)];
            if (places.Length == 1)
            {
                return places[0];
            }

            if (places.Length > 1)
            {
                problems.Add(
                    text.HeaderLine,
                    string.Join("', '", places.Select(place => text.Header[place])),
                    null,
                    MeterLogWords.TwoFit,
                    choose
                );
                return null;
            }
        }

        return null;
    }

    private static bool IsTime(string field) => TimeWords.Contains(Word(field)) || ElapsedWords.Contains(Word(field));

    private static bool IsLevel(string field) => LevelWords.Any(rank => rank.Contains(Word(field)));

    private static bool Is(string field, string? named) =>
        named is not null && field.Equals(named.Trim(), StringComparison.OrdinalIgnoreCase);

    // without the unit in brackets behind it
    private static string Word(string field) => Unit().Replace(field.ToLowerInvariant(), "").Trim();

    [GeneratedRegex(@"\s*(\[[^\]]*\]|\((db|dba|db\(a\)|s|sec)\)|\sdb\(a\)|\sdba|\sdb)$")]
    private static partial Regex Unit();
}
