using System.Collections.Immutable;
using FieldSession.Store;

namespace FieldSession.Terminal.Starting;

/// <summary>
/// The file that remembers how a user last looked at the screens. It is a convenience: where it can't be read or written, nothing is
/// remembered and nothing fails.
/// </summary>
/// <param name="folder">The folder for such files, made when needed; null: nothing is remembered.</param>
internal sealed class SightFile(string? folder)
{
    private const string Name = "sight";

    /// <summary>What is remembered.</summary>
    public UsersSight Sight
    {
        get
        {
            try
            {
                return folder is null ? new UsersSight() : UsersSight.Of(SmallText.Lines(Path.Combine(folder, Name)));
            }
            catch (Exception gone) when (gone is IOException or UnauthorizedAccessException)
            {
                return new UsersSight();
            }
        }
    }

    /// <summary>Remembers it.</summary>
    public void Remember(UsersSight sight)
    {
        if (folder is null)
        {
            return;
        }

        try
        {
            Directory.CreateDirectory(folder);
            string beside = Path.Combine(folder, $"{Name}.part");
            File.WriteAllLines(beside, sight.Lines);
            File.Move(beside, Path.Combine(folder, Name), overwrite: true);
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            // Only a convenience is lost.
            return;
        }
    }
}

/// <summary>The program's own folders below those that the user's desktop names (XDG base directories).</summary>
internal static class UserFolders
{
    /// <summary>The program's folder; null: there is no home folder.</summary>
    /// <param name="variable">The environment variable that names the folder above it.</param>
    /// <param name="belowHome">That folder below the home folder, where the variable is not set.</param>
    public static string? Of(string variable, params string[] belowHome)
    {
        string home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        string? above =
            Environment.GetEnvironmentVariable(variable) is { Length: > 0 } given ? given
            : home.Length > 0 ? Path.Combine([home, .. belowHome])
            : null;
        return above is null ? null : Path.Combine(above, "fieldsession");
    }
}

/// <summary>
/// The file that remembers which studies were opened last: one path a line, newest first, nothing of what is in
/// them. It is a convenience: where it can't be read or written, nothing is remembered and nothing fails.
/// </summary>
/// <param name="folder">The folder for such files, made when needed; null: nothing is remembered.</param>
internal sealed class RecentFile(string? folder)
{
    private const int Kept = 5;
    private const string Name = "recent";

    /// <summary>The paths, newest first.</summary>
    public ImmutableArray<string> Paths
    {
        get
        {
            try
            {
                return folder is null
                    ? []
                    : [.. SmallText.Lines(Path.Combine(folder, Name)).Where(line => line.Length > 0).Distinct().Take(Kept)];
            }
            catch (Exception gone) when (gone is IOException or UnauthorizedAccessException)
            {
                return [];
            }
        }
    }

    /// <summary>
    /// The folder in which a program of this user keeps such files: XDG_STATE_HOME, else .local/state below the home folder.
    /// </summary>
    public static string? StandardFolder() => UserFolders.Of("XDG_STATE_HOME", ".local", "state");

    /// <summary>Puts a study first.</summary>
    public void Remember(string study)
    {
        if (folder is null || study.Contains('\n', StringComparison.Ordinal))
        {
            return;
        }

        string path = Path.GetFullPath(study);
        try
        {
            string[] lines = [path, .. Paths.Where(known => known != path).Take(Kept - 1)];
            Directory.CreateDirectory(folder);
            string beside = Path.Combine(folder, $"{Name}.part");
            File.WriteAllLines(beside, lines);
            File.Move(beside, Path.Combine(folder, Name), overwrite: true);
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            // Only a convenience is lost; the study is open and safe.
            return;
        }
    }
}
