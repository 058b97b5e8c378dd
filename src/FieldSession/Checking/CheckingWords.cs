using FieldSession.State;

namespace FieldSession.Checking;

/// <summary>What the checks before and after a run say.</summary>
internal static class CheckingWords
{
    public const string TypeEndFirst = "type 'end' first, or check at the next stop";
    public const string NoSessionIsOpen = "no session is open";
    public const string TypeCalibrationBeforeFirst = "type 'calibration before' first";
    public const string SessionIsOpen = "a session is open";
    public const string CloseItWithCalibrationAfterBeforeNextOneBegins = "close it with 'calibration after' before the next one begins";
    public const string TypeCalibrationBeforeOrCalibrationAfter = "type 'calibration before 94.0' or 'calibration after 93.9'";
    public const string CalibrationCheckIsBeforeOrAfterAndOneLevel = "a calibration check is 'before' or 'after' and one level";
    public const string GoOnWithoutOverride = "go on without an override";
    public const string CheckHasName = "a check has a name";
    public const string CheckMassCar = "check mass 1655 car=X";
    public const string CheckChargeCar = "check charge 62 car=X";
    public const string CheckMeterClassBatteryAt = "check meter A F class=2 battery=80 at=12";
    public const string OverrideNamesCheckAndGivesReason = "an override names the check and gives a reason";
    public const string TypeOverrideCalibratorLeftAtHome = "type 'override calibration-before calibrator left at home'";
    public const string CheckPressureAt = "check pressure 230 231 250 249 at=12";
    public const string FlFrRlRr = "fl fr rl rr";
    public const string FrontLeftFromRight = "front left from right";
    public const string RearLeftFromRight = "rear left from right";
    public const string CarFromCar = "car from car";
    public const string CalibrationCheckAfterLastRunIsMissing = "the calibration check after the last run is missing";
    public const string TypeCalibrationAfterWithWhatMeterShows = "type 'calibration after 93.9' with what the meter shows";
    public const string NoCodesAreSealed = "no codes are sealed, so the study would not be blind";
    public const string LetCustodianRunSealFirst = "let the custodian run 'seal' first";
    public const string MeterWasNotCheckedBeforeThisSession = "the meter was not checked before this session";
    public const string TypeCalibrationBeforeWithWhatItShows = "type 'calibration before 94.0' with what it shows";
    public const string WaitThenTypeWeatherSurfaceDry = "wait, then type 'weather surface=dry'";
    public const string WaitThenTypeWeatherWindAgain = "wait, then type 'weather wind=...' again";
    public const string PlanAsksForItInEverySession = "the plan asks for it in every session";
    public const string NothingHasBeenReadYet = "nothing has been read yet";
    public const string TypeReadingFirst = "type the reading first, then the speed";
    public const string CheckTyresTreadWeeksShore = "check tyres tread=0.3 weeks=6 shore=1.5 run-in=150";
    public const string TreadDepthDiffersBy = "tread depth differs by";
    public const string BuildDatesDifferBy = "build dates differ by";
    public const string HardnessDiffersBy = "hardness differs by";
    public const string CheckMinKm = "check warm-up min=20 km=25";
    public const string TypeWeatherAirRoadWindGustSurfaceDry = "type 'weather air=6.1 road=5 wind=2.5 gust=4 surface=dry' with the parts you know";
    public const string WeatherSaysNothing = "the weather says nothing";

    public static string RunIsOn(Run run) => $"run {run.Number} is on";

    public static string AndItDriftedDb(double d) => $"; it drifted {d:+0.0#;-0.0#} dB: this session is void, kept and left out of the headline";

    public static string AndItDriftedDbMore(double d, Limits limits) => $"; it drifted {d:+0.0#;-0.0#} dB: more than {limits.CalibrationDriftWarnDb:0.0#} dB, look after the meter";

    public static string AndItDriftedDb2(double d) => $"; it drifted {d:+0.0#;-0.0#;0.0} dB";

