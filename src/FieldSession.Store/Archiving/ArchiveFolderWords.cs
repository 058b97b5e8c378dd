namespace FieldSession.Store.Archiving;

/// <summary>Why a study or a folder is left out of an archive.</summary>
internal static class ArchiveFolderWords
{
    public static string NoSuchFolder(string folder) => $"{folder}: there is no such folder. Give the folder that the finished studies lie in.";
}
