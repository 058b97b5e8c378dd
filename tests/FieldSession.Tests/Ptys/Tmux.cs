using System.Diagnostics;
using System.Runtime.CompilerServices;

namespace FieldSession.Tests.Ptys;

/// <summary>
/// A program in a real terminal of 80x24: tmux draws it, keys go in as from a keyboard, and the screen comes out as text.
/// </summary>
internal sealed class Tmux : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly string _server = $"fieldsession-{Guid.NewGuid():N}";
    private readonly string _home;

    public Tmux(string home, params string[] words)
    {
        _home = home;
        Run(["-f", "/dev/null", "new-session", "-d", "-x", "80", "-y", "24", "--", .. words]);
    }

    /// <summary>Why there can't be such a terminal here; null: there can.</summary>
    public static string? WhyNot =>
        new[] { "/usr/bin/tmux", "/bin/tmux", "/usr/local/bin/tmux" }.Any(File.Exists) ? null : "tmux is not installed here";

    /// <summary>What is shown.</summary>
    public string Screen => Run(["capture-pane", "-p"]);

    /// <summary>Types text as it is.</summary>
    public Tmux Type(string text)
    {
        if (text.Length > 0)
        {
            Run(["send-keys", "-l", "--", text]);
        }

        return this;
    }

    /// <summary>Presses keys by their names, such as Enter or F4.</summary>
    public Tmux Press(params string[] names)
    {
        foreach (string name in names)
        {
            Run(["send-keys", name]);
        }

        return this;
    }

    /// <summary>
    /// Types text and presses Enter, later than a key bounces; then waits for what comes of it, because keys that wait in a
    /// queue reach a busy program at once.
    /// </summary>
    public Tmux Answer(string text)
    {
        if (text.Length > 0)
        {
            string before = Screen;
            Type(text).UntilNot(before);
        }

        Thread.Sleep(350);
        string asked = Screen;
        return Press("Enter").UntilNot(asked);
    }

    private Tmux UntilNot(string screen) => Until(() => Screen != screen);

    /// <summary>Waits until words are shown.</summary>
    public Tmux Until(string words) => Until(() => Screen.Contains(words, StringComparison.Ordinal), $"'{words}' was never shown");

    /// <summary>Waits until something holds, such as what is on the disk.</summary>
    public Tmux Until(Func<bool> holds) => Until(holds, "nothing came of it");

    private Tmux Until(Func<bool> holds, string otherwise)
    {
        long from = Stopwatch.GetTimestamp();
        while (!holds())
        {
            Assert.True(Stopwatch.GetElapsedTime(from) < Patience, $"{otherwise}:\n{Screen}");
            Thread.Sleep(10);
        }

        return this;
    }

    /// <summary>Leaves the program, and waits until it and its terminal are gone.</summary>
    public void Leave() => Press("C-q").Until(() => Screen.Length == 0);

    public void Dispose() => Run(["kill-server"]);

    private string Run(string[] words)
    {
        ProcessStartInfo start = new("tmux") { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (string word in new[] { "-L", _server }.Concat(words))
        {
            start.ArgumentList.Add(word);
        }

        foreach (
            (string name, string? value) in new (string, string?)[]
            {
                ("DisableRealDriverIO", null),
                ("TMUX", null),
                ("NO_COLOR", null),
                ("HOME", _home),
                ("XDG_STATE_HOME", null),
                ("XDG_CONFIG_HOME", null),
                ("LC_ALL", "C.UTF-8"),
            }
        )
        {
            start.Environment[name] = value;
        }

        using Process tmux = Process.Start(start)!;
        string said = tmux.StandardOutput.ReadToEnd();
        tmux.WaitForExit();
        return said;
    }
}

/// <summary>A test that needs tmux; elsewhere it is passed over and says so.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class TmuxFactAttribute : FactAttribute
{
    public TmuxFactAttribute([CallerFilePath] string? file = null, [CallerLineNumber] int line = -1)
        : base(file, line) => Skip = Tmux.WhyNot;
}
