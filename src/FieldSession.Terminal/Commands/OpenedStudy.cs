using FieldSession.Store.Journaling;

namespace FieldSession.Terminal.Commands;

/// <summary>A study file opened for writing, with its logbook. Closing it lets the next program in.</summary>
internal sealed class OpenedStudy : IDisposable
{
    private readonly StudyFile _file;

    private OpenedStudy(StudyFile file, Surroundings outside)
    {
        _file = file;
        Logbook = Logbook.Open(file, outside.Clock, Convert.ToHexStringLower(outside.Lot.Bytes(8)));
    }

    /// <summary>The study's one door.</summary>
    public Logbook Logbook { get; }

    /// <summary>Opens a study that exists; what was mended on the way is said on the message stream.</summary>
    public static OpenedStudy At(string path, Surroundings outside)
    {
        StudyFile file = StudyFile.Open(path, outside.Clock);
        foreach (string mended in file.Mended)
        {
            outside.Error.WriteLine(mended);
        }

        return new OpenedStudy(file, outside);
    }

    /// <summary>Makes a new study.</summary>
    public static OpenedStudy New(string path, Surroundings outside) => new(StudyFile.Create(path, outside.Clock), outside);

    /// <inheritdoc/>
    public void Dispose() => _file.Dispose();
}
