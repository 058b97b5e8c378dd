using FieldSession.Statistics;
using FieldSession.Tests.References;
using static FieldSession.Tests.References.ReferenceCase;

namespace FieldSession.Tests.Statistics;

/// <summary>Energy by car and day as a crossover, and Chow and Liu's trial, both by least squares.</summary>
internal static class CrossoverCase
{
    public static void Add(Dictionary<string, object?> found, ReferenceCase reference)
    {
        AddEnergy(found, reference);
        var rows = reference.Table("chowliu.csv");
        AddTrial(found, rows, y => y, "chowliu");
        AddTrial(found, rows, Math.Log, "chowliu.log");
    }

    private static void AddEnergy(Dictionary<string, object?> found, ReferenceCase reference)
    {
        var units = reference
            .Table("data.csv")
            .GroupBy(row => (Day: row["day"], Car: row["car"], Code: row["code"]))
            .Select(unit => (unit.Key, PerKm: unit.Sum(row => Number(row["energy_kWh"])) / unit.Sum(row => Number(row["distance_km"]))))
            .ToArray();
        found["units"] = units.Length;
        foreach (var unit in units)
        {
            found[$"unit.day{unit.Key.Day}.{unit.Key.Car}.kWh_per_100km"] = 100 * unit.PerKm;
        }

        double[] Column(Func<(string Day, string Car, string Code), bool> holds) => [.. units.Select(unit => holds(unit.Key) ? 1.0 : 0)];
        List<double[]> columns = [Column(unit => unit.Code == "B"), Column(unit => unit.Car == "car2")];
        columns.AddRange(units.Select(unit => unit.Key.Day).Distinct().Select(day => Column(unit => unit.Day == day)));
        LeastSquares fit = LeastSquares.Fit(columns, [.. units.Select(unit => Math.Log(unit.PerKm))]);
        (double d, double se, double df) = (fit.Coefficients[0], fit.StandardError(0)!.Value, fit.Df);
        (double t95, double t90) = (StudentT.Quantile(0.975, df) * se, StudentT.Quantile(0.95, df) * se);
        (found["energy.log_ratio"], found["energy.se"], found["energy.df"], found["energy.percent"]) = (d, se, df, Percent(d));
        (found["energy.lo95_percent"], found["energy.hi95_percent"]) = (Percent(d - t95), Percent(d + t95));
        (found["energy.lo90_percent"], found["energy.hi90_percent"]) = (Percent(d - t90), Percent(d + t90));
        found["energy.p"] = StudentT.TwoSidedP(d / se, df);
        found["energy.p_tost_2percent"] = Math.Max(
            StudentT.UpperTail((d - Math.Log(0.98)) / se, df),
            StudentT.UpperTail((Math.Log(1.02) - d) / se, df)
        );
        found["energy.s_unit_percent"] = 100 * Math.Sqrt(Math.Exp(fit.Rss / fit.Df) - 1);
        found["energy.mdd80_percent"] = Percent(NoncentralT.NoncentralityForPower(0.8, df, 0.05)!.Value * se);
        found["energy.car2_vs_car1_percent"] = Percent(fit.Coefficients[1]);
    }

    private static void AddTrial(
        Dictionary<string, object?> found,
        IReadOnlyList<Dictionary<string, string>> rows,
        Func<double, double> scale,
        string name
    )
    {
        double[] y = [.. rows.SelectMany(row => new[] { scale(Number(row["p1"])), scale(Number(row["p2"])) })];
        bool[] test = [.. rows.SelectMany(row => new[] { row["seq"][0] == 'T', row["seq"][1] == 'T' })];
        List<double[]> columns =
        [
            [.. test.Select(t => t ? 1.0 : 0)],
            [.. y.Select((_, i) => (double)(i % 2))],
        ];
        columns.AddRange(rows.Select((_, subject) => y.Select((_, i) => i / 2 == subject ? 1.0 : 0).ToArray()));
        LeastSquares fit = LeastSquares.Fit(columns, y);
        (double d, double se, double df) = (fit.Coefficients[0], fit.StandardError(0)!.Value, fit.Df);
        double t90 = StudentT.Quantile(0.95, df) * se;
        (found[$"{name}.d"], found[$"{name}.se"], found[$"{name}.df"], found[$"{name}.mse"]) = (d, se, df, fit.Rss / df);
        (found[$"{name}.lo90"], found[$"{name}.hi90"], found[$"{name}.p"]) = (d - t90, d + t90, StudentT.TwoSidedP(d / se, df));
        double margin = 0.2 * y.Where((_, i) => !test[i]).Average();
        found[$"{name}.p_tost_20percent_of_R"] = Tost.P(d, se, df, margin);
        found[$"{name}.ratio_percent"] = 100 * Math.Exp(d);
        (found[$"{name}.lo90_percent"], found[$"{name}.hi90_percent"]) = (100 * Math.Exp(d - t90), 100 * Math.Exp(d + t90));
    }

    private static double Percent(double logRatio) => 100 * (Math.Exp(logRatio) - 1);
}
