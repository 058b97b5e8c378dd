using System.Collections.Immutable;
using FieldSession.Store.Disks;
using FieldSession.Store.Readings;

namespace FieldSession.Store.MeterLogs;

/// <summary>One line of a meter's log.</summary>
/// <param name="Line">The line of the file, from 1.</param>
/// <param name="AtS">When, s from the first line on the meter's clock.</param>
/// <param name="LevelDb">The level, dB(A); null: the meter wrote none.</param>
public readonly record struct MeterLogLine(long Line, double AtS, double? LevelDb);

/// <summary>What a meter wrote by itself.</summary>
public sealed record MeterLog
{
    /// <summary>Which columns were taken, as their headers write them: time and date joined by '+', then ':' and the level.</summary>
    public required string Columns { get; init; }

    /// <summary>The time of the first line; null: the log counts from its start, and nobody told when that was.</summary>
    public required DateTimeOffset? BegunAt { get; init; }

    /// <summary>The lines in the order of time.</summary>
    public required ImmutableArray<MeterLogLine> Lines { get; init; }

    /// <summary>Seconds from one line to the next as a rule.</summary>
    public required double StepS { get; init; }

    /// <summary>What is odd about the log although it was taken.</summary>
    public required ImmutableArray<string> Remarks { get; init; }
}

/// <summary>
/// Reads the log of a sound level meter: comma, semicolon or tab; decimal point or comma; lines before the header passed over; UTF-8,
/// UTF-16 or Latin-1.
/// What can be read in two ways is asked, never guessed: day or month first, the zone, the start of elapsed time, two columns of levels.
/// </summary>
public static class MeterLogCsv
{
    private const double HighestDb = 160;
    private const double GapSteps = 2;

    /// <summary>Reads a file.</summary>
    /// <exception cref="IOException">There is no such file, or it can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read, or it is a folder.</exception>
    public static FileRead<MeterLog> Read(string path, MeterLogTerms terms)
    {
        using FileStream stream = FileKind.OpenToRead(path);
        return Read(stream, path, terms);
    }

    /// <summary>Reads a stream.</summary>
    /// <param name="stream">The bytes of the file.</param>
    /// <param name="name">The file's name for the problems.</param>
    /// <param name="terms">What somebody says about it.</param>
    public static FileRead<MeterLog> Read(Stream stream, string name, MeterLogTerms terms)
    {
        FileProblems problems = new(name);
        MeterLog? log =
            MeterLogText.Read(stream, terms, problems) is { } text && MeterLogColumns.Of(text, terms, problems) is { } columns
                ? Of(text, columns, terms, problems)
                : null;
        return problems.Any ? new(null, problems.InWords, problems.More) : new(log, [], 0);
    }

    private static MeterLog? Of(MeterLogText text, MeterLogColumns columns, MeterLogTerms terms, FileProblems problems)
    {
        if (text.Rows.Length < 2)
        {
            problems.Add(MeterLogWords.TwoLines, MeterLogWords.NameColumns);
            return null;
        }

        if (MeterLogTimes.Of(text, columns, terms, problems) is not { } times)
        {
            return null;
        }

        List<string> remarks = [];
        ImmutableArray<MeterLogLine> lines =
        [
            .. Levels(text, columns, problems, remarks).Select((level, i) => new MeterLogLine(text.Rows[i].Line, times.Seconds[i], level)),
        ];
        if (!problems.Any && lines.All(line => line.LevelDb is null))
        {
            problems.Add(text.HeaderLine, text.Header[columns.Level], null, MeterLogWords.NoLevels, MeterLogWords.ChooseLevel);
        }

        double[] steps = [.. lines.Zip(lines.Skip(1), (one, next) => next.AtS - one.AtS).Order()];
        double step = steps[steps.Length / 2];
        return new()
        {
            Columns = columns.InWords(text.Header),
            BegunAt = times.Begun,
            Lines = lines,
            StepS = step,
            Remarks = [.. remarks, .. Gaps(lines, step)],
        };
    }

    private static double?[] Levels(MeterLogText text, MeterLogColumns columns, FileProblems problems, List<string> remarks)
    {
        List<long> empty = [];
        List<(long Line, string Word)> words = [];
        double?[] levels = new double?[text.Rows.Length];
        for (int i = 0; i < levels.Length; i++)
        {
            long line = text.Rows[i].Line;
            string field = text.FieldOf(i, columns.Level);
            levels[i] = CsvNumbers.Number(text.Delimiter == ',' ? field : field.Replace(',', '.'));
            if (levels[i] is < 0 or > HighestDb)
            {
                problems.Add(line, text.Header[columns.Level], field, MeterLogWords.NotALevel, MeterLogWords.LevelForm);
            }
            else if (levels[i] is null && field.All(c => c == '-'))
            {
                empty.Add(line);
            }
            else if (levels[i] is null)
            {
                words.Add((line, field));
            }
        }

        remarks.AddRange(empty.Take(1).Select(first => MeterLogWords.NoLevelIn(empty.Count, first)));
        remarks.AddRange(
            words.Take(1).Select(first => MeterLogWords.WordsForLevels(words.Count, FileProblem.Shown(first.Word), first.Line))
        );
        return levels;
    }

    private static IEnumerable<string> Gaps(ImmutableArray<MeterLogLine> lines, double step)
    {
        int[] gaps = [.. Enumerable.Range(1, lines.Length - 1).Where(i => lines[i].AtS - lines[i - 1].AtS > GapSteps * step)];
        return gaps.Length == 0
            ? []
            : [MeterLogWords.Gaps(gaps.Length, MeterLogWords.GapAt(lines[gaps[0]].Line, lines[gaps[0]].AtS - lines[gaps[0] - 1].AtS))];
    }
}
