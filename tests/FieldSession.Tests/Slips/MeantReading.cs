using FieldSession.State;

namespace FieldSession.Tests.Slips;

/// <summary>What the co-driver means to store on a segment.</summary>
/// <param name="Figures">The figures that the meter showed, as they are typed; empty: the segment was missed.</param>
/// <param name="Flag">The cause letter; null: clean.</param>
/// <param name="FlagFirst">Whether the letter is typed before Enter.</param>
internal sealed record MeantReading(string Figures, char? Flag, bool FlagFirst)
{
    /// <summary>The keys that store it, without a slip; a bar is a thought before the next key.</summary>
    public string Keys =>
        (Figures, Flag, FlagFirst) switch
        {
            ("", _, _) => "m",
            (_, { } flag, true) => $"{Figures}{flag}\n",
            (_, { } flag, false) => $"{Figures}\n|{flag}",
            _ => $"{Figures}\n",
        };

    /// <summary>Whether the passage is what was meant.</summary>
    public bool IsAsMeant(Passage? passage) =>
        passage switch
        {
            Missed => Figures.Length == 0,
            Reading reading => Levels(reading) == Figures
                && reading.Spoilt?.Cause == (Flag is { } flag ? SpoiltCauses.FromLetter(flag) : null),
            _ => false,
        };

    private static string Levels(Reading reading) =>
        reading.Levels.IsSingle ? $"{reading.Levels.LowDb * 10:0}" : $"{reading.Levels.LowDb:0}{reading.Levels.HighDb:0}";
}
