using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Checking;

/// <summary>What the checks before and after a run say.</summary>
internal static class CheckingWords
{
    public const string EndRunOrCheckLater = "type 'end' first, or check at the next stop";
    public const string NoSessionIsOpen = "no session is open";
    public const string CalibrateBeforeFirst = "type 'calibration before' first";
    public const string SessionIsOpen = "a session is open";
    public const string CloseSessionFirst = "close it with 'calibration after' before the next one begins";
    public const string CalibrationForm = "type 'calibration before 94.0' or 'calibration after 93.9'";
    public const string CalibrationNamesTimeAndLevel = "a calibration check is 'before' or 'after' and one level";
    public const string GoOnWithoutOverride = "go on without an override";
    public const string CheckHasName = "name the check";
    public const string MassForm = "check mass 1655 car=X";
    public const string MassFormInPounds = "check mass 3650 car=X";
    public const string ChargeForm = "check charge 62 car=X";
    public const string MeterForm = "check meter A F class=2 battery=80 at=12";
    public const string OverrideNamesCheckAndReason = "an override names the check and gives a reason";
    public const string OverrideForm = "type 'override calibration-before calibrator left at home'";
    public const string MeterFormInFahrenheit = "check meter A F class=2 battery=80 at=54";
    public const string PressureFormInPsi = "check pressure 33.5 33.5 36 36 at=54";
    public const string PressureForm = "check pressure 230 231 250 249 at=12";
    public const string NamesOfWheels = "fl fr rl rr";
    public const string FrontLeftFromRight = "front left from right";
    public const string RearLeftFromRight = "rear left from right";
    public const string CarFromOtherCar = "car from car";
    public const string CalibrationAfterIsMissing = "the calibration check after the last run is missing";

    public static string DoubtsAreOpen(IReadOnlyList<OpenDoubt> open) =>
        $"{(open.Count == 1 ? "a doubtful reading is" : $"{open.Count} doubtful readings are")} open: "
        + $"{string.Join(", ", open.Take(4).Select(doubt => doubt.Place))}{(open.Count > 4 ? ", ..." : "")}";

    public static string AnswerDoubts(OpenDoubt first) =>
        $"answer at the stop, such as 'confirm {first.Place}' or 'correct {first.Place} 58-60'";

    public const string CalibrateAfter = "type 'calibration after 93.9' with what the meter shows";
    public const string NoCodesAreSealed = "no codes are sealed, so the study would not be blind";
    public const string LetCustodianRunSealFirst = "let the custodian run 'seal' first";
    public const string CalibrationBeforeIsMissing = "the meter was not checked before this session";
    public const string CalibrateBefore = "type 'calibration before 94.0' with what it shows";
    public const string WaitForDryRoad = "wait, then type 'weather surface=dry'";
    public const string WaitForLessWind = "wait, then type 'weather wind=...' again";
    public const string PlanAsksInEverySession = "the plan asks for it in every session";
    public const string NothingHasBeenReadYet = "nothing has been read yet";
    public const string ReadingBeforeSpeed = "type the reading first, then the speed";
    public const string TyresForm = "check tyres tread=0.3 weeks=6 shore=1.5 run-in=150";
    public const string TreadDepthDiffersBy = "tread depth differs by";
    public const string BuildDatesDifferBy = "build dates differ by";
    public const string HardnessDiffersBy = "hardness differs by";
    public const string WarmUpFormInMiles = "check warm-up min=20 mi=15";
    public const string WarmUpForm = "check warm-up min=20 km=25";

    public static string WeatherForm(UnitSystem units) => $"type '{WeatherExample(units)}' with the parts you know";

    public static string WeatherExample(UnitSystem units) =>
        units == UnitSystem.Imperial
            ? "weather air=43 road=41 wind=6 gust=9 surface=dry"
            : "weather air=6.1 road=5 wind=2.5 gust=4 surface=dry";

    public const string WeatherSaysNothing = "no part of the weather is given";

    public static string DriftVoidsSession(double driftDb) =>
        $"; it drifted {driftDb:+0.0#;-0.0#} dB: this session is void, kept and left out of the headline";

