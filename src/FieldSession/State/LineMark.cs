namespace FieldSession.State;

/// <summary>Where and when a fact stands in the journal.</summary>
/// <param name="Number">Number of the journal line, from 1.</param>
/// <param name="At">When it was written, by the laptop's clock.</param>
public readonly record struct LineMark(int Number, DateTimeOffset At);
