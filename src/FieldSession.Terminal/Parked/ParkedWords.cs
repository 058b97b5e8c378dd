using FieldSession.State;

namespace FieldSession.Terminal.Parked;

/// <summary>What screens say that are used when parked.</summary>
internal static class ParkedWords
{
    public const string ThisScreenOpensWhenRunIsOverAndCar = "This screen opens when the run is over and the car is parked.";
    public const string ShutUntilCarIsParked = "Shut until the car is parked.";
    public const string DriverNeverReadsOrTypes = "The driver never reads or types; the screen does not face the driver.";

    public static string ShutRunIsOn(Run run) => $"Shut: run {run.Number} is on.";

    public static string TypeAndPressEnter => $"Type '{Parking.Word}' and press Enter: review only when stopped and parked.";

    public static string TypeAndPressEnter2 => $"type '{Parking.Word}' and press Enter";

    public static string AndBackToDriving(KeyTable keys) => $"{keys.KeyTo(KeyTable.Drive)}: back to driving";

    public static string NotSavedMakeRoomThenTry(string because) => $"not saved: {because}; make room, then try again";
}
