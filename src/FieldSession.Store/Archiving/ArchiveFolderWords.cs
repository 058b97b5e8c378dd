namespace FieldSession.Store.Archiving;

/// <summary>Why a study or a folder is left out of an archive.</summary>
internal static class ArchiveFolderWords
{
    public const string ThhMmSsz = "yyyy-MM-dd'T'HH:mm:ss'Z'";
    public const string DayClsKbar = "day,cls,nu_run,s_run,kbar,nu_e,s_e";

    public static string AndThereIsNoSuchFolder(string folder) => $"{folder}: there is no such folder. Give the folder that the finished studies lie in.";
}
