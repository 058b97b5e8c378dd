using FieldSession.Measures;
using FieldSession.State;
using FieldSession.Statistics;

namespace FieldSession.Rating;

/// <summary>What ratings and blind choices say, and why one can't be.</summary>
internal static class RatingWords
{
    public const string SetEndsByItsPlan = "it ends as planned; plan another set; it is counted apart";
    public const string ChooseForNextTrial = "choose for that one";

    public static string TrialsForm(ExampleNames own) =>
        $"plan one with 'trials {own.Code} {own.Other} n=10 seg=3 side=two which is louder'";

    public static string ChoiceForm(ExampleNames own) => $"type 'choose {own.Person} first' or 'choose {own.Person} second'";

    public const string ChoiceNamesPersonAndPlace = "a choice names the person and the place chosen";
    public const string TriangleIsChosenByPlace = "in a triangle the odd one is chosen by its place";
    public const string NoTrialsArePlanned = "no trials are planned: number, side and order are fixed before the first choice";
    public const string TrialsArePlanned = "trials are planned";
    public const string ChoiceNeedsTwoCodes = "a choice needs two codes";
    public const string StopAndParkFirst = "finish the run, or type 'end'; stop and park";
    public const string NoReadingForExtra = "there is no reading that it belongs to";
    public const string ReadingBeforeExtra = "type the reading first";
    public const string UndoWhileLast = "'u' takes it back while it is the last act";
    public const string ExtraForm = "type 'extra c=74.2 l200=60.1 l250=58 rec=take12' with the parts you have";
    public const string ExtraReadingSaysNothing = "the extra reading says nothing";
    public const string AllHaveStoredRating = "; all have stored it";
    public const string RatingBelongsToLastRun = "a rating belongs to the run just driven";
    public const string RateAfterNextRun = "rate at the stop after the next run";
    public const string RatingIsStored = "it stays; 'u' takes it back while it is the last act and covered";
    public const string ScoreForm = "give 1 to 10 in quarter points, such as 6.25";
    public const string RatingsAreOnlyClosed = "the ratings of a run can only be closed";
    public const string ClosingForm = "type 'ratings closed', or 'rate NAME ATTRIBUTE 6.25' to give one";

    public static string RatingForm(ExampleNames own) => $"type 'rate {own.Person} {own.Attribute} 6.25'";

    public const string RatingNamesPersonAttributeScore = "a rating names the person, the attribute and the score";
    public const string RatingsAreClosedAfterRun = "ratings are closed after a run";
    public const string TrialsNamePairAndNumber = "trials name the pair of codes and their number";
    public const string UsualQuestion = "which is louder";
    public const string NumberOfTrialsIsMissing = "the number of trials is missing";

    public const string PlayIt = "'fieldsession play' plays it after the last prediction";
    public const string KeyIsOpen = "the key is open, so nobody can choose blind any more";
    public const string LockPrediction = "lock it with 'fieldsession predict', then play";
    public const string ListenBeforePredicting = "take recordings with 'fieldsession listen' before the first prediction";
    public const string OneChainForAll = "record all runs with one chain and one setting";
    public const string PlayRightClips = "play the trial again";
    public const string ClipsAreNotOfTrial = "the clips are not of this trial";

    public static string NobodyKnowsOrder(ChoiceSet set) => $"set {set.Number} is played from recordings; its order is drawn clip by clip";

    public static string StillToPredict(IEnumerable<CrewMember> members) =>
        $"clips are played after the last prediction; still open: {string.Join(", ", members.Select(member => member.Name))}";

    public static string TooFewRunsHeard(SpecCode code, int needed, int? segment) =>
        $"{(needed == 1 ? "no clean run" : $"fewer than {needed} clean runs")} on {code} {(needed == 1 ? "was" : "were")} "
        + $"recorded{(segment is { } one ? $" on segment {one}" : "")}";

    public static string TwoChains(SpecCode first, SpecCode second) =>
        $"the runs on {first} and {second} were recorded by different chains or at different rates";

