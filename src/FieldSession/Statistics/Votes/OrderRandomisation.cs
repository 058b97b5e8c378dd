namespace FieldSession.Statistics;

/// <summary>
/// The exact randomisation test of two groups: of all ways to give the values to groups of these sizes, how many part the means at least as
/// far as they are (E. J. G. Pitman, Supplement to the J. Royal Statistical Society 4, 1937). It asks nothing of the values but that the
/// order was drawn by lot. Worked example: (1, 2, 3) and (4, 5, 6): 2 of 20 orders, p = 0.1.
/// </summary>
public static class OrderRandomisation
{
    /// <summary>More orders than this are not enumerated: 8 against 8 values are 12,870.</summary>
    public const int MostOrders = 15_000;

    // sums of the same values in another order differ by rounding
    private const double Equal = 1e-9;

    /// <summary>The test.</summary>
    /// <param name="P">Share of orders at least as far apart, the true one among them.</param>
    /// <param name="Orders">How many orders there are.</param>
    public readonly record struct Result(double P, int Orders);

    /// <summary>Enumerates all orders; null if there are more than <see cref="MostOrders"/>, or a group is empty.</summary>
    public static Result? Of(ReadOnlySpan<double> first, ReadOnlySpan<double> second)
    {
        double? orders = first.IsEmpty || second.IsEmpty ? null : Orders(first.Length, second.Length);
        if (orders is not <= MostOrders)
        {
            return null;
        }

        double[] values = [.. first, .. second];
        double mean = values.Average();
        for (int i = 0; i < values.Length; i++)
        {
            values[i] -= mean;
        }

        // with the grand mean taken off, the means are as far apart as the first group's sum is from 0
        double observed = Math.Abs(values[..first.Length].Sum()) - Equal;
        int asFar = CountAsFar(values, 0, first.Length, 0, observed);
        return new Result(asFar / orders.Value, (int)orders.Value);
    }

    private static int CountAsFar(double[] values, int from, int toTake, double sum, double observed)
    {
        if (toTake == 0)
        {
            return Math.Abs(sum) >= observed ? 1 : 0;
        }

        int count = 0;
        for (int i = from; i <= values.Length - toTake; i++)
        {
            count += CountAsFar(values, i + 1, toTake - 1, sum + values[i], observed);
        }

        return count;
    }

    private static double Orders(int first, int second)
    {
        double orders = 1;
        for (int i = 1; i <= second; i++)
        {
            orders = orders * (first + i) / i;
        }

        return Math.Round(orders);
    }
}
