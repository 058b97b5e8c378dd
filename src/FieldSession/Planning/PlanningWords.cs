using FieldSession.State;

namespace FieldSession.Planning;

/// <summary>What planning says: amendments, orders, archives, energy days.</summary>
internal static class PlanningWords
{
    public const string AmendmentForm = "type 'amend margin_db=1.5 because WHY'";
    public const string AmendmentNamesPartValueReason = "an amendment names the part of the plan, what it becomes, and why";
    public const string FirstRunHasBegun = "run 1 has begun: what the archive lends is decided before it";
    public const string GoOnWithoutArchive = "go on without it, or give it to 'compare --archive' to look at";
    public const string ArchiveHasNoSuchStudy = "no finished study of this crew and loop is in the archive";
    public const string DriveFirstDayWithoutArchive = "drive without it; this day will be the first of it";
    public const string DayNamesNoCar = "the day names no car";
    public const string EnergyDayForm = "a day names its cars with their places, such as \"X=R Y=1\"";
    public const string NoMainSegmentIsNamed = "no main segment is named";
    public const string NameSegmentsOfRoute = "name one or more of the route, or leave it out";
    public const string NameSegmentsOfMainMeasure = "name segments that the main measure takes, or change the main measure";
    public const string AmendPlanAtNextStop = "amend the plan at the next stop";
    public const string PlanChangedBeforeFirstRun = "plan changed before run 1";
    public const string PlanIsFrozenBySealing = "the plan is frozen once codes are sealed";
    public const string AmendPartOrStartNew = "change a part of it with 'amend WHAT=VALUE because WHY', or start a new study";
    public const string QuestionIsEmptyOrTooLong = "the question is empty or too long";
    public const string MainMeasuresAre = "it is steady, impact or all";
    public const string AmendSegmentsAroundMeasure = "amend main_segments=- first, then the measure, then the segments";
    public const string OrderCanOnlyGrow = "runs have been driven by the order: it can only grow at its end";
    public const string IsNoTyreSize = "that is not the size of a car tyre";
    public const string TyreSizeForm = "write it as on the sidewall, such as 225/45R18";

    public static string PartCantBeAmended(string part) => $"'{part}' is not a part of the plan that can be amended";

    public static string AmendablePartsAre(string parts) => $"the parts are {parts}";

    public static string RepeatabilityTakenFromArchive(int days, string archive, double degreesOfFreedom) =>
        $"the repeatability of {days} earlier day{(days == 1 ? "" : "s")} is taken from {archive} (steady segments: "
        + $"{degreesOfFreedom:0} degrees of freedom); the report shows it";

    public static string IsNoCarWithPlace(string word) => $"'{word}' is not a car with its place";

    public static string CarIsThereTwiceOnDay(string car) => $"car {car} is there twice";

    public static string CarDrivesAloneOnDays(string days) =>
        $"on day {days} one car drives alone: days are not comparable, only cars side by side on one day are";

    public static string PlaceStaysOnOneCar(Place place) =>
        $"spec {place} stays on one car: tyres and car cannot be told apart; swap them between the cars half-way";

    public static string IsNoSegmentOfRoute(string name) => $"'{name}' is not a segment of the route";

    public static string SegmentsOfRouteAre(string names) => $"the segments are {names}";

    public static string MainSegmentIsNotMeasured(Segment segment, MainMeasure measure) =>
        $"the main segment '{segment.Name}' is {(segment.Kind.IsImpact ? "an impact" : "a steady segment")}, and the main "
        + $"measure is {measure.ToString().ToLowerInvariant()}";

    public static string PlacesOfOrderAre(int specCount) => $"places are R and 1 to {specCount - 1}, such as 'R 1 R 1 R'";

    public static string OrderHasWrongLength(int runs) => $"the order names {runs} runs";

    public static string PlacesAndMostRuns(string places, int mostRuns) => $"{places}; at most {mostRuns} runs";

    public static string OrderNamesUnknownPlace(string word) => $"the order names the unknown place '{word}'";

    public static string PlanAmendedAfterRun(Study before) => $"plan amended after run {before.Runs.Count}";

    public static string AmendmentIsInReport(string planAmended, string part, string from, string to, string reason) =>
        $"{planAmended}: {part} from {from} to {to}, because {reason}; the report shows it";

    public static string PlanOfStudy(string studyName, int specCount, int segmentCount, string order) =>
        $"plan of study {studyName}: {specCount} specs, {segmentCount} segments, order {order}";

    public static string WriteQuestionWithin(int longestQuestion) => $"write it in 1 to {longestQuestion} characters";

    public static string IsNoMainMeasure(string typed) => $"'{typed}' is not a main measure";

    public static string IsNoMargin(string typed) => $"'{typed}' is not a margin";

    public static string MarginRange(double largestMarginDb) => $"give dB above 0 and up to {largestMarginDb}, such as 1.5";

    public static string TypeWholeOrder(string? orderNow) => $"type the whole order, beginning with '{orderNow}'";
}