    public const string SlipForm = "type 'slip NAME' with the name of whoever runs the trials";
    public const string SlipsAreTaken = "slips";
    public const string SlipNamesSomebody = "a slip names whoever runs the trials";
    public const string SomebodyElseRuns = "somebody who does not choose in it runs the trials";
    public const string SomebodyElseChooses = "somebody who was not shown the order chooses";
    public const string SlipIsForRunnerAlone =
        "Read it alone; show it to nobody who chooses. Present in this order; ask for first or second.";
    public const string CountedWithMeterSeen = ", counted apart: with the meter seen ('unseen' behind it says neither was)";
    public const string ChooseWithoutUnseen = "type it without 'unseen'; it is counted apart, with the meter seen";
    public const string CodesOfTrialAreNotTold = "whoever chooses does not know the codes of a trial";

    public static string ChooseByPlace(string person) => $"type 'choose {person} first' or 'choose {person} second'";

    public static string SlipWasTaken(string person, int set) =>
        $"{person} runs the trials of set {set} and chooses in none; 'fieldsession slip' prints the order";

    public static string SlipNamesPerson(int longest) => $"a name has 1 to {longest} characters";

    public static string PersonChoosesInSet(string person, ChoiceSet set) => $"{person} has chosen in set {set.Number}";

    public static string RunnerKnowsOrder(string person, ChoiceSet set) => $"{person} was shown the order of set {set.Number}";

    public static string PersonReadMeter(string person) => $"{person} sat at the meter when both codes were read";

    public static string SlipHead(ChoiceSet set) =>
        $"Set {set.Number}, '{set.Terms.Question}': {set.Presentations.Count} trials, first to last";

    public static string NotHeardOutOfReach(ChoiceSize size, int? needed) =>
        $"; NOT HEARD is out of reach: {100 * size.DetectShare:0} % right would be found with a chance of "
        + $"{100 * size.PowerAtDetect:0} % only{(needed is { } trials ? $", {trials} trials make it 80 %" : "")}";

    public static string NextTrialIs(ChoiceSet set) => $"trial {set.NextTrial} of {set.Presentations.Count} is next";

    public static string NextTrialIsPlayed(ChoiceSet set) =>
        $"trial {set.NextTrial} of {set.Presentations.Count} is next, from recordings; {PlayIt}";

    public static string ChoiceInTrial(CrewMember member, int trial) => $"choice of {member.Name} in trial {trial}";

    public static string ChoiceStored(string person, int trial, int set, string next) =>
        $"{person} chose in trial {trial} of set {set}{next}";

    public static string ThereIsNoSetOfTrials(int set) => $"there is no set {set} of trials";

    public static string AllTrialsOfSetAreMade(ChoiceSet set) =>
        $"all {set.Presentations.Count} planned trials of set {set.Number} are made";

    public static string OtherTrialComesNext(ChoiceSet set, int trial) =>
        $"trial {set.NextTrial} of set {set.Number} comes next, not {trial}";

    public static string ThereIsNoPlaceInTrial(int place) => $"there is no place {place}";

    public static string IsNoPartOfChoice(string word) => $"'{word}' is not a part of a choice";

    public static string ChoiceFormWithSet(ExampleNames own) => $"{ChoiceForm(own)}, where several sets are open with set=2";

    public static string IsNeitherCodeNorPlace(string typed) => $"'{typed}' is not a place";

    public static string TriangleForm(string person) => $"type 'choose {person} 1', 2 or 3";

    public static string SetIsAboutOtherCodes(ChoiceSet set, SpecCode code) =>
        $"set {set.Number} is about {set.Terms.First} and {set.Terms.Second}, not {code}";

    public static string NoTrialsAreAboutCode(SpecCode code) => $"no planned trials are about {code}";

    public static string TrialsOfSet(ChoiceSet set) => $"trials of set {set.Number}";

    public static string TrialsPlanned(int set, int trials, ChoiceTerms terms, string where, string presented) =>
        $"set {set}: {trials} trials, {terms.First} or {terms.Second}, '{terms.Question}'{where}, {terms.Side}; {presented}";

