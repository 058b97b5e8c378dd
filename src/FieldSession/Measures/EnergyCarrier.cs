namespace FieldSession.Measures;

/// <summary>What a car is driven by. Days on different carriers are never compared.</summary>
public enum EnergyCarrier
{
    /// <summary>Electricity, calculated in kWh.</summary>
    Electricity,

    /// <summary>Liquid fuel, calculated in litres.</summary>
    Fuel,
}
