namespace FieldSession.Measures;

/// <summary>What a car is driven by. Days on different carriers are never compared.</summary>
public enum EnergyCarrier
{
    /// <summary>Electricity, reckoned in kWh.</summary>
    Electricity,

    /// <summary>Liquid fuel, reckoned in litres.</summary>
    Fuel,
}
