using FieldSession.Comparing;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Store.Readings;

/// <summary>Reads the rows of a readings CSV, each value for itself, then against the rows before.</summary>
/// <param name="sheet">The sheet, standing on a row.</param>
internal sealed class ReadingRows(CsvSheet sheet)
{
    private const string LevelAllowed = ReadingsFileWords.LevelForm;

    private const string MinutesAllowed = ReadingsFileWords.MinutesForm;
    private const string SecondsAllowed = ReadingsFileWords.SecondsForm;

    // 190 years: a larger number is no time from the first run
    private const double LongestMinutes = 1e8;
    private const double LeastSeconds = 1e-9;
    private const double LongestSeconds = 1e9;

    private string? _orderRunsText;
    private readonly RowsSoFar _before = new(sheet);
    private readonly Dictionary<string, string?> _causes = new(StringComparer.Ordinal);

    /// <summary>The readings so far.</summary>
    public List<MeasuredLevel> Levels { get; } = [];

    /// <summary>Rows with neither low nor high: planned readings that were not taken.</summary>
    public int Missed { get; private set; }

    /// <summary>How many runs there are if some were driven side by side, else 0.</summary>
    public int RunsSideBySide => _before.RunsSideBySide;

    /// <summary>The segments in the order of their first row.</summary>
    public IReadOnlyList<PlannedSegment> Segments => _before.Segments;

    /// <summary>Runs of the order, as the last row that tells it has them; null: no row does.</summary>
    public IReadOnlyList<int>? OrderRuns { get; private set; }

    /// <summary>Takes the current row in, or tells everything that is wrong with it.</summary>
    public void Take()
    {
        int? number = RunNumber();
        RunSoFar? saidOfRun = Run();
        PlannedSegment? saidOfSegment = Segment();
        TakeOrderRuns();
        bool measured = TryLevels(out LevelRange? range) & TrySpoilt(out SpoiltText spoilt);
        if (number is null || saidOfRun is null || saidOfSegment is null || !measured)
        {
            return;
        }

        RunSoFar? run = _before.Run(number.Value, saidOfRun);
        PlannedSegment? segment = _before.Segment(saidOfSegment);
        if (run is not null && segment is not null)
        {
            Keep(number.Value, run, segment, range, spoilt);
        }
    }

    private void TakeOrderRuns()
    {
        string text = sheet[ReadingColumns.OrderRuns];
        if (text.Length == 0 || string.Equals(text, _orderRunsText, StringComparison.Ordinal))
        {
            return;
        }

        int?[] runs = [.. text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(CsvNumbers.Count)];
        bool grows = runs.Length > 0 && runs.All(run => run is > 0) && runs.Zip(runs.Skip(1)).All(pair => pair.First < pair.Second);
        if (!grows)
        {
            sheet.Problem(ReadingColumns.OrderRuns, text, ReadingsFileWords.NoWholeNumber, ReadingsFileWords.OrderRunsForm);
            return;
        }

        (OrderRuns, _orderRunsText) = ([.. runs.Select(run => run!.Value)], text);
    }

    private RunSoFar? Run()
    {
        string? code = Name(ReadingColumns.Code, isNeeded: true);
        bool isTimed = TryNumber(ReadingColumns.Minutes, 0, LongestMinutes, MinutesAllowed, out double? minutes);
        return code is null || !isTimed
            ? null
            : new RunSoFar(
                sheet.Line,
                code,
                minutes,
                Optional(ReadingColumns.Car),
                Optional(ReadingColumns.Slot),
                Optional(ReadingColumns.Session)
            );
    }

    private void Keep(int number, RunSoFar run, PlannedSegment segment, LevelRange? range, SpoiltText spoilt)
    {
        if (range is not { } levels)
        {
            Missed++;
            return;
        }

        Levels.Add(
            new MeasuredLevel(
                number,
                run.Code,
                segment.Segment,
                segment.Kind,
                segment.Class,
                levels.LowDb,
                levels.HighDb,
                spoilt.IsSpoilt,
                Once(spoilt.Cause),
                run.Minutes,
                run.Car,
                run.Slot,
                run.Session
            )
        );
    }

    private int? RunNumber()
    {
        string text = sheet[ReadingColumns.Run];
        int? number = CsvNumbers.Count(text);
        if (number is null)
        {
            sheet.Problem(
                ReadingColumns.Run,
                text,
                text.Length == 0 ? "no run" : ReadingsFileWords.NoWholeNumber,
                ReadingsFileWords.RunForm
            );
        }

        return number;
    }

