using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>What ratings and blind choices say, and why one can't be.</summary>
internal static class RatingWords
{
    public const string ItEndsByItsPlan = "it ends by its plan; another set is planned anew and counted apart";
    public const string ChooseForThatOne = "choose for that one";
    public const string PlanOneWithTrialsSegSideTwoWhichIs = "plan one with 'trials 862 417 n=10 seg=3 side=two which is louder'";
    public const string TypeChooseName = "type 'choose NAME 862', or 'choose NAME first' or 'second' where the codes were not told";
    public const string ChoiceNamesPersonAndCodeOrPlaceChosen = "a choice names the person and the code or place chosen";
    public const string InTriangleOddOneIsChosenByItsPlace = "in a triangle the odd one is chosen by its place";
    public const string NoTrialsArePlanned = "no trials are planned: number, side and order stand before the first choice";
    public const string TrialsArePlanned = "trials are planned";
    public const string ChoiceNeedsTwoCodes = "a choice needs two codes";
    public const string FinishRunOrTypeEndStop = "finish the run, or type 'end'; stop and park";
    public const string ThereIsNoReadingThatItBelongsTo = "there is no reading that it belongs to";
    public const string TypeReadingFirst = "type the reading first";
    public const string UTakesItBackWhileItIsLast = "'u' takes it back while it is the last act";
    public const string TypeExtraRecWithPartsYouHave = "type 'extra c=74.2 l200=60.1 l250=58 rec=take12' with the parts you have";
    public const string ExtraReadingSaysNothing = "the extra reading says nothing";
    public const string AndAllHaveStoredIt = "; all have stored it";
    public const string NothingHasBeenDriven = "nothing has been driven";
    public const string RatingBelongsToRunJustDriven = "a rating belongs to the run just driven";
    public const string RateAtStopAfterNextRun = "rate at the stop after the next run";
    public const string ItStandsUTakesItBack = "it stands; 'u' takes it back while it is the last act and covered";
    public const string GiveToInQuarterPoints = "give 1 to 10 in quarter points, such as 6.25";
    public const string TypeRateNameAttribute = "type 'rate NAME ATTRIBUTE 6.25'";
    public const string RatingNamesPerson = "a rating names the person, the attribute and the score";
    public const string RatingsAreClosedAfterRun = "ratings are closed after a run";
    public const string TrialsNamePairOfCodesAndTheirNumber = "trials name the pair of codes and their number";
    public const string WhichIsLouder = "which is louder";
    public const string NumberOfTrialsIsMissing = "the number of trials is missing";

    public static string ChoiceOfInTrial(CrewMember member, int trial) => $"choice of {member.Name} in trial {trial}";

    public static string ChoseInTrialOfSet(string memberIn, int trial, int set, string next) => $"{memberIn} chose in trial {trial} of set {set}{next}";

    public static string ThereIsNoSetOfTrials(int set) => $"there is no set {set} of trials";

    public static string AllPlannedTrialsOfSetAreMade(ChoiceSet set, int set2) => $"all {set.Presentations.Count} planned trials of set {set2} are made";

    public static string TrialOfSetComesNext(ChoiceSet set, int set2, int trial) => $"trial {set.NextTrial} of set {set2} comes next, not {trial}";

    public static string ThereIsNoPlace(int place) => $"there is no place {place}";

    public static string IsNoPartOfChoice(string stranger) => $"'{stranger}' is no part of a choice";

    public static string AndWhereSeveralSetsAreOpenWithSet(string form) => $"{form}, where several sets are open with set=2";

    public static string IsNeitherCodeNorPlace(string chosen) => $"'{chosen}' is neither a code nor a place";

    public static string TypeChooseOr(string person) => $"type 'choose {person} 1', 2 or 3";

    public static string SetIsAboutAndNot(ChoiceSet set, SpecCode code) => $"set {set.Number} is about {set.Terms.First} and {set.Terms.Second}, not {code}";

    public static string ThereIsNoSetOfTrials2(int number) => $"there is no set {number} of trials";

    public static string NoPlannedTrialsAreAbout(SpecCode one) => $"no planned trials are about {one}";

    public static string TrialsOfSet(ChoiceSet set) => $"trials of set {set.Number}";

    public static string SetTrialsOr(Study after, int presentationsCount, SpecCode first, SpecCode second, string question, string where, string side) => $"set {after.ChoiceSets.Count}: {presentationsCount} trials, {first} or {second}, '{question}'{where}, {side}; {Presenting.InWords(after.ChoiceSets[^1])}";

    public static string IsNoCodeOfThisStudy(SpecCode[] strangers) => $"{strangers[0]} is no code of this study";

