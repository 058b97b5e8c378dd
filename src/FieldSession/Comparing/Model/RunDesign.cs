using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// The columns of the run model (docs/formulas.md, "Run model"): one per code; then slots, or a straight drift; then cars and sessions as
/// far as they bring something new.
/// </summary>
internal sealed class RunDesign
{
    private const double NotConfounded = 1e-7;
    private const int LeastDfBesideDrift = 3;
    private readonly List<(string Name, double[] Column)> _refused = [];

    private RunDesign(int runs) => Columns = new OrthonormalColumns(runs);

    /// <summary>The columns taken.</summary>
    public OrthonormalColumns Columns { get; }

    /// <summary>Place of the drift column; null: drift is not in the model.</summary>
    public int? DriftColumn { get; private set; }

    /// <summary>Whether runs were driven side by side.</summary>
    public bool Parallel { get; private set; }

    /// <summary>Degrees of freedom left.</summary>
    public int Df => Columns.Rows - Columns.Count;

    /// <summary>Builds the design.</summary>
    /// <param name="runs">The counted runs, grouped by code.</param>
    /// <param name="codes">How many codes they carry.</param>
    /// <param name="timesKnown">Whether equal times mean side by side.</param>
    /// <param name="drift">Whether drift is in; null: by the rule.</param>
    public static RunDesign Of(DrivenRun[] runs, int codes, bool timesKnown, bool? drift)
    {
        RunDesign design = new(runs.Length);
        design.AddCodes(runs);
        string[] slots = [.. runs.Select(run => SlotOf(run, timesKnown))];
        design.Parallel = slots.Distinct().Count() < slots.Length;
        if (design.Parallel)
        {
            design.AddGroups("slot", slots);
        }
        else if (drift ?? TakesDriftOut(runs.Length, codes))
        {
            design.AddDrift(runs);
        }

        design.AddGroups("car", [.. runs.Select(run => run.Car ?? "")]);
        design.AddGroups("session", [.. runs.Select(run => run.Session ?? "")]);
        return design;
    }

    /// <summary>
    /// Whether so many runs, driven one after the other, leave enough to take a straight drift out: by this rule only, never by looking.
    /// </summary>
    public static bool TakesDriftOut(int runs, int codes) => runs - codes - 1 >= LeastDfBesideDrift;

    /// <summary>Times from the mean of their own session, hours.</summary>
    public static double[] TimesInSession(DrivenRun[] runs)
    {
        Dictionary<string, double> mean = runs.GroupBy(run => run.Session ?? "").ToDictionary(x => x.Key, x => x.Average(run => run.Hours));
        return [.. runs.Select(run => run.Hours - mean[run.Session ?? ""])];
    }

    /// <summary>Columns of codes and sessions only, to see a drift beside a model that has none.</summary>
    public static OrthonormalColumns CodesAndSessions(DrivenRun[] runs)
    {
        RunDesign design = new(runs.Length);
        design.AddCodes(runs);
        design.AddGroups("session", [.. runs.Select(run => run.Session ?? "")]);
        return design.Columns;
    }

    /// <summary>
    /// What cannot be told apart from a contrast ("car", "session"); null: nothing. A column left out as a combination of the others spoils
    /// the contrast exactly if the contrast's weights do not cancel over it.
    /// </summary>
    public string? ConfoundedWith(double[] weights) =>
        _refused.FirstOrDefault(column => Math.Abs(column.Column.Zip(weights, (x, w) => x * w).Sum()) > NotConfounded).Name;

    private static string SlotOf(DrivenRun run, bool timesKnown) =>
        run.Slot is not null ? $"slot {run.Session} {run.Slot}"
        : timesKnown ? $"time {run.Session} {run.Hours:R}"
        : $"run {run.Number}";

    private void AddCodes(DrivenRun[] runs)
    {
        foreach (int code in runs.Select(run => run.Code).Distinct())
        {
            Columns.TryAdd([.. runs.Select(run => run.Code == code ? 1.0 : 0)]);
        }
    }

    private void AddDrift(DrivenRun[] runs)
    {
        double[] times = TimesInSession(runs);
        DriftColumn = Columns.TryAdd(times) ? Columns.Count - 1 : null;
    }

    private void AddGroups(string name, string[] groupOfRun)
    {
        foreach (string group in groupOfRun.Distinct().Skip(1))
        {
            double[] column = [.. groupOfRun.Select(g => g == group ? 1.0 : 0)];
            if (!Columns.TryAdd(column))
            {
                _refused.Add((name, column));
            }
        }
    }
}