    public static string DriftIsWarnedOf(double driftDb, Limits limits) =>
        $"; it drifted {driftDb:+0.0#;-0.0#} dB: more than {limits.CalibrationDriftWarnDb:0.0#} dB, have the meter looked at";

    public static string DriftIsSmall(double driftDb) => $"; it drifted {driftDb:+0.0#;-0.0#;0.0} dB";

    public static string CalibratorGivesOtherLevel(double? calibratorDb) =>
        $"; the calibrator gives {calibratorDb:0.0#} dB: adjust the meter and check again";

    public static string IsNoLevelOfCalibrator(string typed) => $"'{typed}' is not a level that a calibrator gives (50..140 dB)";

    public static string CheckDoesNotBlockNow(string check) => $"check '{check}' blocks nothing now";

    public static string BlockingChecksAre(string names) => $"the checks that block are {names}";

    public static string CheckOverridden(string check, string reason) => $"check {check} overridden: {reason}; the report shows it";

    public static string ThereIsNoCheck(string typed) => $"there is no check '{typed}'";

    public static string ChecksAre(string names, string example) => $"the checks are {names}, such as '{example}'";

    public static string IsNoValueOfCheck(string typed, CheckKind kind) => $"'{typed}' is not a value of check {kind.Name}";

    public static string CheckSaysNothing(CheckKind kind) => $"check {kind.Name} has no value";

    public static string IsEmptyOrTooLong(CheckValue value) => $"'{value.Name}' is empty or too long";

    public static string IsNoNumber(string typed) => $"'{typed}' is not a number";

    public static string NoRunStartsSo(string insteadOf) => $"no run starts like this: {insteadOf}";

    public static string CheckWarns(string check, CheckRecord record) => $"check {check}: look out: {record.Words}";

    public static string MassDiffers(string mass, double differenceKg) => $"{mass}, differs by {differenceKg:0.#} kg";

    public static string ChargeDiffers(double percent, double points) => $"{percent:0.#} % of full, differs by {points:0.#} points";

    public static string MeterChangedWithinSession(string settings) =>
        $"the meter was changed to {settings} within a session: close it with 'calibration after', then begin a new one";

    public static string MeterIsOnWrongSettings(string settings) => $"the meter is on {settings}, not on A and F";

    public static string MeterOutsideItsTemperatures(string meterClass, string air, string coldest, string warmest) =>
        $"{meterClass} at {air}, made for {coldest} to {warmest}";

    public static string BatteryIsLow(double percent, double least) => $"battery {percent:0.#} %, less than {least:0.#} %";

    public static string FixOrOverride(string check) => $"fix it and type the check again, or go on with 'override {check} WHY'";

    public static string RoadRulesOutNoise(string surface) => $"the road is {surface}: tyre noise can't be compared on it";

    public static string MeanWindIsAboveLimit(string wind, string limit) => $"the mean wind of {wind} is above {limit}";

    public static string CheckOrOverride(CheckKind kind, UnitSystem units) =>
        $"type '{kind.FormIn(units)}', or go on with 'override {kind.Name} WHY'";

    public static string RoadIsNotDry(string surface) => $"the road is {surface}, not dry";

    public static string InsteadOrOverride(string instead, string check) => $"{instead}, or go on with 'override {check} WHY'";

    public static string ReadingSpoiltBySpeed(string speed) => $"{speed}: the reading is flagged as spoilt by speed";

    public static string AndLessThanKm(double least) => $", less than {least:0.#} km";

    public static string RunInForKm(double km, string more) => $"run in for {km:0.#} km{more}";

    public static string WarmedUpTooLittle(string driven, string least) => $"warmed up for {driven}, less than {least}";

    public static string WarmedUpFor(string driven) => $"warmed up for {driven}";

    public static string IsNoPartOfWeather(string word) => $"'{word}' is not a part such as air=6.1";

    public static string PartsOfWeatherAre(string name) => $"'{name}' is not known; the parts are air, road, wind, gust and surface";
}
