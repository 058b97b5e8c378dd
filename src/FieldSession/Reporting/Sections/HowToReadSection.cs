using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>Half a page for whoever reads such a report for the first time.</summary>
public static class HowToReadSection
{
    /// <summary>The section.</summary>
    public static ReportSection Of(Plan? plan) =>
        new(
            ReportPart.HowToRead,
            HowToReadWords.Title,
            [
                new LabelledLines([
                    new LabelledLine("Blind", "", HowToReadWords.Blind),
                    new LabelledLine("Interval", "", HowToReadWords.Interval),
                    new LabelledLine("Margin", "", HowToReadWords.Margin(Figures.MarginDb(plan?.MainMarginDb ?? 1), plan is not null)),
                    new LabelledLine("NOT RESOLVED", "", HowToReadWords.NotResolved),
                    new LabelledLine(AnswerWords.CouldHaveShownLabel, "", HowToReadWords.CouldHaveShown),
                    new LabelledLine("Segments", "", HowToReadWords.Segments),
                    new LabelledLine("Flags", "", HowToReadWords.Flags),
                    new LabelledLine("Explored", "", HowToReadWords.Explored),
                    new LabelledLine("Ear", "", HowToReadWords.Ear),
                ]),
            ]
        );
}

/// <summary>What the report says of how to read it.</summary>
internal static class HowToReadWords
{
    public const string Title = "How to read this";

    public const string Blind =
        "The crew drove codes and did not know which tyre was which. Predictions were locked before the key was opened, "
        + "so nobody could fit the story to the names.";
    public const string Interval =
        "The day gives one number, and another day would give another. The 95 % interval says how far off this one may "
        + "be: of a hundred such days about 95 would have an interval that holds the true difference.";

    public static string Margin(string margin, bool isAgreed) =>
        $"The size that the crew agreed not to care about, written down before the first run{(isAgreed ? $"; here {margin} dB" : "")}. "
        + $"'Same within {margin} dB' means that the day rules out anything larger than {margin} dB. It does not mean that there is no "
        + "difference.";

    public const string NotResolved = "The day was too short or too noisy to tell. That doesn't prove that the tyres are the same.";
    public const string CouldHaveShown =
        "How large a difference would have to be for such a day to show it in 4 of 5 cases. A smaller one may well be there.";
    public const string Segments =
        "Many segments of one run are not many proofs: the same tyres, air, car and driver are in all of them. So runs "
        + "are counted, and each code is driven between runs of the reference, so that a drift of the day cancels out.";
    public const string Flags =
        "A reading that traffic spoilt is flagged on the spot, before anybody can see whether it helps or hurts. Flags "
        + "given later are shown and change nothing. The result with every reading put back is shown beside the clean one.";
    public const string Explored = "What was not the question of the plan. With many lines to look at, some look large by chance alone.";
    public const string Ear =
        "The ear counts only where people chose between two codes many times without knowing which was which. Ratings are given beside it.";
}

/// <summary>What this day cannot say, whatever its numbers are.</summary>
public static class LimitsSection
{
    /// <summary>The section.</summary>
    public static ReportSection Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        int days = study.Runs.Select(r => r.Started.At.UtcDateTime.Date).Distinct().Count();
        return new ReportSection(
            ReportPart.Limits,
            "Limits",
            [
                new Points([
                    ReportingWords.OneSetOfTyresPerSpec(days == 1 ? "one day" : $"{days} days"),
                    ReportingWords.AbsoluteLevelsDoNotTravel,
                    ReportingWords.MeterAndEarDiffer,
                    ReportingWords.RunsDrivenOfPlanned(study),
                ]),
            ]
        );
    }
}
