namespace FieldSession.Measures;

/// <summary>The unit in which an energy was typed.</summary>
public enum EnergyUnit
{
    /// <summary>Kilowatt-hours of electricity.</summary>
    KilowattHour,

    /// <summary>Litres of fuel.</summary>
    Litre,

    /// <summary>US gallons of fuel.</summary>
    UsGallon,

    /// <summary>Imperial gallons of fuel.</summary>
    ImperialGallon,
}
