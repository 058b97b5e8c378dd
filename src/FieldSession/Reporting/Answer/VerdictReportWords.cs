using FieldSession.Comparing;
using FieldSession.Revealing;
using FieldSession.Reviewing;

namespace FieldSession.Reporting;

/// <summary>The sentences of the verdict: meter, ring, ear and worth.</summary>
internal static class VerdictReportWords
{
    // Verdict: the meter
    public const string VerdictInFull = "The verdict in full";

    public static string NamesAreWithheld(OpenedKey key) =>
        $"The names of the specs are withheld here: {string.Join("; ", key.WhyWithheld)}. See 'Codes and key'.";

    public const string FewerThanTwoCodes = "Nothing can be compared: fewer than two codes were driven.";
    public const string NothingCouldBeCompared = "nothing could be compared";
    public const string MoreRunsNotKnown = "; how many runs would settle it is not known yet";
    public const string MoreThanTenWhenCautious = ", more than 10 to be cautious";
    public const string NotEvenTenMoreRuns = "; not even 10 more runs per code would settle it";

    public static string DayWouldHaveShown(CouldShow shown) =>
        $" With this day's scatter a difference of {Figures.Db(shown.Db)} dB would have been shown in 4 of 5 such days; "
        + $"that figure itself may be between {Figures.Db(shown.LowDb)} and {Figures.Db(shown.HighDb)} dB, as the scatter "
        + $"rests on {Figures.Db(shown.Df)} degrees of freedom.";

    public static string MeasuredButSmall(string margin, string numbers) => $"MEASURED, BUT SMALL (within {margin} dB): {numbers}";

    public static string SameWithin(string margin, string numbers) => $"SAME WITHIN {margin} dB: {numbers}";

    public static string DifferenceWithInterval(Estimate overall, bool isUnfinished) =>
        $"{Figures.Difference(overall)} dB, 95 % interval {Figures.Interval95(overall)} dB{(isUnfinished ? ", unfinished" : "")}";

    public static string WordsLevel(string interval, int candidates, int lengthened) =>
        $" (the word uses the {(candidates > 1 ? "joint" : "stricter")} {interval} "
        + $"dB{(candidates > 1 ? $", which allows for {candidates} comparisons" : "")}"
        + $"{(lengthened > 0 ? $", extended {lengthened} time{(lengthened == 1 ? "" : "s")}" : "")})";

    public static string RunsWhenCautious(int runs) => $", {runs} to be cautious";

    public static string MoreRunsWouldSettle(int runs, double chance, string whenCautious) =>
        $"; {runs} more run{(runs == 1 ? "" : "s")} per code would settle it with a chance of {100 * chance:0} %, if "
        + $"things go on as seen{whenCautious}";

    // Verdict: meter and ear in one sentence
    public const string LessThanMargin = ", by less than the margin that matters";
    public const string ThisDayCannotSay = "This day cannot say.";

    public static string MeterShowsIt(string louderOrQuieter) => $"the meter shows it {louderOrQuieter}";

    public static string CrewHeardIt(string meterShows, string test) =>
        $"The crew heard a difference blind in this test ({test}), and {meterShows}.";

    public static string CrewDidNotHearIt(string meterShows, string test, string wouldHaveFound) =>
        $"The crew did not hear it in this test ({test}), which {wouldHaveFound}; {meterShows}.";

    public static string HearingNotTestedEnough(string meterShows) =>
        $"{char.ToUpperInvariant(meterShows[0])}{meterShows[1..]}; whether it is heard was not tested enough.";

    public const string LookAtTheRing = "look at 200 and 250 Hz";

    public static string HeardButNotResolved(string test, string? ring) =>
        $"The crew heard a difference blind in this test ({test}), which the meter did not resolve: a change of character "
        + $"that dB(A) misses, or too few runs; {ring ?? LookAtTheRing}.";

    public static string CharacterThatMeterMisses(string test, string? ring) =>
        $"The crew heard a difference blind in this test ({test}), and the meter shows none of the size that matters: a "
        + $"change of character that dB(A) misses; {ring ?? LookAtTheRing}.";

    public static string NotToldApart(ClassComparison? main, string test, string wouldHaveFound) =>
        $"The crew could not tell them apart in this test ({test}), which {wouldHaveFound}; the meter could have seen "
        + $"{Figures.Db(main?.CouldShow?.Db ?? main?.Mdd80Db)} dB.";

    public static string MeterCouldNotTellApart(ClassComparison? main) =>
        "The meter shows no difference of the size that matters, and could have seen "
        + $"{Figures.Db(main?.CouldShow?.Db ?? main?.Mdd80Db)} dB; whether the ear can was not tested enough.";

    // Verdict: the worth
    public const string CantSayWithoutPrice = "CAN'T SAY: the price was not written down before the reveal.";
    public const string PriceNotWrittenDown = "the price was not written down before the reveal";
    public const string MorePerSet = " more per set";

    public static string WorthToOwner(string worth) => $"up to {worth} is what the owner would pay";

    public const string NotWorthItBecauseUnheard =
        "NOT WORTH IT for the sound inside, which differs by less than the margin that matters and was not heard in this test";
    public const string CantSayWithoutEar = "CAN'T SAY without the ear";
    public const string CantSayBecauseNotResolved = "CAN'T SAY, because the meter did not resolve which is quieter";
    public const string CantSayBecauseHeardNoLevel =
        "CAN'T SAY, because what was heard is not a level: the owner weighs what the ratings say";
    public const string CantSayWithoutControl = "CAN'T SAY while it is not known which code is the control";
    public const string NotWorthItBecauseLouder = "NOT WORTH IT for the sound inside, which is louder";
    public const string CantSayCheaperButLouder = "CAN'T SAY for the owner: it costs nothing more and is louder inside";
    public const string CantSayWithoutOwnersPrice = "CAN'T SAY for the owner, who wrote down no price that it would be worth";
    public const string NotWorthItAtThisPrice = "NOT WORTH IT at this price, which is above what the owner said it would be worth";
    public const string WorthItByWhatOwnerSaid = "WORTH IT by what the owner said: quieter, and heard in this test";
    public const string WorthItForThoseWhoMind =
        "WORTH IT FOR SOME, who mind what they hear though it is less than the margin that matters";
    public const string WorthItForOtherEars =
        "WORTH IT FOR SOME, with other ears: the meter shows it quieter, and these ears did not find it in this test";
    public const string NoPricePerDbForLouder = "not defined, because the dearer spec is the louder one";
    public const string PricePerDbNotDefined = "not defined, because no difference was measured";

    public const string NoForcedChoicesPlanned = "no forced choices were planned for this pair";

    // The words alone
    public const string MeasuredButSmallWord = "MEASURED, BUT SMALL";
    public const string WorthItForSomeWord = "WORTH IT FOR SOME";
    public const string NotWorthItWord = "NOT WORTH IT";

    public static string SameWithinWord(string margin) => $"SAME WITHIN {margin} dB";
}
