using FieldSession.Measures;

namespace FieldSession.State;

/// <summary>What one person gave for one attribute after a run, from the seat they sat in.</summary>
/// <param name="Person">Who rates, as the plan writes the name.</param>
/// <param name="Seat">Where they sat in that run.</param>
/// <param name="Run">Number of the run.</param>
/// <param name="Attribute">What is rated.</param>
/// <param name="Score">What they gave.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record SeatRating(string Person, string Seat, int Run, string Attribute, Score Score, LineMark Mark);
