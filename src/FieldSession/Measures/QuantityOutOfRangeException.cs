namespace FieldSession.Measures;

/// <summary>A quantity that can't be, such as a wind of 300 m/s.</summary>
/// <param name="quantity">The name of the quantity.</param>
/// <param name="why">The range it lies in, in words for the crew.</param>
public sealed class QuantityOutOfRangeException(string quantity, string why) : ArgumentOutOfRangeException(quantity, why)
{
    /// <summary>The range it lies in, in words for the crew.</summary>
    public string Why { get; } = why;
}
