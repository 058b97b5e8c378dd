namespace FieldSession.Store.Disks;

/// <summary>A path names a pipe, a device or a socket where a file is needed. Nothing was read or changed.</summary>
public sealed class NotAFileException(string path) : IOException(DiskWords.NotAFile(path));
