namespace FieldSession.Signals;

/// <summary>Quantiles of a sample by straight line between its neighbouring order statistics (Hyndman and Fan 1996, type 7).</summary>
public static class Quantile
{
    /// <summary>A quantile of numbers that are sorted ascending, one or more.</summary>
    /// <param name="sorted">The numbers.</param>
    /// <param name="share">0 is the least, 0.5 the median, 1 the greatest.</param>
    public static double OfSorted(ReadOnlySpan<double> sorted, double share)
    {
        double place = share * (sorted.Length - 1);
        int below = Math.Min((int)place, sorted.Length - 1);
        int above = Math.Min(below + 1, sorted.Length - 1);
        return sorted[below] + ((place - below) * (sorted[above] - sorted[below]));
    }

    /// <summary>A quantile of numbers in any order, one or more.</summary>
    /// <param name="numbers">The numbers.</param>
    /// <param name="share">0 is the least, 0.5 the median, 1 the greatest.</param>
    public static double Of(IEnumerable<double> numbers, double share)
    {
        double[] sorted = [.. numbers.Order()];
        return OfSorted(sorted, share);
    }

    /// <summary>The median of numbers in any order, one or more.</summary>
    public static double Median(IEnumerable<double> numbers) => Of(numbers, 0.5);
}
