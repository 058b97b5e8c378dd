using FieldSession.Store;
using FieldSession.Terminal.Starting;

namespace FieldSession.Terminal.Commands;

/// <summary>
/// What a user has made their own: keys and habits, each in a file of its name that is read before any screen is made. Where there is
/// none, all is as delivered.
/// </summary>
/// <param name="Keys">The keys.</param>
/// <param name="Habits">How numbers and times are read.</param>
internal sealed record UsersOwn(KeyTable Keys, Habits Habits)
{
    /// <summary>Opens screens with what the user has made their own.</summary>
    /// <param name="outside">The world outside.</param>
    /// <param name="show">Opens them.</param>
    /// <returns>An exit code; <see cref="ExitCode.Wrong"/>: a file is wrong, and what is wrong has been said with file and line.</returns>
    public static int Show(Surroundings outside, Func<UsersOwn, int> show) =>
        Read(outside) is { } own ? own.Habits.Follow(() => show(own)) : ExitCode.Wrong;

    /// <summary>What is the user's own; null: a file is wrong, and what is wrong has been said with file and line.</summary>
    public static UsersOwn? Read(Surroundings outside) =>
        Read(outside, "keys", KeyTable.Standard, lines => OwnKeys.Of(KeyTable.Standard, lines)) is { } keys
        && Read(outside, "habits", new Habits(), Habits.Of) is { } habits
            ? new UsersOwn(keys, habits)
            : null;

    /// <summary>The folder in which a program of this user keeps its settings: XDG_CONFIG_HOME, else .config below the home folder.</summary>
    public static string? StandardFolder() => UserFolders.Of("XDG_CONFIG_HOME", ".config");

    private static T? Read<T>(Surroundings outside, string name, T delivered, Func<IReadOnlyList<string>, (T Told, string? Refusal)> told)
        where T : class
    {
        string? path = outside.ConfigFolder is { } folder ? Path.Combine(folder, name) : null;
        if (path is null || !File.Exists(path))
        {
            return delivered;
        }

        try
        {
            (T own, string? refusal) = told(SmallText.Lines(path));
            if (refusal is not null)
            {
                outside.Error.WriteLine($"fieldsession: {path}, {refusal}");
                return null;
            }

            return own;
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
        {
            outside.Error.WriteLine(CommandWords.OwnFileUnreadable(path, unreadable, name));
            return null;
        }
    }
}
