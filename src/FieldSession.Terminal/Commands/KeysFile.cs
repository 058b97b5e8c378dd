using FieldSession.Terminal.Starting;

namespace FieldSession.Terminal.Commands;

/// <summary>The file with the user's own keys, read when the screens are opened; where there is none, the keys are as delivered.</summary>
internal static class KeysFile
{
    private const string Name = "keys";

    /// <summary>The keys to use; null: the file is wrong, and what is wrong has been said with file and line.</summary>
    public static KeyTable? Read(Surroundings outside)
    {
        string? path = outside.ConfigFolder is { } folder ? Path.Combine(folder, Name) : null;
        if (path is null || !File.Exists(path))
        {
            return KeyTable.Standard;
        }

        try
        {
            (KeyTable keys, string? refusal) = OwnKeys.Of(KeyTable.Standard, File.ReadAllLines(path));
            if (refusal is not null)
            {
                outside.Error.WriteLine($"fieldsession: {path}, {refusal}");
                return null;
            }

            return keys;
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
        {
            outside.Error.WriteLine($"fieldsession: {path}: {unreadable.Message}; mend or move the file, the keys are as delivered without it");
            return null;
        }
    }

    /// <summary>The folder in which a program of this user keeps its settings: XDG_CONFIG_HOME, else .config below the home folder.</summary>
    public static string? StandardFolder() => UserFolders.Of("XDG_CONFIG_HOME", ".config");
}
