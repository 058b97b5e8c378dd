namespace FieldSession.Comparing;

/// <summary>What was changed for a line of the sensitivity.</summary>
public enum SensitivityChange
{
    /// <summary>Spoilt readings put back.</summary>
    SpoiltPutBack,

    /// <summary>One run left out.</summary>
    RunLeftOut,

    /// <summary>One segment left out.</summary>
    SegmentLeftOut,

    /// <summary>The drift column put in or taken out, against the rule.</summary>
    DriftSwitched,
}

/// <summary>The comparison once more with one thing changed.</summary>
/// <param name="Change">What was changed.</param>
/// <param name="Name">The run or segment that was left out; empty where the change names none.</param>
/// <param name="Overall">The difference then.</param>
/// <param name="Verdict">The verdict words then.</param>
/// <param name="HasVerdict">Whether those are verdict words; false: what is left carries none.</param>
public sealed record SensitivityLine(SensitivityChange Change, string Name, Estimate Overall, string Verdict, bool HasVerdict);

/// <summary>
/// How much the result of one code and class hangs on single runs, single segments, the spoilt readings and the drift column.
/// </summary>
/// <param name="Lines">Every change tried, as far as a comparison was possible after it.</param>
/// <param name="LowestDb">Lowest difference among the lines and the result itself, dB.</param>
/// <param name="HighestDb">Highest difference among them, dB.</param>
/// <param name="VerdictChanges">True if any line that carries a verdict has other words than the result.</param>
public sealed record Sensitivity(IReadOnlyList<SensitivityLine> Lines, double LowestDb, double HighestDb, bool VerdictChanges)
{
    /// <summary>The least change that turns the word; null: none of those tried does, or there is no word.</summary>
    public LeastChange? Least { get; init; }

    /// <summary>Whether single readings were tried too; false: there are too many of them.</summary>
    public bool ReadingsTried { get; init; }
}

/// <summary>
/// How often the word of a pair hangs on a change of some size by chance alone: days of the same runs, codes, order and number of segments,
/// complete, with the difference and the scatter of today, and on each the same question (docs/formulas.md, "Sensitivity"). In a complete
/// table a reading that is left out is replaced by what the others predict (F. Yates, Empire J. Exp. Agric. 1, 1933), so nothing has to be
/// fitted again.
/// </summary>
internal sealed class TurnedByChance
{
    private const int Days = 200;
    private const int Seed = 20;

    private readonly PairLine _pair;
    private readonly WordOfRuns _word;
    private readonly int _segments;
    private readonly DrivenRun[] _runs;
    private readonly double _runSd;
    private readonly double _readingSd;
    private readonly Random _lot = new(Seed);

    /// <summary>Days such as that of a pair, with the levels that its word needs among all that are asked at once.</summary>
    public TurnedByChance(PairLine pair, DayTable table, WordLevels levels)
    {
        _pair = pair;
        _runs = pair.Model.Runs;
        _segments = pair.Model.AllColumns.Length;
        _word = new WordOfRuns(pair, table, levels);
        double reading = pair.Model.Scatter.ReadingVarianceUsed ?? 0;
        _readingSd = Math.Sqrt(reading);
        _runSd = Math.Sqrt(Math.Max(0, (pair.Model.Scatter.RunVarianceUsed ?? 0) - reading / _segments));
    }

    /// <summary>The share of the days on which a change of this size turns the word, 0..1.</summary>
    /// <param name="size">The size.</param>
    /// <param name="readings">How many readings at most, where it is readings.</param>
    public double Share(ChangeSize size, int readings)
    {
        int turned = 0;
        for (int day = 0; day < Days; day++)
        {
            SimulatedTable made = Day();
            turned += Turns(made, _word.Of(made), size, readings) ? 1 : 0;
        }

        return turned / (double)Days;
    }

    private SimulatedTable Day()
    {
        double[][] levels =
        [
            .. _runs.Select(run =>
            {
                double of = (run.Code == _pair.Model.Counted.Codes[_pair.First] ? _pair.Overall.DifferenceDb : 0) + _runSd * Normal();
                return Enumerable.Range(0, _segments).Select(_ => of + _readingSd * Normal()).ToArray();
            }),
        ];
        return new SimulatedTable(levels, [.. _runs.Select(run => run.Code)]);
    }

    private bool Turns(SimulatedTable day, WordCode word, ChangeSize size, int readings) =>
        size switch
        {
            ChangeSize.Run => Enumerable.Range(0, _runs.Length).Any(run => _word.Without(day, run) is { } other && other != word),
            ChangeSize.Segment => _segments > 1
                && Enumerable.Range(0, _segments).Any(segment => _word.Of(day.WithoutSegment(segment)) != word),
            _ => ByReadings([day], word, readings),
        };

    // as on the real day: one reading after the other, along the two ways in which the word can turn
    private bool ByReadings(SimulatedTable[] days, WordCode word, int readings)
    {
        SimulatedTable[] tried = [.. days.SelectMany(day => day.WithoutEachReading())];
        return tried.Length > 0
            && (
                Array.Exists(tried, each => _word.Of(each) != word)
                || (readings > 1 && ByReadings([tried.MaxBy(_word.Clearness)!, tried.MinBy(_word.Clearness)!], word, readings - 1))
            );
    }

    // G. E. P. Box, M. E. Muller, Annals of Mathematical Statistics 29, 1958
    private double Normal() => Math.Sqrt(-2 * Math.Log(1 - _lot.NextDouble())) * Math.Cos(2 * Math.PI * _lot.NextDouble());
}

/// <summary>How large a change is.</summary>
public enum ChangeSize
{
    /// <summary>The flag of a reading or of a few: taken back, or given.</summary>
    Readings,

    /// <summary>One run left out.</summary>
    Run,

    /// <summary>One segment left out.</summary>
    Segment,
}

/// <summary>The least change of the readings that turns the word of a class.</summary>
/// <param name="Size">How large it is.</param>
/// <param name="Places">The readings whose flag changes, or the one run or segment.</param>
/// <param name="Verdict">The word then.</param>
/// <param name="ShareByChance">On how many of simulated days of the same design, difference and scatter a change of this size turns the
/// word as well, 0..1.</param>
public sealed record LeastChange(ChangeSize Size, IReadOnlyList<ChangedPlace> Places, string Verdict, double ShareByChance);

/// <summary>Where something was changed.</summary>
/// <param name="Run">Number of the run; null: on all runs.</param>
/// <param name="Segment">Name of the segment; null: the whole run.</param>
/// <param name="PutBack">True: a spoilt reading was put back; false: left out.</param>
public sealed record ChangedPlace(int? Run, string? Segment, bool PutBack);
