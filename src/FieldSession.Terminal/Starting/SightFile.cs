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
