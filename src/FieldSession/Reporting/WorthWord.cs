using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>What the difference costs, and whether it is worth it to the owner, who wrote down prices, margin and life of a set before the reveal.</summary>
public static class WorthWord
{
    /// <summary>The line on worth, by fixed rules (docs/report.md, "The verdict"). A price per dB is given only where a difference was measured, with the ends of its interval.</summary>
    /// <param name="main">The comparison that the plan's main question is answered on.</param>
    /// <param name="meter">The meter's word on it.</param>
    /// <param name="ear">The ear's word.</param>
    /// <param name="plan">The plan, for the prices.</param>
    /// <param name="isAgainstControl">Whether it is known that the difference is candidate minus control.</param>
    public static string Of(ClassComparison? main, MeterVerdict meter, EarVerdict ear, Plan plan, bool isAgainstControl)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.PricePremium is not { } price)
        {
            return "CAN'T SAY: the price was not written down before the reveal.";
        }

        string perSet = $"{price:0.##} {plan.Currency}".TrimEnd() + " more per set";
        string perDistance = plan.SetLifeKm is { } life ? $", {price / (life / 1000):0.##} {plan.Currency} per 1000 km" : "";
        string perDb = PerDb(main, meter, price, plan.Currency);
        return $"{Word(main, meter, ear, (price, plan.PriceWorth), isAgainstControl)}: {perSet}{perDistance}; per dB {perDb}.";
    }

    // The margin is what the owner said would matter: a difference that stays below it and was not heard is not worth paying for.
    private static string Word(ClassComparison? main, MeterVerdict meter, EarVerdict ear, (double Asked, double? Worth) price, bool isAgainstControl) => (meter, ear) switch
    {
        (MeterVerdict.SameWithin or MeterVerdict.MeasuredButSmall, EarVerdict.NotHeard) when price.Asked > 0 =>
            "NOT WORTH IT for the sound inside, which differs by less than the margin that matters and was not heard",
        (_, EarVerdict.NotTestedEnough) => "CAN'T SAY without the ear",
        (MeterVerdict.NotResolved, _) => "CAN'T SAY, because the meter did not resolve which is quieter",
        (MeterVerdict.SameWithin, _) => "CAN'T SAY, because what was heard is no level: the owner weighs what the ratings say",
        _ when !isAgainstControl => "CAN'T SAY while it is not known which code is the control",
        _ => Weighed(main?.Overall?.DifferenceDb < 0, meter, ear, price),
    };

    // A difference was measured; it is known which way, and what the ear said to it.
    private static string Weighed(bool isQuieter, MeterVerdict meter, EarVerdict ear, (double Asked, double? Worth) price) => (isQuieter, price) switch
    {
        (false, { Asked: > 0 }) => "NOT WORTH IT for the sound inside, which is louder",
        (false, _) => "CAN'T SAY for the owner: it costs nothing more and is louder inside",
        (_, { Worth: null }) => "CAN'T SAY for the owner, who wrote down no price that it would be worth",
        (_, { Asked: var asked, Worth: var worth }) when asked > worth => "NOT WORTH IT at this price, which is above what the owner said it would be worth",
        _ => (meter, ear) switch
        {
            (MeterVerdict.Measured, EarVerdict.HeardBlind) => "WORTH IT by what the owner said: quieter, and heard",
            (_, EarVerdict.HeardBlind) => "WORTH IT FOR SOME, who mind what they hear though it is less than the margin that matters",
            _ => "WORTH IT FOR SOME, with other ears: the meter shows it quieter, these ears did not find it",
        },
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
