namespace FieldSession.Terminal;

/// <summary>
/// Whether the car is stopped and parked. The program can't know it: somebody says so by typing a word, once, and is asked
/// again after a run was started.
/// </summary>
internal sealed class Parking
{
    /// <summary>The word that says so.</summary>
    public const string Word = "parked";

    /// <summary>Whether it was said and no run was started since.</summary>
    public bool IsParked { get; private set; }

    /// <summary>Whether a typed line is the word.</summary>
    public static bool IsWord(string typed) => string.Equals(typed.Trim().Trim('\''), Word, StringComparison.OrdinalIgnoreCase);

    /// <summary>Takes a typed line.</summary>
    /// <returns>Whether it was the word.</returns>
    public bool Take(string typed)
    {
        IsParked |= IsWord(typed);
        return IsParked;
    }

    /// <summary>A run has started.</summary>
    public void MoveOff() => IsParked = false;
}
