using System.Collections.Concurrent;
using System.Diagnostics;
using System.Runtime.InteropServices;

namespace FieldSession.Tests.Crashes;

/// <summary>
/// The real program, taking entry lines, until it is killed. FIELDSESSION_PROGRAM names another build of it, such as the
/// native one; otherwise it is the one beside the tests.
/// </summary>
internal sealed class RunningProgram : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly Process _process;
    private readonly BlockingCollection<string> _answers = [];
    private readonly Thread _reader;
    private readonly List<string> _typed = [];
    private readonly List<string> _refused = [];
    private readonly List<string> _all = [];

    public RunningProgram(params string[] words)
        : this([PathOfProgram, .. words], settings: []) { }

    private RunningProgram(string[] words, (string Name, string Value)[] settings)
    {
        ProcessStartInfo start = new(words[0], words[1..])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["DOTNET_ROOT"] = RuntimeFolder;
        // what it writes down in the user's folder stays out of the folder of whoever runs the tests
        start.Environment["XDG_STATE_HOME"] = Path.Combine(Path.GetTempPath(), "fieldsession-state");
        settings.ToList().ForEach(setting => start.Environment[setting.Name] = setting.Value);
        _process = Process.Start(start)!;
        _process.ErrorDataReceived += (_, said) => Messages.Enqueue(said.Data ?? "");
        _process.BeginErrorReadLine();
        _reader = new Thread(ReadAnswers);
        _reader.Start();
    }

    /// <summary>The program with other variables in its environment.</summary>
    public static RunningProgram With((string Name, string Value)[] settings, params string[] words) =>
        new([PathOfProgram, .. words], settings);

    public static string PathOfProgram =>
        Environment.GetEnvironmentVariable("FIELDSESSION_PROGRAM") ?? Path.Combine(AppContext.BaseDirectory, "fieldsession");

    /// <summary>The folder of the .NET that runs these tests, however they were started; the started program finds its own there.</summary>
    public static string RuntimeFolder => Path.GetFullPath(Path.Combine(RuntimeEnvironment.GetRuntimeDirectory(), "..", "..", ".."));

    /// <summary>What came on the message stream.</summary>
    public ConcurrentQueue<string> Messages { get; } = [];

    /// <summary>Every act that was answered with ok: the line it is in, and what was typed.</summary>
    public List<(int Line, string Typed)> Acknowledged { get; } = [];

    /// <summary>Every answer, in order.</summary>
    public IReadOnlyList<string> Answers => _all;

    /// <summary>Every answer that was no.</summary>
    public IReadOnlyList<string> Refused => _refused;

    /// <summary>Types lines without waiting for answers. A program that is killed meanwhile reads no more.</summary>
    public void Type(IEnumerable<string> lines)
    {
        try
        {
            foreach (string line in lines)
            {
                _typed.Add(line);
                _process.StandardInput.WriteLine(line);
            }

            _process.StandardInput.Flush();
        }
        catch (IOException)
        {
            // the pipe broke with the program
        }
    }

    /// <summary>Waits for so many answers in all; fails where the program ends before.</summary>
    public void WaitForAnswers(int count)
    {
        while (Acknowledged.Count + _refused.Count < count)
        {
            bool answered = _answers.TryTake(out string? answer, Patience);
            Assert.True(answered, $"no answer: {string.Join(' ', Messages)}");
            Take(answer!);
        }
    }

    /// <summary>Ends the input, upon which the program closes the study and goes.</summary>
    public void EndInput() => _process.StandardInput.Close();

    /// <summary>Waits until the program has gone by itself.</summary>
    /// <returns>Its exit code.</returns>
    public int WaitForEnd()
    {
        Assert.True(_process.WaitForExit(Patience), "the program does not end");
        // only the waiting without end also waits for what is still on its way on the message stream
        _process.WaitForExit();
        TakeWhatIsLeft();
        return _process.ExitCode;
    }

    /// <summary>Kills it with signal 9, and takes the answers that were on their way.</summary>
    public void Kill()
    {
        _process.Kill();
        _process.WaitForExit();
        TakeWhatIsLeft();
    }

    public void Dispose()
    {
        if (!_process.HasExited)
        {
            Kill();
        }

        _process.Dispose();
        _answers.Dispose();
    }

    private void ReadAnswers()
    {
        // an answer counts when all of it came, the line break too
        string unfinished = "";
        char[] block = new char[4096];
        while (_process.StandardOutput.Read(block) is > 0 and int length)
        {
            string[] lines = (unfinished + new string(block, 0, length)).Split('\n');
            unfinished = lines[^1];
            Array.ForEach(lines[..^1], _answers.Add);
        }

        _answers.CompleteAdding();
    }

    private void TakeWhatIsLeft()
    {
        _reader.Join();
        foreach (string answer in _answers.GetConsumingEnumerable())
        {
            Take(answer);
        }
    }

    private void Take(string answer)
    {
        _all.Add(answer);
        if (answer.StartsWith("ok ", StringComparison.Ordinal))
        {
            int line = int.Parse(answer.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture);
            Acknowledged.Add((line, _typed[Acknowledged.Count + _refused.Count]));
        }
        else
        {
            _refused.Add(answer);
        }
    }
}
