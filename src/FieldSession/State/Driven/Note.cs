using FieldSession.Measures;

namespace FieldSession.State;

/// <summary>What someone said or saw.</summary>
/// <param name="Words">The note.</param>
/// <param name="Run">Number of the run it belongs to; null: said outside a run.</param>
/// <param name="Segment">Number of the segment it belongs to; null: none.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record Note(string Words, int? Run, int? Segment, LineMark Mark)
{
    /// <summary>Who said it; null: not noted.</summary>
    public string? Who { get; init; }

    /// <summary>Whether it was written after the reveal.</summary>
    public bool AfterReveal { get; init; }
}

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
