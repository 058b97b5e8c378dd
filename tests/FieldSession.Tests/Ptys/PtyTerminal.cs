using System.Diagnostics;
using System.Text;

namespace FieldSession.Tests.Ptys;

/// <summary>
/// A terminal with a program in it, seen from the other end: keys in as bytes, screen out as text, and afterwards whether the
/// terminal was given back. The program is a process of its own, leader of a session that this terminal controls.
/// </summary>
internal sealed class PtyTerminal : IDisposable
{
    /// <summary>Runs the words as they are.</summary>
    public const string Plainly = "exec \"$@\"";

    private const int SettingsLength = 60;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly object _gate = new();
    private readonly string _home = Directory.CreateTempSubdirectory("fieldsession-pty").FullName;
    private readonly int _slave;
    private readonly string _slaveName;
    private readonly byte[] _settingsBefore;
    private readonly PtyScreen _screen;
    private readonly StringBuilder _heard = new();
    private readonly Thread _reader;
    private int _master;
    private Process? _program;

    public PtyTerminal(int columns = 80, int rows = 24)
    {
        _master = PtyCalls.OpenMaster(PtyCalls.ReadWriteNotControlling | PtyCalls.CloseOnExec);
        Assert.True(_master >= 0 && PtyCalls.Grant(_master) == 0 && PtyCalls.Unlock(_master) == 0, "no pseudo terminal");
        byte[] name = new byte[128];
        Assert.Equal(0, PtyCalls.NameOfSlave(_master, name, name.Length));
        _slaveName = Encoding.UTF8.GetString(name).TrimEnd('\0');
        _slave = PtyCalls.Open(_slaveName, PtyCalls.ReadWriteNotControlling | PtyCalls.CloseOnExec);
        _screen = new PtyScreen(columns, rows);
        Resize(columns, rows);
        _settingsBefore = Settings();
        _reader = new Thread(Listen) { IsBackground = true };
        _reader.Start();
    }

    /// <summary>What the terminal shows.</summary>
    public string Screen => Locked(screen => screen.Text);

    /// <summary>The codes that set looks so far.</summary>
    public string[] Looks => Locked(screen => screen.Looks.ToArray());

    /// <summary>What the program wrote since this was asked last, codes and all.</summary>
    public string TakeHeard() =>
        Locked(_ =>
        {
            string heard = _heard.ToString();
            _heard.Clear();
            return heard;
        });

    /// <summary>
    /// What is left to be put back: settings that differ from before, modes that are still on; empty: the terminal was given back.
    /// </summary>
    public string NotGivenBack =>
        Locked(screen =>
        {
            string[] on =
            [
                .. screen
                    .Modes.Where(mode => mode.Value != (mode.Key == 25))
                    .Where(mode => mode.Key is not (7 or 12))
                    .Select(mode => $"?{mode.Key}"),
            ];
            return (Settings().SequenceEqual(_settingsBefore) ? "" : "settings ") + string.Join(' ', on);
        });

    /// <summary>Whether the program is still there.</summary>
    public bool IsRunning => _program is { HasExited: false };

    /// <summary>The home folder of the program's user.</summary>
    public string Home => _home;

    /// <summary>Starts the program in the terminal.</summary>
    /// <param name="words">The program and its words.</param>
    /// <param name="how">The shell's line that runs them, for other streams or ignored signals.</param>
    /// <param name="settings">Environment variables beside the usual ones; null takes one away.</param>
    public PtyTerminal Start(string[] words, string how = Plainly, params (string Name, string? Value)[] settings)
    {
        ProcessStartInfo start = new("/bin/sh");
        // A test run that is told to outlive its own terminal ignores the loss of it, and hands that on; the program must not.
        string terminal = $"exec setsid -c env --default-signal=HUP,INT,QUIT /bin/sh -c '{how}' sh \"$@\" <{_slaveName} >{_slaveName} 2>&1";
        foreach (string word in new[] { "-c", terminal, "sh" }.Concat(words))
        {
            start.ArgumentList.Add(word);
        }

        (string, string?)[] usual =
        [
            ("DisableRealDriverIO", null),
            ("TERM", "xterm-256color"),
            ("HOME", _home),
            ("XDG_STATE_HOME", null),
            ("XDG_CONFIG_HOME", null),
            ("NO_COLOR", null),
            ("LINES", null),
            ("COLUMNS", null),
        ];
        foreach ((string name, string? value) in usual.Concat(settings))
        {
            start.Environment[name] = value;
        }

        _program = Process.Start(start)!;
        return this;
    }

