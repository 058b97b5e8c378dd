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

    /// <summary>
    /// Whom a typed name means: the whole name, or its first words where only one of the crew begins with them; null: nobody, or more than
    /// one.
    /// </summary>
    public static CrewMember? Meant(IEnumerable<CrewMember> crew, string typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        CrewMember[] all = [.. crew];
        CrewMember[] begun =
        [
            .. all.Where(member =>
                typed.Length > 0
                && member.Name.Length > typed.Length
                && member.Name[typed.Length] is ' ' or '-'
                && SamePerson(member.Name[..typed.Length], typed)
            ),
        ];
        return Array.Find(all, member => SamePerson(member.Name, typed)) ?? (begun is [var alone] ? alone : null);
    }

    /// <summary>The whole name of whom a typed name means; nobody of the crew: the name as it was typed.</summary>
    public static string NameMeant(IEnumerable<CrewMember>? crew, string typed) => Meant(crew ?? [], typed)?.Name ?? typed;

    /// <summary>Whether two names mean one person: letter case and outer blanks do not count.</summary>
    public static bool SamePerson(string one, string other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return string.Equals(one.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase);
    }
}