    public static string CodeIsNotOfPair(SpecCode code) => $"{code} is not one of the pair";

    public static string SidesOfPairAre(SpecCode first, SpecCode second) => $"expect {first} or {second}, or say side=two";

    public static string NumberOfTrialsCanBe(int fewest, int most) =>
        $"plan {fewest} to {most}; 'size --choices' says what a number can show";

    public static string SetAsksThisAlready(ChoiceSet open) => $"set {open.Number} asks this already and is not at its end";

    public static string FinishOpenSetFirst(ChoiceSet open) => $"make its trials {open.NextTrial} to {open.Presentations.Count} first";

    public static string RunIsOnRateAtStop(Run run, string ratingsOrChoices) => $"run {run.Number} is on: {ratingsOrChoices} at a stop";

    public static string LevelInBand(double levelDb, int hertz) => $"{levelDb:0.0#} dB at {hertz} Hz";

    public static string ExtraIsNotedAlready(string part) => $"'{part}' is noted for this reading already";

    public static string IsNoPartOfExtra(string word) => $"'{word}' is not a part such as c=74.2 (0 to 140 dB)";

    public static string AllTrialsAreMade(ChoiceSet set) => $"all {set.Presentations.Count} trials are made";

    public static string NextTrialPresents(ChoiceSet set, string codes) =>
        $"trial {set.NextTrial} of {set.Presentations.Count}: first {codes}";

    public static string RatingOfAttributeBy(string attribute, CrewMember member) => $"rating of {attribute} by {member.Name}";

    public static string RatingCoveredUntil(string others) => $"; covered until {others} stored it too";

    public static string RatingStored(string person, string attribute, Study after, string cover) =>
        $"{person} rated {attribute} of {after.LastRun?.Code}, run {after.LastRun?.Number}{cover}";

    public static string LastRunWasOnOtherCode(Run run, SpecCode code) => $"the last run was on {run.Code}, not on {code}";

    public static string CodeIsNotDriven(SpecCode code) => $"{code} has not been driven";

    public static string RateLastCodeNow(Run run) => $"rate {run.Code} now, and another code at the stop after its run";

    public static string RatingsAreClosed(Run run) => $"the ratings of run {run.Number} are closed";

    public static string AttributeIsNotRated(string attribute) => $"'{attribute}' is not rated in this study";

    public static string AttributesAre(string names) => $"the attributes are {names}";

    public static string PersonHasRatedAlready(string person, string attribute, Run run) =>
        $"{person} has rated {attribute} of run {run.Number} already";

    public static string ScoreIsOffScale(Score score) => $"{score} is off the scale";

    public static string ReferenceHasFixedScore(Study study) =>
        $"{study.ReferenceCode} brackets the others and is {Score.Anchor} for every attribute";

    public static string RateOthersAgainstReference(Study study) =>
        $"rate the other codes against it; nothing or {Score.Anchor} is typed for {study.ReferenceCode}";

    public static string CallsNoAttribute(string attribute) => $"'{attribute}' matches no attribute, or more than one";

    public static string TypedIsOffScale(string typed) => $"'{typed}' is off the scale";

    public static string IsNoPartOfRating(string word) => $"'{word}' is not a part of a rating";

    public static string RatingFormWithSeat(ExampleNames own) => $"{RatingForm(own)}, where it is needed with seat=rear or code={own.Code}";

    public static string RatingsAreClosedAlready(Run run) => $"the ratings of run {run.Number} are closed already";

    public static string RatingsClosedAndUncovered(Study after) => $"ratings of run {after.LastRun?.Number} closed and uncovered";

    public static string IsNoPartOfTrials(string word) => $"'{word}' is not a part of trials";

    public static string TrialsFormWithAllParts(ExampleNames own, int mostTrials) =>
        $"{TrialsForm(own)}; side= is two or a code; kind= paired or triangle; detect= 75 to 90; from=recordings; n= at most {mostTrials}";
}
