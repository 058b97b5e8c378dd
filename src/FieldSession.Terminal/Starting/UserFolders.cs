namespace FieldSession.Terminal.Starting;

/// <summary>The program's own folders below those that the user's desktop names (XDG base directories).</summary>
internal static class UserFolders
{
    /// <summary>The program's folder; null: there is no home folder.</summary>
    /// <param name="variable">The environment variable that names the folder above it.</param>
    /// <param name="belowHome">That folder below the home folder, where the variable is not set.</param>
    public static string? Of(string variable, params string[] belowHome)
    {
        string home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        string? above = Environment.GetEnvironmentVariable(variable) is { Length: > 0 } given ? given
            : home.Length > 0 ? Path.Combine([home, .. belowHome]) : null;
        return above is null ? null : Path.Combine(above, "fieldsession");
    }
}
