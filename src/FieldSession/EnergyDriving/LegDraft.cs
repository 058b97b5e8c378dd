using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.EnergyDriving;

/// <summary>A leg while its parts are being read, from an entry line, a row of a file, or the fields of the screen.</summary>
public sealed record LegDraft
{
    /// <summary>Nothing read yet.</summary>
    public static LegDraft Empty { get; } = new();

    /// <summary>Number of the day.</summary>
    public int? Day { get; init; }

    /// <summary>The car.</summary>
    public string? Car { get; init; }

    /// <summary>The code.</summary>
    public SpecCode? Code { get; init; }

    /// <summary>How far.</summary>
    public Distance? Distance { get; init; }

    /// <summary>Energy by meter or pump.</summary>
    public Energy? Energy { get; init; }

    /// <summary>Smallest step of the typed energy, in its unit.</summary>
    public double EnergyStep { get; init; }

    /// <summary>That step, where it was said; null: told by the figures typed.</summary>
    public double? EnergyStepSaid { get; init; }

    /// <summary>State of charge before.</summary>
    public StateOfCharge? ChargeAtStart { get; init; }

    /// <summary>State of charge after.</summary>
    public StateOfCharge? ChargeAtEnd { get; init; }

    /// <summary>Step of the display of the state of charge, percent; null: told by the figures typed.</summary>
    public double? ChargeStep { get; init; }

    /// <summary>Whether the state of charge was typed with a figure behind the point.</summary>
    public bool ChargeIsFine { get; init; }

    /// <summary>Usable capacity.</summary>
    public Energy? Usable { get; init; }

    /// <summary>Who drove.</summary>
    public string? Driver { get; init; }

    /// <summary>Air at the start.</summary>
    public Temperature? AirAtStart { get; init; }

    /// <summary>Air at the end.</summary>
    public Temperature? AirAtEnd { get; init; }

    /// <summary>Mean wind.</summary>
    public WindSpeed? Wind { get; init; }

    /// <summary>Mean speed.</summary>
    public Speed? MeanSpeed { get; init; }

    /// <summary>When it began.</summary>
    public TimeOnly? At { get; init; }

    /// <summary>How long it took, minutes.</summary>
    public double? Minutes { get; init; }
}
