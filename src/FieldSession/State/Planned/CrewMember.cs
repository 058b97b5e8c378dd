namespace FieldSession.State;

/// <summary>Someone who rides in the car.</summary>
/// <param name="Name">As the crew calls them.</param>
/// <param name="Seat">Where they sit, such as "driver" or "co-driver".</param>
public sealed record CrewMember(string Name, string Seat)
{
    /// <summary>The word for the seat behind the wheel.</summary>
    public const string DriverSeat = "driver";

    /// <summary>The word for the seat at the keyboard.</summary>
    public const string CoDriverSeat = "co-driver";

    /// <summary>Whether two names mean one person: letter case and outer blanks do not count.</summary>
    public static bool SamePerson(string one, string other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return string.Equals(one.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase);
    }
}
