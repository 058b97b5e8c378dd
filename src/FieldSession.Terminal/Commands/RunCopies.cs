using System.Collections.Concurrent;
using FieldSession.State;
using FieldSession.Store.Journaling;

namespace FieldSession.Terminal.Commands;

/// <summary>
/// Copies the study to a second place, such as a stick, after each run and at the end. The entry goes on meanwhile. A place
/// that can't be written to is said once for each run and tried again after the next one.
/// </summary>
internal sealed class RunCopies : IDisposable
{
    private readonly Logbook _logbook;
    private readonly string _place;
    private readonly Action<string> _copyTo;
    private readonly ConcurrentQueue<string> _troubles = [];
    private Task _lastCopy = Task.CompletedTask;
    private int _runsOver;
    private int _linesCopied;

    /// <summary>Copies from now on.</summary>
    /// <param name="logbook">The study's one door.</param>
    /// <param name="place">The folder for the copies.</param>
    /// <param name="copyTo">Copies the study as it is into a folder; an <see cref="IOException"/> says why not.</param>
    public RunCopies(Logbook logbook, string place, Action<string> copyTo)
    {
        _logbook = logbook;
        _place = place;
        _copyTo = copyTo;
        _runsOver = RunsOver(logbook.Study);
        _linesCopied = logbook.Lines.Count;
        logbook.Changed += OnChanged;
    }

    /// <summary>What could not be copied, in words, each only once; null: nothing new.</summary>
    public string? TakeTrouble() => _troubles.TryDequeue(out string? trouble) ? trouble : null;

    /// <summary>Copies what came since the last copy, and waits until it is done.</summary>
    public void Dispose()
    {
        _logbook.Changed -= OnChanged;
        if (_linesCopied < _logbook.Lines.Count)
        {
            Copy(CommandWords.EndOfStudy);
        }

        _lastCopy.Wait();
    }

    private static int RunsOver(Study study) => study.Runs.Count - (study.RunOn is null ? 0 : 1);

    private void OnChanged(object? sender, EventArgs change)
    {
        int over = RunsOver(_logbook.Study);
        if (over > _runsOver)
        {
            Copy($"run {over}");
        }

        _runsOver = over;
    }

    private void Copy(string stretch)
    {
        _linesCopied = _logbook.Lines.Count;
        _lastCopy = _lastCopy.ContinueWith(_ => Try(stretch), TaskScheduler.Default);
    }

    private void Try(string stretch)
    {
        try
        {
            _copyTo(_place);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            string why = fault is StudyMissingException ? CommandWords.NoSuchFolder : fault.Message;
            _troubles.Enqueue(CommandWords.NotCopied(stretch, _place, why));
        }
    }
}
