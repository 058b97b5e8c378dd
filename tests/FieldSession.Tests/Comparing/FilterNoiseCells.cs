using FieldSession.Comparing;
using FieldSession.Statistics;
using FieldSession.Tests.References;

namespace FieldSession.Tests.Comparing;

/// <summary>
/// The cell analysis of the filter data: 36 different cars, three a cell; a balanced design, so its table of sums of squares is that of
/// cell means.
/// </summary>
internal static class FilterNoiseCells
{
    public static void Add(Dictionary<string, object?> found, ReferenceCase reference)
    {
        (string Size, string Side, string Type, double Y)[] cars =
        [
            .. reference
                .Table("data.csv")
                .Select(row => (row["kind"], row["segment"].Split('-')[1], row["code"], ReferenceCase.Number(row["low"]))),
        ];
        Func<(string Size, string Side, string Type, double Y), string>[] factors = [car => car.Size, car => car.Side, car => car.Type];
        string[] names = ["Size", "Side", "Type"];
        double mean = cars.Average(car => car.Y);
        double Explained(int mask) =>
            cars.GroupBy(car => string.Join('|', factors.Where((_, i) => (mask >> i & 1) == 1).Select(factor => factor(car))))
                .Sum(cell => cell.Count() * Math.Pow(cell.Average(car => car.Y) - mean, 2));
        double residual = cars.Sum(car => (car.Y - mean) * (car.Y - mean)) - Explained(7);
        found["anova.Residuals.df"] = 24;
        found["anova.Residuals.SS"] = residual;
        for (int mask = 1; mask < 8; mask++)
        {
            int[] subsets = [.. Enumerable.Range(0, 8).Where(sub => (sub & mask) == sub)];
            double ss = subsets.Sum(sub => (int.PopCount(mask ^ sub) % 2 == 0 ? 1 : -1) * Explained(sub));
            int df = (mask & 1) == 1 ? 2 : 1;
            double f = ss / df / (residual / 24);
            string name = "anova." + string.Join(':', names.Where((_, i) => (mask >> i & 1) == 1));
            (found[$"{name}.df"], found[$"{name}.SS"], found[$"{name}.F"]) = (df, ss, f);
            found[$"{name}.p"] = FisherF.UpperTail(f, df, 24);
        }

        double sd = Math.Sqrt(residual / 24);
        double Difference(IEnumerable<(string Size, string Side, string Type, double Y)> some) =>
            some.Where(car => car.Type == "std").Average(car => car.Y) - some.Where(car => car.Type == "new").Average(car => car.Y);
        AddLine(found, "cells.overall.std-new", Difference(cars), sd * Math.Sqrt(2 / 18.0));
        var cells = cars.GroupBy(car => $"{car.Size}-{car.Side}").ToArray();
        double[] holm = Holm.Adjust([
            .. cells.Select(cell => AddLine(found, $"cells.seg.{cell.Key}", Difference(cell), sd * Math.Sqrt(2 / 3.0))),
        ]);
        for (int i = 0; i < cells.Length; i++)
        {
            found[$"cells.seg.{cells[i].Key}.p_holm"] = holm[i];
            found[$"cells.{cells[i].Key}.p_holm"] = holm[i];
        }
    }

    private static double AddLine(Dictionary<string, object?> found, string name, double d, double se)
    {
        (double t95, double t90) = (StudentT.Quantile(0.975, 24) * se, StudentT.Quantile(0.95, 24) * se);
        double p = StudentT.TwoSidedP(d / se, 24);
        FoundNumbers.Add(found, name, new Estimate(d, se, 24, d - t95, d + t95, p, d - t90, d + t90, Tost.P(d, se, 24, 1)));
        return p;
    }
}
