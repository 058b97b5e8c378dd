using System.Collections.Immutable;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>
/// Keys typed one right after the other while the box holds no words, and what they wrote. A hand that types a word does not stop to
/// think between its letters, a hand that does two acts does: 1.35 s (keystroke-level model of Card, Moran and Newell).
/// </summary>
/// <param name="Keys">The keys.</param>
/// <param name="Lines">Numbers of the journal lines that they wrote.</param>
internal sealed record Burst(string Keys, ImmutableArray<int> Lines)
{
    /// <summary>The longest gap between two letters of a word; a little less than a thought.</summary>
    public static readonly TimeSpan Gap = TimeSpan.FromSeconds(1);

    /// <summary>A key pressed again within this time bounced, or is held down.</summary>
    public static readonly TimeSpan Bounce = TimeSpan.FromMilliseconds(300);

    /// <summary>A figure after this time belongs to the next reading, where what is in the box is whole.</summary>
    public static readonly TimeSpan Later = TimeSpan.FromSeconds(4);

    /// <summary>No key.</summary>
    public static Burst None { get; } = new("", []);

    /// <summary>Whether a further key makes a word of the keys: another letter, or a sign of writing behind a letter.</summary>
    public bool MakesWordWith(char typed) => Keys.Length > 0 &&
        (IsOfWriting(typed) ? char.IsLetter(Keys[^1]) : char.IsLetter(typed) && Keys.Any(key => !IsSame(key, typed)));

    /// <summary>Whether a key is the last one once more.</summary>
    public bool Repeats(char typed) => Keys.Length > 0 && IsSame(Keys[^1], typed);

    private static bool IsOfWriting(char sign) => sign is ' ' or '-' or '.' or ',' or '\'' or '\u2019';

    private static bool IsSame(char one, char other) => char.ToLowerInvariant(one) == char.ToLowerInvariant(other);
}
