namespace FieldSession.Journal;

/// <summary>
/// An expected no: why an act can't be done now, and what to do instead. Nothing has changed when it is given.
/// </summary>
/// <param name="Why">What rules out the act, in the crew's words.</param>
/// <param name="Instead">What to type or do instead.</param>
/// <param name="Check">The name of the check that rules it out, where an override with a reason is possible; else null.</param>
public sealed record Objection(string Why, string Instead, string? Check = null)
{
    /// <summary>What to do instead in five words at most, for who glances at the screen while the car moves; null: what to do instead is all.</summary>
    public string? Cure { get; init; }

    /// <summary>The whole sentence, as it is answered to the crew.</summary>
    public override string ToString() => Check is null ? $"{Why}; {Instead}" : $"{Check}: {Why}; {Instead}";
}
