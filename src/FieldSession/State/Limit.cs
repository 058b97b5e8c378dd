namespace FieldSession.State;

/// <summary>A limit that a plan may change, by name.</summary>
/// <param name="Name">Its name in the plan, with its unit, such as "pressure_warn_kpa".</param>
/// <param name="Default">What holds where the plan says nothing.</param>
/// <param name="Lowest">Lowest value that a plan may give.</param>
/// <param name="Highest">Highest value that a plan may give.</param>
/// <param name="Words">What it limits.</param>
public sealed record Limit(string Name, double Default, double Lowest, double Highest, string Words);