    public static string CodesAre(string codes) => $"the codes are {codes}";

    public static string ThereIsNoSegment(int segment) => $"there is no segment {segment}";

    public static string RouteHasSegmentsTo(Study study) => $"the route has segments 1 to {study.Plan!.Route.Count}";

    public static string IsNotOneOfPair(SpecCode expected) => $"{expected} is not one of the pair";

    public static string ExpectOrOrSaySideTwo(SpecCode first, SpecCode second) => $"expect {first} or {second}, or say side=two";

    public static string PlanToSizeTellsWhatNumber(int fewest, int mostTrials) => $"plan {fewest} to {mostTrials}; 'size --choices' tells what a number can show";

    public static string SetAsksThisAlreadyAndIsNotAtIts(ChoiceSet open) => $"set {open.Number} asks this already and is not at its end";

    public static string MakeItsTrialsToFirst(ChoiceSet open) => $"make its trials {open.NextTrial} to {open.Presentations.Count} first";

    public static string RunIsOnAtStop(Run run, string what) => $"run {run.Number} is on: {what} at a stop";

    public static string IsNotInCrew(string person) => $"'{person}' is not in the crew";

    public static string CrewIs(string crew) => $"the crew is {crew}";

    public static string DbAtHz(double l200) => $"{l200:0.0#} dB at 200 Hz";

    public static string DbAtHz2(double l250) => $"{l250:0.0#} dB at 250 Hz";

    public static string IsNotedForThisReadingAlready(string twice) => $"'{twice}' is noted for this reading already";

    public static string IsNoPartSuchAsToDb(string word) => $"'{word}' is no part such as c=74.2 (0 to 140 dB)";

    public static string AllTrialsAreMade(ChoiceSet set) => $"all {set.Presentations.Count} trials are made";

    public static string TrialOfFirst(ChoiceSet set, string codes) => $"trial {set.NextTrial} of {set.Presentations.Count}: first {codes}";

    public static string RatingOfBy(string attribute, CrewMember member) => $"rating of {attribute} by {member.Name}";

    public static string AndCoveredUntilStoredItToo(string open) => $"; covered until {open} stored it too";

    public static string RatedOfRun(string memberIn, string attribute, Study after, string cover) => $"{memberIn} rated {attribute} of {after.LastRun?.Code}, run {after.LastRun?.Number}{cover}";

    public static string LastRunWasOnNotOn(Run run, SpecCode code) => $"the last run was on {run.Code}, not on {code}";

    public static string HasNotBeenDriven(SpecCode code) => $"{code} has not been driven";

    public static string RateNowAndAnotherCodeAtStop(Run run) => $"rate {run.Code} now, and another code at the stop after its run";

    public static string RatingsOfRunAreClosed(Run run) => $"the ratings of run {run.Number} are closed";

    public static string IsNotRatedInThisStudy(string attribute) => $"'{attribute}' is not rated in this study";

    public static string AttributesAre(string names) => $"the attributes are {names}";

    public static string HasRatedOfRunAlready(string person, string attribute, Study study) => $"{person} has rated {attribute} of run {study.LastRun!.Number} already";

    public static string IsOffScale(Score score) => $"{score} is off the scale";

    public static string BracketsOthersAndStandsAtForEveryAttribute(Study study) => $"{study.ReferenceCode} brackets the others and stands at {Score.Anchor} for every attribute";

    public static string RateOtherCodesAgainstItNothing(Study study) => $"rate the other codes against it; nothing or {Score.Anchor} is typed for {study.ReferenceCode}";

    public static string CallsNoAttribute(string attribute) => $"'{attribute}' calls no attribute, or more than one";

    public static string AttributesAre2(string ofWhat) => $"the attributes are {ofWhat}";

    public static string IsOffScale2(string[] plain) => $"'{plain[^1]}' is off the scale";

    public static string IsNoPartOfRating(string word) => $"'{word}' is no part of a rating";

    public static string AndWhereItIsNeededWithSeatRearOrCode(string form) => $"{form}, where it is needed with seat=rear or code=862";

    public static string RatingsOfRunAreClosedAlready(Run run) => $"the ratings of run {run.Number} are closed already";

    public static string RatingsOfRunClosedAndUncovered(Study after) => $"ratings of run {after.LastRun?.Number} closed and uncovered";

    public static string IsNoPartOfTrials(string word) => $"'{word}' is no part of trials";

    public static string AndSideIsTwoOrCode => $"{ChoiceText.PlanForm}; side= is two or a code, kind= paired or triangle, detect= 75 to 90, n= at most {ChoiceTrialsPlanned.MostTrials}";
}
