namespace FieldSession.State;

/// <summary>The crew's decision to go on although a blocking check rules it out.</summary>
/// <param name="Check">Name of the check.</param>
/// <param name="Reason">Why, in the crew's words.</param>
/// <param name="BeforeRun">Number of the run that it let start.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record Override(string Check, string Reason, int BeforeRun, LineMark Mark);
