namespace FieldSession.Comparing;

/// <summary>One score as the comparison sees it: who gave it from where, in which run, on which code.</summary>
/// <param name="Person">Who rates.</param>
/// <param name="Seat">Where they sat.</param>
/// <param name="Day">The day; differences are taken within a day.</param>
/// <param name="Run">Number of the run.</param>
/// <param name="Code">The code of the run.</param>
/// <param name="Attribute">What is rated.</param>
/// <param name="Points">The score, points.</param>
public sealed record RatedScore(string Person, string Seat, string Day, int Run, string Code, string Attribute, double Points);
