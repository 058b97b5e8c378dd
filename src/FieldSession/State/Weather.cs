using FieldSession.Measures;

namespace FieldSession.State;

/// <summary>The conditions at one moment; what was not typed is null.</summary>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record Weather(LineMark Mark)
{
    /// <summary>Air temperature.</summary>
    public Temperature? Air { get; init; }

    /// <summary>Temperature of the road surface.</summary>
    public Temperature? Road { get; init; }

    /// <summary>Mean wind.</summary>
    public WindSpeed? Wind { get; init; }

    /// <summary>Gusts.</summary>
    public WindSpeed? Gust { get; init; }

    /// <summary>State of the surface: dry, damp, wet, or the crew's word.</summary>
    public string? Surface { get; init; }
}
