using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>What the difference costs, from the price and the life of a set that the owner wrote down before the reveal.</summary>
public static class WorthWord
{
    /// <summary>The line on worth. A price per dB is given only where a difference was measured, with the ends of its interval.</summary>
    public static string Of(ClassComparison? main, MeterVerdict meter, EarVerdict ear, Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.PricePremium is not { } price)
        {
            return "CAN'T SAY: the price was not written down before the reveal.";
        }

        string perSet = $"{price:0.##} {plan.Currency}".TrimEnd() + " more per set";
        string perDistance = plan.SetLifeKm is { } life ? $", {price / (life / 1000):0.##} {plan.Currency} per 1000 km" : "";
        string perDb = PerDb(main, meter, price, plan.Currency);
        return $"CAN'T SAY {(ear == EarVerdict.NotTestedEnough ? "without the ear" : "for the owner, who wrote down no price that it would be worth")}: {perSet}{perDistance}; per dB {perDb}.";
    }

    private static string PerDb(ClassComparison? main, MeterVerdict meter, double price, string currency)
    {
        if (meter is not (MeterVerdict.Measured or MeterVerdict.MeasuredButSmall) || main?.Overall is not { Lo95Db: { } lo, Hi95Db: { } hi } overall)
        {
            return "not defined, because no difference was measured";
        }

        double[] ends = [price / Math.Abs(lo), price / Math.Abs(hi)];
        return $"{price / Math.Abs(overall.DifferenceDb):0} {currency} ({ends.Min():0} to {ends.Max():0})";
    }
}
