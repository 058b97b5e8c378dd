using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>What the difference costs, from the price and the life of a set that the owner wrote down before the reveal.</summary>
public static class WorthWord
{
    /// <summary>The line on worth, by fixed rules (docs/report.md, "The verdict"). A price per dB is given only where a difference was measured, with the ends of its interval.</summary>
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
        return $"{Word(meter, ear, price)}: {perSet}{perDistance}; per dB {perDb}.";
    }

    // The margin is what the owner said would matter: a difference that stays below it and was not heard is not worth paying for.
    private static string Word(MeterVerdict meter, EarVerdict ear, double price) => (meter, ear) switch
    {
        (MeterVerdict.SameWithin or MeterVerdict.MeasuredButSmall, EarVerdict.NotHeard) when price > 0 =>
            "NOT WORTH IT for the sound inside, which differs by less than the margin that matters and was not heard",
        (_, EarVerdict.NotTestedEnough) => "CAN'T SAY without the ear",
        _ => "CAN'T SAY for the owner, who wrote down no price that it would be worth",
    };

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
