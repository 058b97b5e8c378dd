using System.Collections.Immutable;
using FieldSession.Sealing;
using FieldSession.State;

namespace FieldSession.Store.Planning;

/// <summary>What is wrong in a plan folder, and what is allowed.</summary>
internal static class PlanFolderWords
{
    public const string GiveEachNameOfTheirOwn = "give each a name of their own";
    public const string WhoKeepsKeyDoesNotRide = "who keeps the key does not ride; name somebody else";
    public const string CrewIsListOfNames = "'crew' is a list of names, the driver first, such as [\"Ro\", \"Tam\"]";
    public const string SomebodyInCrewHasNoName = "somebody in 'crew' has no name";
    public const string WriteNameRo = "write name = \"Ro\", and seat = \"driver\" where you like";
    public const string SpecsIsMissing = "'specs' is missing";
    public const string NoWholeNumber = "no whole number";
    public const string OrderIsMissing = "'order' is missing";
    public const string OrderNamesRunsByPlace = "'order' names the runs by place, such as \"R 1 R 1 R\"";
    public const string UnitsIsMetricOrImperial = "'units' is \"metric\" or \"imperial\"";
    public const string GiveBatteryOrTankOnce = "give battery or tank once";
    public const string ItCanBeDrivenSo = "it can be driven so";
    public const string LookWhetherItIsFile = "look whether it is a file, and whether you may read it";
    public const string ThereIsNoSuchFolder = "there is no such folder";
    public const string ItCanBeDrivenSoOrders = "it can be driven so; 'orders' shares the runs out between the cars";
    public const string IsSteadyImpactOrAll = "'main_measure' is \"steady\", \"impact\" or \"all\"";
    public const string ItIsPassedOver = "it is passed over";
    public const string NameThemInCarsFirst = "name them in 'cars' first";
    public const string NameOneForEachRun = "name one for each run";
    public const string SegmentsNameDifferentFromEveryOther = "the segment's name, different from every other";
    public const string SmoothCoarseConcreteRoughCobbleImpact = "smooth, coarse, concrete, rough, cobble, impact, or a word of one's own";
    public const string PostedLimitEmptyNotTold = "the posted limit; empty: not told";
    public const string LevelExpectedDbSameForEvery = "the level expected, dB(A), the same for every code; empty: readings are not held against one";
    public const string WhereItBegins = "where it begins, so that everybody begins there; empty: not told";
    public const string NotePhraseThatIsOfferedHere = "the note phrase that is offered here; empty: none";
    public const string SteadyOrImpact = "steady or impact, where the kind does not say it; empty: the kind says it";
    public const string WriteListsAndTablesLessDeep = "write lists and tables less deep";
    public const string LineIsWordValueTextInQuotes = "a line is: word = value, text in \"quotes\", numbers with a point";
    public const string WriteOneOfThem = "write one of them";
    public const string IsRerunFirstOrBoth = "'rerun_counts' is \"rerun\", \"first\" or \"both\"";
    public const string YesOrNo = "yes or no";
    public const string DateOrTime = "a date or time";
    public const string FieldWithCommaOrQuoteStandsInQuotes = "a field with a comma or a quote stands in quotes, a quote within them is written twice";
    public const string CutItIntoSeveralStudies = "cut it into several studies";
    public const string RouteHasNoSegment = "the route has no segment";
    public const string WriteOneSegmentRowUnderHeader = "write one segment a row under the header";
    public const string GiveEachSegmentNameOfItsOwn = "give each segment a name of its own; capitals don't tell names apart";
    public const string FirstLineIsSegment = "the first line is: segment,kind,speed_kmh,length_m (or speed_mph,length_mi)";
    public const string FileIsEmpty = "the file is empty";
    public const string ColumnIsThereTwice = "the column is there twice";
    public const string NameEachColumnOnce = "name each column once";
    public const string PutQuotesAroundNameThatHoldsComma = "put quotes around a name that holds a comma";
    public const string TestSpeedIsAbovePostedLimit = "the test speed is above the posted limit";
    public const string PlanSpeedAtOrBelowLimit = "plan a speed at or below the limit";
    public const string ItIsSteady = "it is steady, impact or empty";
    public const string KindImpactIsReadAsPeak = "the kind impact is read as a peak";
    public const string LeaveClassEmpty = "leave the class empty, or give the kind another word";
    public const string TextIsTooLongOrHoldsInvisibleCharacter = "the text is too long or holds an invisible character";
    public const string WriteNumberWithPoint = "write a number with a point";

