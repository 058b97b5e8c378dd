using FieldSession.State;

namespace FieldSession.Terminal.Parked;

/// <summary>What screens say that are used when parked.</summary>
internal static class ParkedWords
{
    public const string EnterBounced = "a second Enter within 0.3 s was left out";
    public const string OpensWhenRunIsOver = "This screen opens when the run is over and the car is parked.";
    public const string ShutUntilParked = "Shut until the car is parked.";
    public const string DriverNeverTypes = "The driver never reads or types; the screen does not face the driver.";

    public static string ShutWhileRunOn(Run run) => $"Shut: run {run.Number} is on.";

    public const string HowToOpen = $"Type '{Parking.Word}' and press Enter: review only when stopped and parked.";

    public const string HowToOpenBriefly = $"type '{Parking.Word}' and press Enter";

    public static string KeyToDriving(KeyTable keys) => $"{keys.KeyTo(ScreenName.Drive)}: back to driving";
}