    /// <summary>Sends keys as a terminal sends them.</summary>
    public PtyTerminal Type(string keys)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(keys);
        Assert.Equal(bytes.Length, PtyCalls.Write(_master, bytes, bytes.Length));
        return this;
    }

    /// <summary>Waits until the screen shows words.</summary>
    public PtyTerminal Until(string words)
    {
        Wait(() => Screen.Contains(words, StringComparison.Ordinal), () => $"'{words}' was never shown:\n{Screen}");
        return this;
    }

    /// <summary>Waits until the screen shows words or the program has ended.</summary>
    /// <returns>Whether it shows them.</returns>
    public bool IsShown(string words)
    {
        Wait(() => !IsRunning || Screen.Contains(words, StringComparison.Ordinal), () => $"neither an end nor '{words}':\n{Screen}");
        return Screen.Contains(words, StringComparison.Ordinal);
    }

    /// <summary>Sends keys to a program that may have ended meanwhile.</summary>
    public PtyTerminal TypeIfItRuns(string keys) => IsRunning ? Type(keys) : this;

    /// <summary>Waits until the screen has not changed for a moment.</summary>
    /// <returns>What it shows.</returns>
    public string Settled()
    {
        string before = Screen;
        for (int still = 0; still < 3 && IsRunning; )
        {
            Thread.Sleep(100);
            still = Screen == before ? still + 1 : 0;
            before = Screen;
        }

        return before;
    }

    /// <summary>Waits until the program has ended.</summary>
    /// <returns>Its exit code.</returns>
    public int Ended()
    {
        Wait(() => _program!.HasExited, () => $"the program goes on:\n{Screen}");
        _program!.WaitForExit();

        // Its last bytes may still be on the way.
        Thread.Sleep(100);
        return _program.ExitCode;
    }

    /// <summary>Sends the program a signal.</summary>
    public PtyTerminal Signal(int number)
    {
        Assert.Equal(0, PtyCalls.Kill(_program!.Id, number));
        return this;
    }

    /// <summary>Makes the terminal another size; the screen is empty until the program draws it again.</summary>
    public PtyTerminal Resize(int columns, int rows)
    {
        Locked(screen =>
        {
            screen.Clear(columns, rows);
            return true;
        });
        Assert.Equal(0, PtyCalls.Control(_master, PtyCalls.SetWindowSize, [(ushort)rows, (ushort)columns, 0, 0]));
        return this;
    }

    /// <summary>Wipes what is shown, as other output would.</summary>
    public PtyTerminal Wipe()
    {
        Locked(screen =>
        {
            screen.Wipe();
            return true;
        });
        return this;
    }

    /// <summary>The terminal's window is closed, or the line is lost.</summary>
    public void HangUp()
    {
        int master = Interlocked.Exchange(ref _master, -1);
        if (master >= 0)
        {
            PtyCalls.Close(master);
            // whoever listens still holds it, until there is something to hear
            _ = PtyCalls.Write(_slave, "\n"u8.ToArray(), 1);
        }
    }

    public void Dispose()
    {
        if (IsRunning)
        {
            PtyCalls.Kill(_program!.Id, 18);
            _program.Kill(entireProcessTree: true);
            _program.WaitForExit();
        }

        _program?.Dispose();
        HangUp();
        PtyCalls.Close(_slave);
        Directory.Delete(_home, recursive: true);
    }

    private static void Wait(Func<bool> until, Func<string> otherwise)
    {
        long from = Stopwatch.GetTimestamp();
        while (!until())
        {
            Assert.True(Stopwatch.GetElapsedTime(from) < Patience, otherwise());
            Thread.Sleep(10);
        }
    }

    private T Locked<T>(Func<PtyScreen, T> ask)
    {
        lock (_gate)
        {
            return ask(_screen);
        }
    }

    private byte[] Settings()
    {
        byte[] settings = new byte[256];
        Assert.Equal(0, PtyCalls.ReadSettings(_slave, settings));
        return settings[..SettingsLength];
    }

    private void Listen()
    {
        byte[] buffer = new byte[8192];
        char[] letters = new char[8192];
        Decoder decoder = Encoding.UTF8.GetDecoder();
        while (_master is >= 0 and int master && PtyCalls.Read(master, buffer, buffer.Length) is > 0 and nint read)
        {
            int count = decoder.GetChars(buffer, 0, (int)read, letters, 0);
            lock (_gate)
            {
                _heard.Append(letters, 0, count);
                _screen.Take(new string(letters, 0, count));
            }
        }
    }
}
