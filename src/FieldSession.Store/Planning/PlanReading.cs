using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Store.Planning;

/// <summary>What came of reading a plan folder.</summary>
/// <param name="Plan">The plan; null where there are problems.</param>
/// <param name="Problems">Everything that rules it out, at most 20; empty where the plan is good.</param>
/// <param name="Warnings">What is weak but can be driven, and words that were passed over.</param>
public sealed record PlanReading(Plan? Plan, ImmutableList<PlanProblem> Problems, ImmutableList<PlanProblem> Warnings);
