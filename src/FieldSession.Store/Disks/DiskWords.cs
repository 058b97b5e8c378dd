namespace FieldSession.Store.Disks;

/// <summary>What is said of paths that name no file.</summary>
internal static class DiskWords
{
    public static string NotAFile(string path) => $"{path}: this is a pipe or a device, and a file is needed. Nothing was changed. Save it as a file and name that.";
}
