using System.Collections.Immutable;
using FieldSession.Sealing;
using FieldSession.State;

namespace FieldSession.Store.Planning;

/// <summary>What is wrong in a plan folder, and what is allowed.</summary>
internal static class PlanFolderWords
{
    // the folder and its files
    public const string NoSuchFolder = "there is no such folder";

    public static string NamePlanFolder => $"name the folder that holds {PlanFile.Plan} and {PlanFile.Route}";

    public static string NoSuchFile(string path) => $"there is no file {path}";

    public static string PlanFolderHolds(string plan, string route) => $"a plan folder holds {plan} and {route}";

    public static string CantBeRead(string path) => $"{path} can't be read";

    public const string LookWhetherItIsFile = "check that it is a file and that you may read it";
    public const string FileIsEmpty = "the file is empty";

    // words and their sorts
    public const string NestedTooDeep = "lists or tables are nested too deep";
    public const string WriteLessDeep = "nest lists and tables less";
    public const string TextDoesNotEnd = "the file ends inside a text in quotes";
    public const string LineForm = "a line is: word = value, text in \"quotes\", numbers with a point";
    public const string YesOrNo = "yes or no";
    public const string DateOrTime = "a date or time";

    public static string UnknownWord(string name) => $"{Troubles.Quoted(name)} is not a word of the plan";

    public static string DidYouMean(string near) => $"did you mean '{near}'?";

    public const string UnknownWordIsPassedOver = "it is ignored";

    // what is asked and compared
    public static string StudyNameIsRefused(string fault) => $"'study' can't be a study's name: {fault}";

    public const string UtcOffsetForm = "write how far your clocks are ahead of UTC, such as +02:00";
    public const string RingBandIsNone = "'ring_band_hz' is not a band";
    public const string RingBandForm = "'ring_band_hz' is two numbers from 100 to 400, at least 20 apart: [178, 282]";
    public const string MainMeasureForm = "'main_measure' is \"steady\", \"impact\" or \"all\"";
    public const string SpecsIsMissing = "'specs' is missing";

    public static string SpecsForm => $"'specs' is how many specs are compared, {SpecList.Fewest} to {SpecList.Most}";

    public static string SpecsFormWithoutNames(string allowed) => $"{allowed}; their names are in the custodian's own file";

    public const string NoWholeNumber = "not a whole number";
    public const string UnitsForm = "'units' is \"metric\" or \"imperial\"";
    public const string AbortedCountsForm = "'aborted_counts' is \"repeat\", \"both\" or \"no\"";
    public const string CoveredIsThereTwice = "'covered' and 'covered_until_evening' say the same and differ";
    public const string RerunCountsForm = "'rerun_counts' is \"rerun\", \"first\" or \"both\"";

    // the crew
    public const string CrewForm = "'crew' is a list of names, the driver first, such as [\"Ro\", \"Tam\"]";

    public static string CrewNamesTwice(string name) => $"'crew' names {Troubles.Quoted(name)} twice";

    public static string NameHoldsComma(string name) => $"'crew' holds the one name {Troubles.Quoted(name)}, with a comma in it";

