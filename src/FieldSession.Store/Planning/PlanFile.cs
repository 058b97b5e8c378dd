using FieldSession.Store.Disks;

namespace FieldSession.Store.Planning;

/// <summary>Reads one file of a plan folder as text.</summary>
internal static class PlanFile
{
    /// <summary>Name of the plan's file.</summary>
    public const string Plan = "plan.toml";

    /// <summary>Name of the route's file.</summary>
    public const string Route = "route.csv";

    /// <summary>The text without byte order mark; null with a trouble where there is none.</summary>
    public static string? Read(string folder, string name, Troubles troubles)
    {
        string path = Path.Combine(folder, name);
        try
        {
            FileKind.RefuseSpecial(path);
            return SmallText.Read(path);
        }
        catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException)
        {
            troubles.Refuse(name, null, null, PlanFolderWords.NoSuchFile(path), PlanFolderWords.PlanFolderHolds(Plan, Route));
        }
        catch (TextRefusedException refused)
        {
            troubles.Refuse(name, refused.Line, null, refused.What, refused.Remedy);
        }
        catch (Exception denied) when (denied is IOException or UnauthorizedAccessException)
        {
            troubles.Refuse(name, null, null, PlanFolderWords.CantBeRead(path), PlanFolderWords.LookWhetherItIsFile);
        }

        return null;
    }
}
