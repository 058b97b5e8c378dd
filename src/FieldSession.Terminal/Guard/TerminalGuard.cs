using System.Runtime.InteropServices;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;

namespace FieldSession.Terminal;

/// <summary>
/// Gives the terminal back in every way the program can end. Terminal.Gui restores it only when the application is
/// disposed in order; .NET has no default handling of SIGTERM and SIGHUP, so a signal would leave raw mode, the
/// alternate screen and a hidden cursor behind. Made before Init, because it keeps the terminal's settings.
/// </summary>
internal sealed class TerminalGuard : IDisposable
{
    private const int IdleHertz = 20;
    private const long IdleAfterMs = 3000;
    private const long ProbeEveryMs = 1000;
    private const int SecondsToEndInOrder = 2;
    private const int FaultsAtOnce = 4;
    private const int ExitAfterFaults = 70;
    private const int SigHup = 1;

    private readonly IApplication _app;
    private readonly List<PosixSignalRegistration> _signals = [];
    private readonly TerminalSettings? _settings = TerminalSettings.OfTerminal();
    private readonly ConsoleSettings? _console = ConsoleSettings.Kept();
    private readonly Queue<long> _faults = new();
    private TerminalSettings? _settingsWhileRunning;
    private volatile int _signal;
    private volatile bool _redraw;
    private long _lastKeyMs = Environment.TickCount64;
    private long _lastProbeMs = Environment.TickCount64;

    /// <summary>Keeps the terminal's settings and takes the signals.</summary>
    public TerminalGuard(IApplication app)
    {
        _app = app;
        EndOn(PosixSignal.SIGINT, 2);
        EndOn(PosixSignal.SIGTERM, 15);
        EndOn(PosixSignal.SIGHUP, SigHup);
        EndOn(PosixSignal.SIGQUIT, 3);
        if (!OperatingSystem.IsWindows())
        {
            // Stopped from outside, the terminal would stay in raw mode under the shell that comes up.
            _signals.Add(PosixSignalRegistration.Create(PosixSignal.SIGTSTP, context => context.Cancel = true));
            _signals.Add(PosixSignalRegistration.Create(PosixSignal.SIGCONT, _ => _redraw = true));
        }

        AppDomain.CurrentDomain.UnhandledException += OnUnhandled;
        app.Iteration += OnIteration;
    }

    /// <summary>What the program returns: 128 and the signal's number where a signal ended it, 70 after too many faults, else 0.</summary>
    public int ExitCode { get; private set; }

    /// <summary>Why screens can't be shown here; null: they can. Terminal.Gui alone would run unseen for ever.</summary>
    public static string? WhyNot()
    {
        if (!Driver.IsAttachedToTerminal(out _, out _))
        {
            return ShellWords.NoTerminal;
        }

        return Environment.GetEnvironmentVariable("TERM") == "dumb" ? ShellWords.TerminalPlacesNoCursor : null;
    }

    /// <summary>Takes notice of keys from now on. Called after Init, which replaces the keyboard and the terminal's settings.</summary>
    public void Attach()
    {
        _settingsWhileRunning = TerminalSettings.OfTerminal();
        _app.Keyboard.KeyDown += OnKey;
    }

    /// <summary>Takes note of a fault that the program survived; the fourth within two seconds ends it in order.</summary>
    public void NoteFault()
    {
        long now = Environment.TickCount64;
        _faults.Enqueue(now);
        while (now - _faults.Peek() > SecondsToEndInOrder * 1000)
        {
            _faults.Dequeue();
        }

        if (_faults.Count >= FaultsAtOnce)
        {
            ExitCode = ExitAfterFaults;
            StopAll();
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        AppDomain.CurrentDomain.UnhandledException -= OnUnhandled;
        _app.Iteration -= OnIteration;
        foreach (PosixSignalRegistration signal in _signals)
        {
            signal.Dispose();
        }

        TerminalSettings.WriteKeypadCodes();
    }

    private void EndOn(PosixSignal signal, int number) =>
        _signals.Add(
            PosixSignalRegistration.Create(
                signal,
                context =>
                {
                    context.Cancel = true;
                    End(number);
                }
            )
        );

    // In order if the main loop still turns; by force if it is stuck, or waits for a terminal that is gone.
    private void End(int signal)
    {
        _signal = signal;
        _ = Task.Delay(TimeSpan.FromSeconds(SecondsToEndInOrder))
            .ContinueWith(
                _ =>
                {
                    Restore();
                    Environment.Exit(128 + signal);
                },
                TaskScheduler.Default
            );
    }

    private void OnIteration(object? sender, EventArgs<IApplication?> iteration)
    {
        // Terminal.Gui 2.5.0 never clears this flag and would write "show the cursor" for ever.
        _app.Driver?.SetCursorNeedsUpdate(false);
        RestWhenIdle();
        ProbeTerminal();
        if (_redraw)
        {
            // .NET answers SIGCONT by putting the terminal into line mode, where no key would arrive before Enter.
            _redraw = false;
            _settingsWhileRunning?.Restore();
            _app.ClearScreenNextIteration = true;
        }

        if (_signal != 0)
        {
            ExitCode = 128 + _signal;
            StopAll();
        }
    }

    private void RestWhenIdle()
    {
        if (Application.MaximumIterationsPerSecond > IdleHertz && Environment.TickCount64 - _lastKeyMs > IdleAfterMs)
        {
            Application.MaximumIterationsPerSecond = IdleHertz;
        }
    }

    // The terminal may be gone while SIGHUP is ignored; Terminal.Gui would then spin on it for ever.
    private void ProbeTerminal()
    {
        if (_settings is null || _signal != 0 || Environment.TickCount64 - _lastProbeMs <= ProbeEveryMs)
        {
            return;
        }

        _lastProbeMs = Environment.TickCount64;
        if (TerminalSettings.OfTerminal() is null)
        {
            End(SigHup);
        }
    }

    private void StopAll()
    {
        foreach (SessionToken session in _app.SessionStack ?? [])
        {
            session.Runnable?.StopRequested = true;
        }
    }

    private void OnKey(object? sender, Key key)
    {
        _lastKeyMs = Environment.TickCount64;
        Application.MaximumIterationsPerSecond = TerminalProgram.BusyHertz;
    }

    private void OnUnhandled(object sender, UnhandledExceptionEventArgs fault) => Restore();

    private void Restore()
    {
        TerminalSettings.WriteRestoringCodes();
        _settings?.Restore();
        _console?.Dispose();
    }
}
