using FieldSession.State;

namespace FieldSession.Planning;

/// <summary>What planning says: amendments, orders, archives, energy days.</summary>
internal static class PlanningWords
{
    public const string TypeAmendBecauseWhy = "type 'amend margin_db=1.5 because WHY'";
    public const string AmendmentNamesPartOfPlan = "an amendment names the part of the plan, what it becomes, and why";
    public const string RunHasBegun = "run 1 has begun: what the archive lends is decided before it";
    public const string GoOnWithoutItOrGive = "go on without it, or give it to 'compare --archive' to look at";
    public const string NoFinishedStudyOfThisCrewAndLoop = "no finished study of this crew and loop is in the archive";
    public const string DriveWithoutItThisDay = "drive without it; this day will be the first of it";
    public const string DayNamesNoCar = "the day names no car";
    public const string DayNamesItsCarsWithTheirPlaces = "a day names its cars with their places, such as \"X=R Y=1\"";
    public const string NoMainSegmentIsNamed = "no main segment is named";
    public const string NameOneOrMoreOfRoute = "name one or more of the route, or leave it away";
    public const string NameSegmentsThatMainMeasureTakes = "name segments that the main measure takes, or change the main measure";
    public const string AmendPlanAtNextStop = "amend the plan at the next stop";
    public const string PlanChangedBeforeRun = "plan changed before run 1";
    public const string PlanIsFrozenOnceCodesAreSealed = "the plan is frozen once codes are sealed";
    public const string ChangePartOfItWithAmendWhatValue = "change a part of it with 'amend WHAT=VALUE because WHY', or start a new study";
    public const string QuestionIsEmptyOrTooLong = "the question is empty or too long";
    public const string ItIsSteady = "it is steady, impact or all";
    public const string AmendFirstThenMeasureThenSegments = "amend main_segments=- first, then the measure, then the segments";
    public const string RunsHaveBeenDrivenByOrder = "runs have been driven by the order: it can only grow at its end";
    public const string ThatIsNoSizeOfCarTyre = "that is no size of a car tyre";
    public const string WriteItAsOnSidewall = "write it as on the sidewall, such as 225/45R18";

    public static string IsNoPartOfPlanThatCanBeAmended(string what) => $"'{what}' is no part of the plan that can be amended";

    public static string PartsAre(string words) => $"the parts are {words}";

    public static string RepeatabilityOfEarlierIsTakenFromSteady(int days, string more, string from, double nu) => $"the repeatability of {days} earlier day{more} is taken from {from} (steady segments: {nu:0} degrees of freedom); it stands in the report";

    public static string IsNoCarWithItsPlace(string word) => $"'{word}' is no car with its place";

    public static string CarStandsThereTwice(string car) => $"car {car} stands there twice";

    public static string OnDayOneCarDrivesAlone(string alone) => $"on day {alone} one car drives alone: days are not comparable, only cars side by side on one day are";

    public static string PlaceStaysOnOneCar(IGrouping<Place, CarFit> place) => $"place {place.Key} stays on one car: tyres and car cannot be told apart; swap them between the cars half-way";

    public static string IsNoSegmentOfRoute(string unknown) => $"'{unknown}' is no segment of the route";

    public static string SegmentsAre(string route) => $"the segments are {route}";

    public static string MainSegmentIsAndMain(Segment other, string more, MainMeasure measure) => $"the main segment '{other.Name}' is {more}, and the main measure is {measure.ToString().ToLowerInvariant()}";

    public static string PlacesAreAndToSuchAsR(int specCount) => $"places are R and 1 to {specCount - 1}, such as 'R 1 R 1 R'";

    public static string OrderNamesRuns(string[] words) => $"the order names {words.Length} runs";

    public static string AndAtMostRuns(string allowed, int mostRuns) => $"{allowed}; at most {mostRuns} runs";

    public static string OrderNamesUnknownPlace(string word) => $"the order names the unknown place '{word}'";

    public static string RunIsOn(Run run) => $"run {run.Number} is on";

    public static string PlanAmendedAfterRun(Study before) => $"plan amended after run {before.Runs.Count}";

    public static string AndFromToBecauseItStandsInReport(string kind, string what, string from, string to, string reason) => $"{kind}: {what} from {from} to {to}, because {reason}; it stands in the report";

    public static string PlanOfStudy(string studyName, int specCount, int routeCount, string order) => $"plan of study {studyName}: {specCount} specs, {routeCount} segments, order {order}";

    public static string WriteItInToCharacters(int longestQuestion) => $"write it in 1 to {longestQuestion} characters";

    public static string IsNoMainMeasure(string to) => $"'{to}' is no main measure";

    public static string IsNoMargin(string to) => $"'{to}' is no margin";

    public static string GiveDbAboveAndUpToSuchAs(double largestMarginDb) => $"give dB above 0 and up to {largestMarginDb}, such as 1.5";

    public static string TypeWholeOrder(string? now) => $"type the whole order, beginning with '{now}'";
}
