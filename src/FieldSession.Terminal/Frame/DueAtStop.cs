using FieldSession.State;

namespace FieldSession.Terminal;

/// <summary>What a stop asks for.</summary>
internal enum DueKind
{
    /// <summary>Doubtful readings are still open, of whichever run.</summary>
    Doubts,

    /// <summary>Nobody has said why the last run was aborted.</summary>
    Cause,

    /// <summary>Somebody of the crew has not rated the last run.</summary>
    Ratings,

    /// <summary>A set of forced choices is begun and not at its end.</summary>
    Choices,

    /// <summary>The weather was not noted since the last run.</summary>
    Weather,

    /// <summary>The meter was not put on the calibrator.</summary>
    Calibration,
}

/// <summary>A thing that is due at the stop.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Label">Its word in the footer.</param>
/// <param name="Words">It in words.</param>
/// <param name="Line">What is typed for it, as far as it is known; empty: it is not typed in the box.</param>
internal sealed record Due(DueKind Kind, string Label, string Words, string Line = "")
{
    /// <summary>Whether it is answered on the rating screen, by each person alone.</summary>
    public bool IsOnRateScreen => Kind is DueKind.Ratings or DueKind.Choices;
}

/// <summary>
/// What is due at a stop, in the order in which a crew does it: first what is still in the ear and in the mind, then the instruments.
/// Each is asked until it is done or the next run starts; doubts are asked until they are answered.
/// </summary>
internal static class DueAtStop
{
    /// <summary>What is due now; nothing while a run is on or once the data are frozen.</summary>
    public static IEnumerable<Due> In(Study study) =>
        study is { Plan: not null, RunOn: null, DataFrozen: false }
            ? [.. Doubts(study), .. Cause(study), .. Ratings(study), .. Choices(study), .. Weather(study), .. Calibration(study)]
            : [];

    private static IEnumerable<Due> Doubts(Study study)
    {
        OpenDoubt[] open = [.. OpenDoubts.In(study)];
        return open.Length == 0 ? [] : [new Due(DueKind.Doubts, DueWords.DoubtsLabel(open.Length), DueWords.Doubts(study, open))];
    }

    private static IEnumerable<Due> Cause(Study study) =>
        study.LastRun is { Aborted.Cause: null } run && run.Aborted is not null
            ? [new Due(DueKind.Cause, "cause", DueWords.CauseOfAbort(run), "end ")]
            : [];

    // the reference is at the anchor by rule; others are rated where the plan names attributes or somebody has begun to rate
    private static IEnumerable<Due> Ratings(Study study)
    {
        if (
            study.LastRun is not { Aborted: null } run
            || run.Code == study.ReferenceCode
            || RatingCover.IsClosed(study, run.Number)
            || (study.Plan!.Attributes.Count == 0 && study.Ratings.Count == 0)
        )
        {
            return [];
        }

        string[] open =
        [
            .. RatedAttribute
                .Of(study.Plan)
                .SelectMany(rated => RatingCover.StillToRate(study, run.Number, rated.Name))
                .Select(member => member.Name)
                .Distinct(),
        ];
        return open.Length == 0 ? [] : [new Due(DueKind.Ratings, ScreenName.Rate, DueWords.RatingsOf(run, open))];
    }

    private static IEnumerable<Due> Choices(Study study) =>
        study.ChoiceSets.Find(set => !set.IsComplete && !set.IsFromRecordings && IsDriven(study, set)) is { } open
            ? [new Due(DueKind.Choices, "choose", DueWords.ChoicesOf(open))]
            : [];

    private static bool IsDriven(Study study, ChoiceSet set) =>
        study.DrivenCodes.Contains(set.Terms.First) && study.DrivenCodes.Contains(set.Terms.Second);

    private static IEnumerable<Due> Weather(Study study)
    {
        int since = study.LastRun?.Ended?.Place ?? 0;
        bool isNoted = study.Weather.Any(weather => weather.Mark.Place > since);
        return isNoted || study.CodeAsked is null ? [] : [new Due(DueKind.Weather, "weather", DueWords.Weather(study), "weather ")];
    }

    private static IEnumerable<Due> Calibration(Study study) =>
        study switch
        {
            { SessionOn: null, CodeAsked: not null } =>
            [
                new Due(DueKind.Calibration, "calibration", DueWords.CalibrationBefore, "calibration before "),
            ],
            { OrderDriven: true }
            or { IsOwnOrderDriven: true } when study.SessionOn is { } session && study.LastRun?.Session == session.Number =>
            [
                new Due(DueKind.Calibration, "calibration", DueWords.CalibrationAfter, "calibration after "),
            ],
            _ => [],
        };
}

/// <summary>What is said of things that are due at a stop.</summary>
internal static class DueWords
{
    public const string CalibrationBefore = "check the meter before the first run: 'calibration before 94.0'";
    public const string CalibrationAfter = "the order is driven, check the meter now: 'calibration after 94.0'";

    public static string DoubtsLabel(int open) => open == 1 ? "1 doubt" : $"{open} doubts";

    public static string Doubts(Study study, IReadOnlyList<OpenDoubt> open)
    {
        OpenDoubt first = open[0];
        string more =
            open.Count > 1
                ? $"; and {string.Join(", ", open.Skip(1).Take(4).Select(doubt => doubt.Place))}{(open.Count > 5 ? ", ..." : "")}"
                : "";
        return $"{first.Place} {study.Plan!.Route[first.Reading.Segment - 1].Name}: is {first.Reading.Levels} right? "
            + $"{first.Reading.Doubt}{more}";
    }

    public static string CauseOfAbort(Run run) => $"run {run.Number} was aborted; say why: 'end puncture', or 'end t' for traffic";

    public static string RatingsOf(Run run, IReadOnlyList<string> people) =>
        $"run {run.Number} on {run.Code} is not rated by {string.Join(" and ", people)}";

    public static string ChoicesOf(ChoiceSet set) =>
        $"set {set.Number}, {set.Terms.Question}: {set.Choices.Count} of {set.Presentations.Count} chosen; 'choose NAME first' or second";

    public static string Weather(Study study)
    {
        string example = VerbTable.Of("weather")!.ExampleIn(study);
        return study.LastRun is { } run ? $"no weather since run {run.Number}: '{example}'" : $"no weather is noted yet: '{example}'";
    }
}