    public static string CrewNamesTwice(string name) => $"'crew' names {Troubles.Quoted(name)} twice";

    public static string CustodianIsInCrew(string custodian) => $"the custodian {Troubles.Quoted(custodian)} is in the crew";

    public static string AtMostPeopleRide(int most) => $"at most {most} people ride";

    public static string StudyCantBeStudysName(string fault) => $"'study' can't be a study's name: {fault}";

    public static string SpecsIsHowManySpecsAreCompared => $"'specs' is how many specs are compared, {SpecList.Fewest} to {SpecList.Most}";

    public static string AndTheirNamesAreInCustodiansOwnFile(string allowed) => $"{allowed}; their names are in the custodian's own file";

    public static string IsListOfToDays(int mostDays) => $"'energy_days' is a list of 1 to {mostDays} days, such as [\"X=R Y=1\", \"X=1 Y=R\"]";

    public static string ThereIsNoFile(string path) => $"there is no file {path}";

    public static string PlanFolderHoldsAnd(string plan, string route) => $"a plan folder holds {plan} and {route}";

    public static string CantBeRead(string path) => $"{path} can't be read";

    public static string NameFolderThatHoldsAnd => $"name the folder that holds {PlanFile.Plan} and {PlanFile.Route}";

    public static string OrMoreGiveMeterTimeToSettle(string metres) => $"{metres} or more give the meter time to settle";

    public static string IsNotWordOfPlan(string name) => $"{Troubles.Quoted(name)} is not a word of the plan";

    public static string DidYouMean(string near) => $"did you mean '{near}'?";

    public static string IsNoList(string name) => $"'{name}' is no list";

    public static string IsListOfNames(string name) => $"'{name}' is a list of names, one for each run, such as [\"one\", \"other\"]";

    public static string HasNamesOrderRuns(string name, string[] texts, int runs) => $"'{name}' has {texts.Length} names, the order {runs} runs";

    public static string TestSpeedAtOrBelowLimit(string more) => $"the test speed, {more}, at or below the limit";

    public static string ItsLengthOrMoreLetMeter(string more) => $"its length, {more}; 5 s or more let the meter settle, impacts may be short";

    public static string IsThereInKpaAndInPsi(string name) => $"'{name}' is there in kPa and in psi";

    public static string ChecksAre(string known) => $"the checks are {known}";

    public static string QuotesOfRowThatBeginsInLineDo(string where) => $"the quotes of the row that begins in line {where} do not fit";

    public static string RouteHasMoreThanSegments(int mostSegments) => $"the route has more than {mostSegments} segments";

    public static string StandsInLineAlready(Segment segment, Dictionary<string, int> names) => $"{Troubles.Quoted(segment.Name)} stands in line {names[segment.Name]} already";

    public static string ThereIsNoColumn(string name) => $"there is no column {name}";

    public static string ColumnsAreCutByCommas(string form) => $"columns are cut by commas; {form}";

    public static string ColumnIsNotKnownAndPassedOver(string name) => $"the column {Troubles.Quoted(name)} is not known and passed over";

    public static string RowHasFields(string[] fields, ImmutableList<string> header) => $"the row has {fields.Length} fields, the header {header.Count}";

    public static string ClassIs(string reading) => $"the class is {Troubles.Quoted(reading)}";

    public static string SegmentHasNo(string more) => $"the segment has no {more}";

    public static string AtMostVisibleCharactersInOneLine(int longestText) => $"at most {longestText} visible characters in one line";

    public static string SegmentHasTwoValuesOf(string what) => $"the segment has two values of {what}";

    public static string SegmentHasNo2(string what) => $"the segment has no {what}";

    public static string ItIsNumberWithPoint(string most) => $"it is a number with a point, more than 0, at most {most}";

    public static string IsNoNumber(string text) => $"{Troubles.Quoted(text)} is no number";
}
