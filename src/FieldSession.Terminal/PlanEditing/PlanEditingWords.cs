using FieldSession.Comparing;
using FieldSession.Planning;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Terminal;

/// <summary>What is said of a plan that is being made: its pages, its orders, and what their figures rest on.</summary>
internal static class PlanEditingWords
{
    public static string FirmWithBrackets =>
        $"A firm result needs {StillMissing.BracketsForAClaim} brackets, from R to R, of each code. "
        + "With fewer the program asks for another day.";

    public static string NotInCrew(string stranger, string crew) => $"'{stranger}' is not in the crew; the crew is {crew}";

    public static string PlanWritten(string folder) => $"written to {folder}; next: 'fieldsession start {folder} day.study'";

    public static string PlanWrittenWithProblems(string folder, int problems) =>
        $"written to {folder}; {problems} to fix before it can be driven";

    public static string LimitHint(Limit limit, string range, string standard) =>
        $"{limit.Name}: {range}; empty: {standard}. A changed limit needs a reason; the report shows both";

    public static string HowToAddADay(string order, string furtherDay) =>
        $"for another day type 'amend order={order} {furtherDay} because WHY', then 'calibration before'";

    public static string AssumedRepeatability(bool isPartlyKnown, double runSdDb, double readingSdDb) =>
        $"Assumed, not measured{(isPartlyKnown ? " unless said otherwise" : "")}: runs repeat within {runSdDb} dB and "
        + $"readings within {readingSdDb} dB (standard deviations). ";

    public static string ChanceAndTurnRound(TurnRound between) =>
        $"Chance 80 %; {between.TurnRoundMinutes:0.#} min from run to run, {between.RefitMinutes:0.#} min where tyres are changed. ";

    public static string DrivingTime(Plan plan) =>
        $"The segments last {OrderTime.RunSeconds(plan.Route):0} s a run; the roads between them are in the turn-round.";

    public static string KnownRepeatabilityOf(string segments, KnownRepeatability known) =>
        $"Known from {EarlierDays(known)}: run means on {segments} repeat within {Figures.FineDb(known.RunMeanSdDb)} dB.";

    public static string TurnRoundMinutes(TurnRound between) =>
        $"{between.TurnRoundMinutes:0.#} min from run to run, {between.RefitMinutes:0.#} where tyres are changed";

    public static string BasisFromEarlierDays(KnownRepeatability known, string minutes) =>
        $"Known from {EarlierDays(known)}: runs repeat within {Figures.FineDb(known.RunMeanSdDb)} dB. Assumed: {minutes}";

    public static string AssumedBasis(string minutes, double runSdDb) => $"Assumed: {minutes}; runs repeat within {runSdDb} dB";

    private static string EarlierDays(KnownRepeatability known) => $"{known.Days} earlier day{(known.Days == 1 ? "" : "s")}";
}
