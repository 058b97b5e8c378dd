using FieldSession.Store.Journaling;

namespace FieldSession.Terminal.Commands;

/// <summary>A study file opened for writing, with its logbook. Closing it lets the next program in.</summary>
internal sealed class OpenedStudy : IDisposable
{
    private readonly StudyFile _file;
    private readonly Surroundings _outside;

    private OpenedStudy(StudyFile file, Surroundings outside, string? backup = null)
    {
        _file = file;
        _outside = outside;
        Logbook = Logbook.Open(file, outside.Clock, outside.StrandAt(file.Path));
        Copies = backup is null ? null : new RunCopies(Logbook, backup, file.CopyTo);
    }

    /// <summary>The study's one door.</summary>
    public Logbook Logbook { get; }

    /// <summary>The copies after each run; null: none are made.</summary>
    public RunCopies? Copies { get; }

    /// <summary>Opens a study that exists; what was mended on the way is said on the message stream.</summary>
    /// <param name="path">The study file.</param>
    /// <param name="outside">The world outside.</param>
    /// <param name="backup">Folder for a copy after each run; null: none.</param>
    public static OpenedStudy At(string path, Surroundings outside, string? backup = null)
    {
        StudyFile file = StudyFile.Open(path, outside.Clock);
        foreach (string mended in file.Mended)
        {
            outside.Error.WriteLine(mended);
        }

        return new OpenedStudy(file, outside, backup);
    }

    /// <summary>Makes a new study.</summary>
    public static OpenedStudy New(string path, Surroundings outside) => new(StudyFile.Create(path, outside.Clock), outside);

    /// <inheritdoc/>
    public void Dispose()
    {
        Copies?.Dispose();
        while (Copies?.TakeTrouble() is { } trouble)
        {
            _outside.Error.WriteLine(trouble);
        }

        _file.Dispose();
    }
}