    private PlannedSegment? Segment()
    {
        string? name = Name(ReadingColumns.Segment, isNeeded: true);
        string? word = Name(ReadingColumns.Kind, isNeeded: true);
        if (word is null)
        {
            return null;
        }

        SegmentKind kind = SegmentKind.Of(word);
        string said = sheet[ReadingColumns.Class].ToLowerInvariant();
        MeasureClass? measureClass = (said, kind.IsImpact) switch
        {
            ("impact", _) or ("", true) => MeasureClass.Impact,
            ("steady", false) or ("", false) => MeasureClass.Steady,
            _ => null,
        };
        if (measureClass is null)
        {
            sheet.Problem(
                ReadingColumns.Class,
                said,
                said == "steady" ? ReadingsFileWords.ImpactIsReadAsPeak : "no class",
                ReadingsFileWords.ClassForm
            );
        }

        bool isTimed = TryNumber(ReadingColumns.Seconds, LeastSeconds, LongestSeconds, SecondsAllowed, out double? seconds);
        return name is null || measureClass is null || !isTimed ? null : new PlannedSegment(name, kind.Word, measureClass.Value, seconds);
    }

    /// <summary>A number that may be missing.</summary>
    private bool TryNumber(int column, double least, double most, string allowed, out double? number)
    {
        string text = sheet[column];
        number = text.Length == 0 ? null : CsvNumbers.Number(text);
        if (text.Length == 0 || (number >= least && number <= most))
        {
            return true;
        }

        sheet.Problem(column, text, number is null ? CsvNumbers.WhatIsWrong(text) : ReadingsFileWords.OutOfRange, allowed);
        return false;
    }

    private bool TryLevels(out LevelRange? range)
    {
        range = null;
        bool hasLow = sheet[ReadingColumns.Low].Length > 0;
        bool hasHigh = sheet[ReadingColumns.High].Length > 0;
        if (!hasHigh)
        {
            if (hasLow)
            {
                sheet.Problem(ReadingColumns.High, "", ReadingsFileWords.LowWithoutHigh, ReadingsFileWords.OneValueGoesInHigh);
            }

            return !hasLow;
        }

        double? high = Level(ReadingColumns.High);
        double? low = hasLow ? Level(ReadingColumns.Low) : high;
        if (low > high)
        {
            sheet.Problem(
                ReadingColumns.Low,
                sheet[ReadingColumns.Low],
                ReadingsFileWords.LowIsAboveHigh(sheet[ReadingColumns.High]),
                ReadingsFileWords.WriteLowerValueInLow
            );
            return false;
        }

        range = low is { } from && high is { } to ? new LevelRange(from, to) : null;
        return range is not null;
    }

    private double? Level(int column)
    {
        string text = sheet[column];
        double? level = CsvNumbers.Number(text);
        if (level is { } known && LevelRange.IsLevel(known))
        {
            return level;
        }

        sheet.Problem(column, text, level is null ? CsvNumbers.WhatIsWrong(text) : ReadingsFileWords.NoLevelOfMeter, LevelAllowed);
        return null;
    }

    private bool TrySpoilt(out SpoiltText spoilt)
    {
        string text = sheet[ReadingColumns.Spoilt];
        SpoiltText? read = IsName(text) ? SpoiltText.Read(text) : null;
        spoilt = read ?? default;
        if (read is null)
        {
            sheet.Problem(ReadingColumns.Spoilt, text, ReadingsFileWords.UnclearWhetherItCounts, SpoiltText.Allowed);
        }

        return read is not null;
    }

    private string? Optional(int column) => Name(column, isNeeded: false) is { Length: > 0 } text ? text : null;

    /// <summary>A name: no control characters, which could steer a terminal, and not longer than a line of a table can take.</summary>
    private string? Name(int column, bool isNeeded)
    {
        string text = sheet[column];
        if (text.Length == 0 && isNeeded)
        {
            sheet.Problem(column, text, $"no {ReadingColumns.Names[column]}", ReadingsFileWords.EveryReadingHas(column));
            return null;
        }

        if (!IsName(text))
        {
            sheet.Problem(column, text, "no name", ReadingsFileWords.NameForm);
            return null;
        }

        return text;
    }

    private static bool IsName(string text)
    {
        bool isName = text.Length <= CsvLimits.NameLength;
        for (int i = 0; isName && i < text.Length; i++)
        {
            isName = !char.IsControl(text[i]);
        }

        return isName;
    }

    private string? Once(string? cause)
    {
        if (cause is null)
        {
            return null;
        }

        if (!_causes.TryGetValue(cause, out string? known))
        {
            _causes.Add(cause, known = cause);
        }

        return known;
    }
}