    public static string WritePeopleApart(string names)
    {
        string[] apart = names.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return $"write two people as two names: [{string.Join(", ", apart.Select(name => $"\"{name}\""))}]";
    }

    public const string GiveEachPersonOwnName = "give each a name of their own";
    public const string PersonHasNoName = "somebody in 'crew' has no name";
    public const string PersonForm = "write name = \"Ro\", and seat = \"driver\" where you like";

    public static string AtMostPeopleRide(int most) => $"at most {most} people ride";

    public static string CustodianIsInCrew(string custodian) => $"the custodian {Troubles.Quoted(custodian)} is in the crew";

    public const string CustodianDoesNotRide = "the custodian does not ride; name somebody else";

    // the order of runs
    public const string OrderIsMissing = "'order' is missing";
    public const string OrderForm = "'order' names the runs by place, such as \"R 1 R 1 R\"";
    public const string CanBeDriven = "you can drive it as it is";
    public const string CanBeDrivenOrSharedOut = "you can drive it as it is; 'orders' shares the runs between the cars";

    public static string IsNoList(string name) => $"'{name}' is not a list";

    public static string NameOfEachRunForm(string name) => $"'{name}' is a list of names, one for each run, such as [\"one\", \"other\"]";

    public static string NamesDoNotMatchRuns(string word, string[] names, int runs) =>
        $"'{word}' has {names.Length} names, the order {runs} runs";

    public const string NameOneForEachRun = "name one for each run";
    public const string NameCarsFirst = "name them in 'cars' first";

    // tyres, checks and energy days
    public static string PressureIsThereTwice(string name) => $"'{name}' is there in kPa and in psi";

    public const string WriteOneOfThem = "write one of them";

    public static string ChecksAre(string known) => $"the checks are {known}";

    public const string GiveBatteryOrTankOnce = "give battery or tank once";

    public static string EnergyDaysForm(int mostDays) =>
        $"'energy_days' is a list of 1 to {mostDays} days, such as [\"X=R Y=1\", \"X=1 Y=R\"]";

    // the table of the route
    public const string RouteHeaderForm = "the first line is: segment,kind,speed_kmh,length_m (or speed_mph,length_mi)";
    public const string ColumnIsThereTwice = "the column is there twice";
    public const string NameEachColumnOnce = "name each column once";

    public static string ColumnIsMissing(string name) => $"there is no column {name}";

    public static string ColumnsAreCutByCommas(string form) => $"columns are cut by commas; {form}";

    public static string UnknownColumnIsPassedOver(string name) => $"the column {Troubles.Quoted(name)} is not known and passed over";

    public static string QuotesDoNotFit(string line) => $"the quotes of the row that begins in line {line} do not match";

    public const string QuotesForm = "put a field with a comma or a quote in quotes; write a quote within it twice";

    public static string RowHasMoreFieldsThanHeader(string[] fields, ImmutableList<string> header) =>
        $"the row has {fields.Length} fields, the header {header.Count}";

    public const string QuoteNameWithComma = "put quotes around a name that holds a comma";
    public const string RouteHasNoSegment = "the route has no segment";
    public const string WriteOneSegmentARow = "write one segment a row under the header (plan screen: Ctrl+N)";

    public static string TooManySegments(int mostSegments) => $"the route has more than {mostSegments} segments";

    public const string CutIntoSeveralStudies = "cut it into several studies";

    public static string SegmentNameIsTaken(Segment segment, Dictionary<string, int> linesByName) =>
        $"{Troubles.Quoted(segment.Name)} is in line {linesByName[segment.Name]} already";

    public const string GiveEachSegmentOwnName = "give each segment a name of its own; capitals make no difference";

    // a segment of the route
    public static string ClassIsUnknown(string written) => $"the class is {Troubles.Quoted(written)}";

    public const string ClassForm = "it is steady, impact or empty";
    public const string ImpactIsReadAsPeak = "the kind impact is read as a peak";
    public const string LeaveClassEmpty = "leave the class empty, or give the kind another word";
    public const string SpeedIsAboveLimit = "the test speed is above the posted limit";
    public const string PlanSpeedBelowLimit = "plan a speed at or below the limit";

    public static string SegmentLacksText(string column) => $"the segment has no {column}";

    public const string TextIsTooLongOrInvisible = "the text is too long or holds an invisible character";

    public static string TextForm(int longestText) => $"at most {longestText} visible characters in one line";

    public static string SegmentLacksNumber(string quantity) => $"the segment has no {quantity}";

    public static string SegmentHasTwoValues(string quantity) => $"the segment has two values of {quantity}";

    public const string WriteNumberWithPoint = "write a number with a point";

    public static string NumberForm(string most) => $"it is a number with a point, more than 0, at most {most}";

    public static string IsNoNumber(string text) => $"{Troubles.Quoted(text)} is not a number";

    public static string LongerSegmentLetsMeterSettle(string length) => $"{length} or more give the meter time to settle";

    // hints of the columns
    public const string SegmentHint = "the segment's name, different from every other";
    public const string KindHint = "smooth, coarse, concrete, rough, cobble, impact, or a word of one's own";

    public static string SpeedHint(string unit) => $"the test speed, {unit}, at or below the limit";

    public static string LengthHint(string unit) => $"its length, {unit}; 5 s or more let the meter settle, impacts may be short";

    public const string LimitHint = "the posted limit; empty: not given";
    public const string NominalLevelHint =
        "the level expected, dB(A), the same for every code; empty: readings are not checked against one";
    public const string StartMarkHint = "where it begins, so that everybody begins there; empty: not given";
    public const string PhraseHint = "the note phrase that is offered here; empty: none";
    public const string ClassHint = "steady or impact, where the kind does not say it; empty: the kind says it";
}
