using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>What the answer card says.</summary>
internal static class AnswerWords
{
    public const string Title = "The answer";

    // the ends of a plot
    public const string Louder = "louder";
    public const string Quieter = "quieter";
    public const string Weaker = "weaker";
    public const string Stronger = "stronger";
    public const string Better = "better";
    public const string Worse = "worse";
    public const string More = "more";
    public const string Less = "less";

    // the sentence
    public const string MeterShowsIt = " The meter shows a difference.";
    public const string NotToldFromNothing = " The day could not tell that from no difference at all.";
    public const string EarNotAsked = "Nobody tested whether it can be heard.";
    public const string EarNotTestedEnough = "Whether it can be heard was not tested enough.";

    public static string About(Study study)
    {
        string[] days = [.. study.Runs.Select(run => $"{run.Started.At.UtcDateTime:yyyy-MM-dd}").Distinct()];
        string?[] parts =
        [
            days.Length == 0 ? "not driven yet" : string.Join(", ", days),
            study.Plan?.Facts.Car ?? (study.Plan?.Cars is { Count: > 0 } cars ? string.Join(", ", cars) : null),
            study.Plan?.TyreSize,
            study.Plan is { } plan ? $"route of {plan.Route.Count} segments" : null,
            $"{study.Runs.Count} runs",
        ];
        return $"{string.Join(" \u00b7 ", parts.OfType<string>())}.";
    }

    public static string CodesOfOtherFittings(IReadOnlyList<string> codes) =>
        codes.Count == 1
            ? $"{codes[0]} was on another fitting: the key says which spec it is, and then it joins this answer."
            : $"{string.Join(" and ", codes)} were on another fitting: the key says which specs they are, and then they join this answer.";

    public static string When(Study study)
    {
        int days = study.Runs.Select(run => run.Started.At.UtcDateTime.Date).Distinct().Count();
        return days == 1 ? "On this day" : $"Over these {days} days";
    }

    public static string Where(Plan plan) =>
        plan switch
        {
            { MainSegments: { Count: 1 } names } => $"on {names[0]}",
            { MainSegments: not null } => "on the roads in question",
            { MainMeasure: MainMeasure.Impact } => "over impacts",
            { MainMeasure: MainMeasure.All } => "over the whole loop",
            _ => "on steady roads",
        };

    public static string Differs(AskedPair pair, string db, string way) => $"{pair.Asked} was {db} dB {way} inside than {pair.Against}";

    public static string AsLoudAs(AskedPair pair) => $"{pair.Asked} was as loud inside as {pair.Against}";

    public static string GiveOrTake(string difference, string where, string half) => $"{difference} {where}, give or take {half} dB";

    public static string ErrorNotKnown(string difference, string where) => $"{difference} {where}; how far off that may be is not known";

    public static string Found(string when, string found) => $"{when} {found}.";

    public static string SameWithin(string when, AskedPair pair, string margin, string where) =>
        $"{when} {pair.Asked} and {pair.Against} were equally loud inside {where}, within {margin} dB.";

    public static string MeterShowsItSmall(string margin) =>
        $" The meter shows a difference, smaller than the {margin} dB agreed to matter.";

    public static string NoVerdict(string why) => $" That is not an answer yet: {why}.";

    public static string NothingCompared(string when, string asked, string against) =>
        $"{when} nothing could be compared between {asked} and {against}.";

    public static string EarHeard(ChoiceFinding choice) => $"{Who(choice)} told them apart by ear, blind{How(choice)}.";

    public static string EarDidNotHear(ChoiceFinding choice) =>
        $"{Who(choice)} did not tell them apart by ear{How(choice)}, in a test long enough to show it.";

    // the lines
    public const string CouldHaveShownLabel = "Could have shown";

    public static LabelledLine Meter(string word, ClassComparison? main) =>
        new(
            "Meter",
            word,
            main?.Overall is { } overall
                ? $"{Figures.Difference(overall)} dB, {OneInterval(main, overall)}{(main.IsUnfinished ? ", unfinished" : "")}."
                : "nothing could be compared."
        );

    public static LabelledLine Ring(VerdictLine ring) => new("Ring", ring.Word, $"{ring.Reason}.");

    public static LabelledLine Ear(string word, ChoiceFinding? choice, Func<string, string> name) =>
        new("Ear", word, choice is null ? "no forced choices were planned." : $"{ChoiceWords.Tally(choice, name)}.");

    public static LabelledLine Worth(string word, string price) => new("Worth", word, $"{price}.");

    public static LabelledLine CouldHaveShown(CouldShow could) =>
        new(
            CouldHaveShownLabel,
            "",
            $"{Figures.Db(could.Db)} dB in 4 of 5 such days; that figure is between {Figures.Db(could.LowDb)} and "
                + $"{Figures.Db(could.HighDb)}."
        );

    public static LabelledLine HangsOn(string sentence) => new("Hangs on", "", $"{sentence}.");

    public static string LabelOf(string label, string asked) => $"{label}, {asked}";

    // the plot
    public static string ChartTitle(string against, string measure) => $"Difference from {against} on {measure}, clean readings";

    // pooled over the crew: no word of each person alone
    public static string Pair(string asked, string against) => $"{asked} - {against}";

    private static string Who(ChoiceFinding choice) => choice.Counts?.Persons is [{ Person: var alone }] ? alone : "The crew";

    // a clip from a loudspeaker is not the cabin
    private static string How(ChoiceFinding choice) => choice.IsFromRecordings ? ", on recordings" : "";

    // a card tells one interval: the one that agrees with its word
    private static string OneInterval(ClassComparison main, Estimate overall) =>
        MeterWord.IntervalOfWord(main) is { } interval
            ? interval + (main.Basis is { Comparisons: > 1 and var asked } ? $", for {asked} comparisons together" : "")
            : $"95 % interval {Figures.Interval95(overall)}";
}
