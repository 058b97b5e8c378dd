using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Views;

namespace FieldSession.Terminal;

/// <summary>Runs the screens in a terminal and gives the terminal back whatever happens.</summary>
internal static class TerminalProgram
{
    /// <summary>How often the main loop looks for keys while somebody types, per second.</summary>
    public const int BusyHertz = 100;

    private const string MouseOff = "\x1b[?1003l\x1b[?1015l\x1b[?1006l";

    /// <summary>Runs until the crew leaves, or a signal ends the program.</summary>
    /// <param name="desk">What the screens may use.</param>
    /// <param name="startScreen">Name of the screen to begin with, such as "drive".</param>
    /// <returns>0; 2 where there is no terminal that can show a screen; 128 and the signal's number where one ended it.</returns>
    public static int Run(Desk desk, string startScreen) => Run(() => new Shell(desk, startScreen), desk.Sight);

    /// <summary>The same with another shell.</summary>
    /// <param name="make">Makes what is shown, once the terminal is ready.</param>
    /// <param name="sight">How the user last looked at the screens; null: unknown.</param>
    public static int Run<T>(Func<T> make, UsersSight? sight = null)
        where T : Runnable, IToldOfFaults
    {
        if (TerminalGuard.WhyNot() is { } why)
        {
            Console.Error.WriteLine($"fieldsession: {why}");
            return 2;
        }

        Application.MaximumIterationsPerSecond = BusyHertz;
        Driver.SizeDetection = SizeDetectionMode.Polling;
        Driver.Force16Colors = true;
        using ConsoleSettings? console = ConsoleSettings.Kept();
        using IApplication app = Application.Create();
        using TerminalGuard guard = new(app);
        app.Init(ConsoleSettings.KnowsCodes() ? DriverRegistry.Names.ANSI : DriverRegistry.Names.WINDOWS);
        guard.Attach();

        // A slip of the finger must not suspend the program while the car moves.
        app.Keyboard.KeyBindings.Remove(Key.Z.WithCtrl);
        app.Driver!.WriteRaw(MouseOff + SizeCodes(sight, app.Screen.Size));
        using T shell = make();
        app.Run(shell, fault => Survive(fault, guard, shell));
        return guard.ExitCode;
    }

    // Asks for the size of the last day where the terminal begins smaller; one that does not know the codes stays as it is.
    private static string SizeCodes(UsersSight? sight, System.Drawing.Size size) =>
        sight is { Columns: { } columns, Rows: { } rows } && (columns > size.Width || rows > size.Height)
            ? string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"\x1b[8;{Math.Max(rows, size.Height)};{Math.Max(columns, size.Width)}t"
            )
            : "";

    private static bool Survive(Exception fault, TerminalGuard guard, IToldOfFaults shell)
    {
        guard.NoteFault();
        shell.Tell(fault);
        return true;
    }
}
