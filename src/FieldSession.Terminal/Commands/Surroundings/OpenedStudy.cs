using System.Collections.Concurrent;
using FieldSession.Journal;
using FieldSession.State;
using FieldSession.Store.Journaling;

namespace FieldSession.Terminal.Commands;

/// <summary>A study with its logbook: opened for writing, which lets the next program in only when it is closed, or only read.</summary>
internal sealed class OpenedStudy : IDisposable
{
    // a program whose terminal vanished takes two seconds and more to end
    private const int TriesForLock = 60;

    private readonly IJournal _journal;
    private readonly Surroundings _outside;

    private OpenedStudy(IJournal journal, string path, Surroundings outside, string? backup = null)
    {
        _journal = journal;
        _outside = outside;
        Logbook = Logbook.Open(journal, outside.Clock, outside.StrandAt(path));
        string? second = backup ?? outside.StateFolder;
        Kept = new KeptActs(Logbook, path, second is null ? null : new SecondPlace(second, path, outside.StrandAt(path)));
    }

    /// <summary>The study's one door.</summary>
    public Logbook Logbook { get; }

    /// <summary>What was typed and could not be saved.</summary>
    public KeptActs Kept { get; }

    /// <summary>The copies after each run; null: none are made.</summary>
    public RunCopies? Copies { get; private set; }

    /// <summary>Opens a study that exists; what was repaired on the way is said on the message stream.</summary>
    /// <param name="path">The study file.</param>
    /// <param name="outside">The world outside.</param>
    /// <param name="backup">Folder for a copy after each run; null: none.</param>
    public static OpenedStudy At(string path, Surroundings outside, string? backup = null)
    {
        StudyFile file = StudyFile.Open(path, outside.Clock, TermsIn(outside));
        Say(file.Repaired, outside);
        OpenedStudy opened = Begun(file, path, outside, backup);
        opened.Copies = backup is null ? null : new RunCopies(opened.Logbook, backup, file.CopyTo);
        return opened;
    }

    /// <summary>Reads a study without writing anything: for commands that only tell what is in it.</summary>
    /// <param name="path">The study file.</param>
    /// <param name="outside">The world outside.</param>
    public static OpenedStudy ToRead(string path, Surroundings outside)
    {
        ReadStudy study = ReadStudy.At(path);
        Say(study.Remarks, outside);
        return Begun(study, path, outside);
    }

    /// <summary>
    /// How a study is opened for writing: with patience for a program that is just ending, and the record of what was acknowledged.
    /// </summary>
    public static OpeningTerms TermsIn(Surroundings outside) => new(TriesForLock, outside.StateFolder);

    /// <summary>Makes a new study.</summary>
    public static OpenedStudy New(string path, Surroundings outside) =>
        new(StudyFile.Create(path, outside.Clock, TermsIn(outside)), path, outside);

    /// <summary>What went wrong beside the entry, in words, each only once; null: nothing new.</summary>
    public string? TakeTrouble() => Kept.TakeTrouble() ?? Copies?.TakeTrouble();

    /// <inheritdoc/>
    public void Dispose()
    {
        Copies?.Dispose();
        Kept.Dispose();
        while (TakeTrouble() is { } trouble)
        {
            _outside.Error.WriteLine(trouble);
        }

        Say(Kept.AtTheEnd(), _outside);
        _journal.Dispose();
    }

    private static OpenedStudy Begun(IJournal journal, string path, Surroundings outside, string? backup = null)
    {
        if (journal.Lines.Count > 0)
        {
            OpenedStudy begun = new(journal, path, outside, backup);
            Say(EntryByNewerProgram.AmongThem(journal.Lines.Select(EntryKinds.EntryIn), begun.Logbook.Study), outside);
            return begun;
        }

        journal.Dispose();
        throw new StudyMissingException(CommandWords.StudyNeverBegun(path));
    }

    private static void Say(IEnumerable<string> sentences, Surroundings outside)
    {
        foreach (string sentence in sentences)
        {
            outside.Error.WriteLine(sentence);
        }
    }
}

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

    /// <summary>Copies from now on; a place that is not there is said at once, and tried again after each run.</summary>
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
        if (!Directory.Exists(place))
        {
            _troubles.Enqueue(CommandWords.NoFolderForCopies(place));
        }
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
