namespace FieldSession.Comparing;

/// <summary>The levels that one comparison's p must stay below for a word, 0..1.</summary>
/// <param name="Difference">Two-sided, for "difference shown".</param>
/// <param name="Equivalence">Of each of the two one-sided tests, for "equivalent within the margin".</param>
public sealed record WordLevels(double Difference, double Equivalence);
