using FieldSession.State;

namespace FieldSession.Terminal;

/// <summary>What is said of things that are due at a stop.</summary>
internal static class DueWords
{
    public const string CalibrationBefore = "check the meter before the first run: 'calibration before 94.0'";
    public const string CalibrationAfter = "the order is driven, check the meter now: 'calibration after 94.0'";

    public static string DoubtsLabel(int open) => open == 1 ? "1 doubt" : $"{open} doubts";

    public static string Doubts(Study study, IReadOnlyList<OpenDoubt> open)
    {
        OpenDoubt first = open[0];
        string more = open.Count > 1 ? $"; and {string.Join(", ", open.Skip(1).Take(4).Select(doubt => doubt.Place))}{(open.Count > 5 ? ", ..." : "")}" : "";
        return $"is {first.Reading.Levels} right on {first.Place} {study.Plan!.Route[first.Reading.Segment - 1].Name}? {first.Reading.Doubt}{more}";
    }

    public static string CauseOfAbort(Run run) => $"run {run.Number} was aborted; say why: 'end puncture', or 'end t' for traffic";

    public static string RatingsOf(Run run, IReadOnlyList<string> people) => $"run {run.Number} on {run.Code} is not rated by {string.Join(" and ", people)}";

    public static string ChoicesOf(ChoiceSet set) => $"set {set.Number}, {set.Terms.Question}: {set.Choices.Count} of {set.Presentations.Count} chosen; 'choose NAME first' or second";

    public static string Weather(Study study) => study.LastRun is { } run
        ? $"no weather since run {run.Number}: 'weather air=6.1 road=5 wind=2.5 gust=4 surface=dry'"
        : "no weather is noted yet: 'weather air=6.1 road=5 wind=2.5 gust=4 surface=dry'";

}
