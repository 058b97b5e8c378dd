namespace FieldSession.State;

/// <summary>One leg of an energy day, from one reading of meter or display to the next.</summary>
/// <param name="Number">Number of the leg in the study, from 1.</param>
/// <param name="Figures">What was typed.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record EnergyLeg(int Number, LegFigures Figures, LineMark Mark)
{
    /// <summary>Why the leg is left out of the clean result; null: it is clean.</summary>
    public Spoiling? Spoilt { get; init; }

    /// <summary>Why the leg is doubtful; null: nothing is.</summary>
    public string? Doubt { get; init; }

    /// <summary>Whether the clean result leaves the leg out: flagged, and not too late.</summary>
    public bool LeftOut => Spoilt is { Late: false };
}
