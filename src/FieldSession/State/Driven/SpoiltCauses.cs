using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>The letters and words of the causes, as the crew types and reads them.</summary>
public static class SpoiltCauses
{
    /// <summary>Every cause with its letter, its word, and its explanation.</summary>
    public static ImmutableArray<(SpoiltCause Cause, char Letter, string Word, string Meaning)> All { get; } =
    [
        (SpoiltCause.Traffic, 't', "traffic", "traffic"),
        (SpoiltCause.Wind, 'w', "wind", "wind gust"),
        (SpoiltCause.Speed, 's', "speed", "speed off"),
        (SpoiltCause.Road, 'r', "road", StateWords.RoadThatSpoilsReading),
        (SpoiltCause.Noise, 'n', "noise", "noise inside"),
        (SpoiltCause.EntryDoubt, 'e', "entry", "entry doubt"),
    ];

    /// <summary>The cause that a letter means; null: none.</summary>
    public static SpoiltCause? FromLetter(char letter)
    {
        foreach ((SpoiltCause cause, char known, _, _) in All)
        {
            if (known == char.ToLowerInvariant(letter))
            {
                return cause;
            }
        }

        return null;
    }

    /// <summary>The word of a cause: traffic, wind, speed, road, noise, entry.</summary>
    public static string Word(this SpoiltCause cause) => All[(int)cause].Word;

    /// <summary>The letter of a cause.</summary>
    public static char Letter(this SpoiltCause cause) => All[(int)cause].Letter;
}

/// <summary>What spoilt a reading.</summary>
public enum SpoiltCause
{
    /// <summary>Traffic beside, ahead or oncoming: letter t.</summary>
    Traffic,

    /// <summary>A gust of wind: letter w.</summary>
    Wind,

    /// <summary>Off speed: letter s.</summary>
    Speed,

    /// <summary>The road: works, debris, a wet patch: letter r.</summary>
    Road,

    /// <summary>Noise inside: talk, a rattle, the indicator: letter n.</summary>
    Noise,

    /// <summary>Doubt about what was typed or read: letter e.</summary>
    EntryDoubt,
}
