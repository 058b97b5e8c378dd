namespace FieldSession.State;

/// <summary>That somebody uncovered the ring before the last prediction was locked.</summary>
/// <param name="Why">The reason.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record RingOpening(string Why, LineMark Mark);
