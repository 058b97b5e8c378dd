namespace FieldSession.State;

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
