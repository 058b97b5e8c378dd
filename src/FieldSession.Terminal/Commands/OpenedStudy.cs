using FieldSession.Journal;
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

    /// <summary>How a study is opened for writing: with patience for a program that is just ending, and the record of what was acknowledged.</summary>
    public static OpeningTerms TermsIn(Surroundings outside) => new(TriesForLock, outside.StateFolder);

    /// <summary>Makes a new study.</summary>
    public static OpenedStudy New(string path, Surroundings outside) => new(StudyFile.Create(path, outside.Clock, TermsIn(outside)), path, outside);

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
