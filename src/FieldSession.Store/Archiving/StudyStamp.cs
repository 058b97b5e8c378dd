using FieldSession.Archiving;

namespace FieldSession.Store.Archiving;

/// <summary>By what the index knows that a study is still as it was.</summary>
/// <param name="Path">Its path below the archive's folder, cut by slashes.</param>
/// <param name="Bytes">Length of its text; of its LiteDB file where there is no text.</param>
/// <param name="Ticks">When that file was written last, UTC, in ticks.</param>
internal sealed record StudyStamp(string Path, long Bytes, long Ticks)
{
    /// <summary>The stamp of a study.</summary>
    public static StudyStamp Of(string root, string path)
    {
        FileInfo text = new(System.IO.Path.ChangeExtension(path, ".journal"));
        FileInfo file = text.Exists ? text : new FileInfo(path);
        return new StudyStamp(System.IO.Path.GetRelativePath(root, path).Replace('\\', '/'), file.Length, file.LastWriteTimeUtc.Ticks);
    }
}

/// <summary>A study of the archive as the index keeps it.</summary>
/// <param name="Stamp">How its file was then.</param>
/// <param name="State">How far it goes.</param>
/// <param name="Study">What the archive keeps of it.</param>
internal sealed record IndexedStudy(StudyStamp Stamp, StudyState State, ArchivedStudy Study);