    public static string AndCalibratorGivesDb(Study after) => $"; the calibrator gives {after.Plan?.CalibratorDb:0.0#} dB: adjust the meter and check again";

    public static string IsNoLevelThatCalibratorGives(string[] words) => $"'{words[2]}' is no level that a calibrator gives (50..140 dB)";

    public static string NoCheckStandsAgainstAnythingNow(string check) => $"no check '{check}' stands against anything now";

    public static string ChecksThatStandAre(string names) => $"the checks that stand are {names}";

    public static string CheckOverriddenItStandsInReport(string check, string reason) => $"check {check} overridden: {reason}; it stands in the report";

    public static string ThereIsNoCheck(string[] words) => $"there is no check '{words[1]}'";

    public static string ChecksAreSuchAs(string known) => $"the checks are {known}, such as '{CheckKinds.All[0].Form}'";

    public static string IsNoValueOfCheck(string[] words, int i, CheckKind kind) => $"'{words[i]}' is no value of check {kind.Name}";

    public static string CheckSaysNothing(CheckKind kind) => $"check {kind.Name} says nothing";

    public static string IsEmptyOrTooLong(CheckValue value) => $"'{value.Name}' is empty or too long";

    public static string IsNoNumber(string text) => $"'{text}' is no number";

    public static string NoRunStartsSo(string insteadOf) => $"no run starts so: {insteadOf}";

    public static string CheckLookOut(string check, CheckRecord record) => $"check {check}: look out: {record.Words}";

    public static string AndDiffersByKg(string word, double difference) => $"{word}, differs by {difference:0.#} kg";

    public static string OfFullDiffersByPoints(double percent, double difference) => $"{percent:0.#} % of full, differs by {difference:0.#} points";

    public static string MeterWasChangedToWithinSession(string now) => $"the meter was changed to {now} within a session: close it with 'calibration after', then begin a new one";

    public static string MeterIsOnNotOnAnd(string now) => $"the meter is on {now}, not on A and F";

    public static string AtMadeForTo(string what, string inWhat, string inWhat2, string inWhat3) => $"{what} at {inWhat}, made for {inWhat2} to {inWhat3}";

    public static string BatteryLessThan(double percent, double least) => $"battery {percent:0.#} %, less than {least:0.#} %";

    public static string MendItAndTypeCheckAgain(string check) => $"mend it and type the check again, or go on with 'override {check} WHY'";

    public static string RoadIsTyreNoiseCantBeCompared(string surface) => $"the road is {surface}: tyre noise can't be compared on it";

    public static string MeanWindOfIsAbove(string inWhat, string inWhat2) => $"the mean wind of {inWhat} is above {inWhat2}";

    public static string TypeOrGoOnWithOverride(CheckKind kind) => $"type '{kind.Form}', or go on with 'override {kind.Name} WHY'";

    public static string RoadIsNotDry(string surface) => $"the road is {surface}, not dry";

    public static string AndOrGoOnWithOverrideWhy(string instead, string check) => $"{instead}, or go on with 'override {check} WHY'";

    public static string AndReadingIsFlaggedAsSpoiltBySpeed(string words) => $"{words}: the reading is flagged as spoilt by speed";

    public static string AndLessThanKm(double least) => $", less than {least:0.#} km";

    public static string RunInForKm(double km, string more) => $"run in for {km:0.#} km{more}";

    public static string WarmedUpForLess(double driven, string unit, double least) => $"warmed up for {driven:0.#} {unit}, less than {least:0.#} {unit}";

    public static string WarmedUpFor(double driven, string unit) => $"warmed up for {driven:0.#} {unit}";

    public static string IsNotPartSuchAsAir(string word) => $"'{word}' is not a part such as air=6.1";

    public static string IsNotKnown(string name) => $"'{name}' is not known; the parts are air, road, wind, gust and surface";

    public static string IsNoNumber2(string value) => $"'{value}' is no number";
}
