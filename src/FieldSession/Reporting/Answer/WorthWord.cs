using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>The word on worth.</summary>
public enum WorthVerdict
{
    /// <summary>Anything else.</summary>
    CantSay,

    /// <summary>Quieter, heard, and within what the owner said it would be worth.</summary>
    WorthIt,

    /// <summary>The same for some owners or ears only.</summary>
    WorthItForSome,

    /// <summary>It costs more than it gives.</summary>
    NotWorthIt,
}

/// <summary>
/// What the difference costs, and whether it is worth it to the owner, who wrote down prices, margin and life of a set before the reveal.
/// </summary>
public static class WorthWord
{
    /// <summary>
    /// The line on worth, by fixed rules (docs/report.md, "The verdict"). A price per dB is given only where a difference was measured,
    /// with the ends of its interval.
    /// </summary>
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
            return VerdictReportWords.CantSayWithoutPrice;
        }

        string perDb = PerDb(main, meter, price, plan.Currency, isAgainstControl);
        return $"{Verdict(main, meter, ear, plan, isAgainstControl).Words}: {Price(plan)}; per dB {perDb}.";
    }

    /// <summary>What it costs: "96 crowns more per set, 2 crowns per 1000 km".</summary>
    public static string Price(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.PricePremium is not { } price)
        {
            return VerdictReportWords.PriceNotWrittenDown;
        }

        string InMoney(double amount) => $"{amount:0.##} {plan.Currency}".TrimEnd();
        string?[] parts =
        [
            InMoney(price) + VerdictReportWords.MorePerSet,
            plan.SetLifeKm is { } life ? $"{InMoney(price / (life / 1000))} per 1000 km" : null,
            plan.PriceWorth is { } worth ? VerdictReportWords.WorthToOwner(InMoney(worth)) : null,
        ];
        return string.Join(", ", parts.OfType<string>());
    }

    /// <summary>The word alone: "NOT WORTH IT".</summary>
    public static string Word(WorthVerdict verdict) =>
        verdict switch
        {
            WorthVerdict.WorthIt => "WORTH IT",
            WorthVerdict.WorthItForSome => VerdictReportWords.WorthItForSomeWord,
            WorthVerdict.NotWorthIt => VerdictReportWords.NotWorthItWord,
            _ => "CAN'T SAY",
        };

    /// <summary>The word on worth with its reason.</summary>
    public static (WorthVerdict Verdict, string Words) Verdict(
        ClassComparison? main,
        MeterVerdict meter,
        EarVerdict ear,
        Plan plan,
        bool isAgainstControl
    )
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.PricePremium is { } price
            ? Word(main, meter, ear, (price, plan.PriceWorth), isAgainstControl)
            : (WorthVerdict.CantSay, VerdictReportWords.CantSayWithoutPrice);
    }

    // The margin is what the owner said would matter: a difference that stays below it and was not heard is not worth paying for.
    private static (WorthVerdict Verdict, string Words) Word(
        ClassComparison? main,
        MeterVerdict meter,
        EarVerdict ear,
        (double Asked, double? Worth) price,
        bool isAgainstControl
    ) =>
        (meter, ear) switch
        {
            (MeterVerdict.SameWithin or MeterVerdict.MeasuredButSmall, EarVerdict.NotHeard) when price.Asked > 0 => (
                WorthVerdict.NotWorthIt,
                VerdictReportWords.NotWorthItBecauseUnheard
            ),
            (_, EarVerdict.NotTestedEnough) => (WorthVerdict.CantSay, VerdictReportWords.CantSayWithoutEar),
            (MeterVerdict.NotResolved, _) => (WorthVerdict.CantSay, VerdictReportWords.CantSayBecauseNotResolved),
            (MeterVerdict.SameWithin, _) => (WorthVerdict.CantSay, VerdictReportWords.CantSayBecauseHeardNoLevel),
            _ when !isAgainstControl => (WorthVerdict.CantSay, VerdictReportWords.CantSayWithoutControl),
            _ => Weighed(main?.Overall?.DifferenceDb < 0, meter, ear, price),
        };

    // A difference was measured; it is known which way, and what the ear said to it.
    private static (WorthVerdict Verdict, string Words) Weighed(
        bool isQuieter,
        MeterVerdict meter,
        EarVerdict ear,
        (double Asked, double? Worth) price
    ) =>
        (isQuieter, price) switch
        {
            (false, { Asked: > 0 }) => (WorthVerdict.NotWorthIt, VerdictReportWords.NotWorthItBecauseLouder),
            (false, _) => (WorthVerdict.CantSay, VerdictReportWords.CantSayCheaperButLouder),
            (_, { Worth: null }) => (WorthVerdict.CantSay, VerdictReportWords.CantSayWithoutOwnersPrice),
            (_, { Asked: var asked, Worth: var worth }) when asked > worth => (
                WorthVerdict.NotWorthIt,
                VerdictReportWords.NotWorthItAtThisPrice
            ),
            _ => (meter, ear) switch
            {
                (MeterVerdict.Measured, EarVerdict.HeardBlind) => (WorthVerdict.WorthIt, VerdictReportWords.WorthItByWhatOwnerSaid),
                (_, EarVerdict.HeardBlind) => (WorthVerdict.WorthItForSome, VerdictReportWords.WorthItForThoseWhoMind),
                _ => (WorthVerdict.WorthItForSome, VerdictReportWords.WorthItForOtherEars),
            },
        };

    private static string PerDb(ClassComparison? main, MeterVerdict meter, double price, string currency, bool isAgainstControl)
    {
        if (
            meter is not (MeterVerdict.Measured or MeterVerdict.MeasuredButSmall)
            || main?.Overall is not { Lo95Db: { } lo, Hi95Db: { } hi } overall
        )
        {
            return VerdictReportWords.PricePerDbNotDefined;
        }

        if (isAgainstControl && price > 0 && overall.DifferenceDb > 0)
        {
            return VerdictReportWords.NoPricePerDbForLouder;
        }

        // the interval that agrees with the word leaves out 0
        (lo, hi) = main.Basis is { } basis ? (basis.LowDb, basis.HighDb) : (lo, hi);
        double[] ends = [price / Math.Abs(lo), price / Math.Abs(hi)];
        return $"{$"{price / Math.Abs(overall.DifferenceDb):0} {currency}".TrimEnd()} ({ends.Min():0} to {ends.Max():0})";
    }
}
