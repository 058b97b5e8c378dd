namespace FieldSession.Comparing;

/// <summary>Why two codes cannot be held against each other, or not for certain.</summary>
internal enum EnergyObstacle
{
    /// <summary>Nothing rules it out.</summary>
    None,

    /// <summary>One of the codes has no stretch that counts.</summary>
    NotDriven,

    /// <summary>No chain of days leads from one code to the other.</summary>
    NeverTogether,

    /// <summary>Each code stayed on its car: tyres and car cannot be told apart.</summary>
    Car,

    /// <summary>Each code had its driver: tyres and driver cannot be told apart.</summary>
    Driver,
}

/// <summary>The difference of two codes in ln(consumption), with what its error is made of.</summary>
/// <param name="LogRatio">ln of the ratio code over reference; null: not to be told.</param>
/// <param name="Df">Degrees of freedom of the scatter.</param>
internal sealed record EnergyLine(double? LogRatio, int Df)
{
    /// <summary>What rules out the line.</summary>
    public EnergyObstacle Obstacle { get; init; }

    /// <summary>Variance of a stretch about the model; null without degrees of freedom.</summary>
    public double? UnitVariance { get; init; }

    /// <summary>Variance of the difference in units of the variance of a stretch.</summary>
    public double Leverage { get; init; }

    /// <summary>Variance of the difference that the steps of the displays alone make.</summary>
    public double ResolutionVariance { get; init; }

    /// <summary>Whether the stretches agree better than their displays can show, so that the display's step carries the error.</summary>
    public bool ResolutionApplied => UnitVariance is { } variance && variance * Leverage < ResolutionVariance;

    /// <summary>Standard error of the difference: from the scatter, which holds the displays' steps as well, but never less than those alone; null: unknown.</summary>
    public double? StandardError => UnitVariance is { } variance ? Math.Sqrt(Math.Max(variance * Leverage, ResolutionVariance)) : null;

    /// <summary>No line.</summary>
    public static EnergyLine None(EnergyObstacle obstacle) => new(null, 0) { Obstacle = obstacle };
}
