namespace FieldSession.Comparing;

/// <summary>The level of exposure of one run over the compared segments.</summary>
/// <param name="Run">The run.</param>
/// <param name="Code">Its code.</param>
/// <param name="LevelDb">Energy mean of its fitted levels, dB.</param>
public sealed record RunLevel(int Run, string Code, double LevelDb);

/// <summary>
/// What a passenger is exposed to over the route: energy means of the fitted levels, run by run, and code minus reference of them. It is ruled by the
/// loudest segments and says nothing of its own about a code; steady segments only (docs/formulas.md, "Level of exposure").
/// </summary>
/// <param name="Runs">Runs of the code and the reference, in driven order.</param>
/// <param name="Overall">Code minus reference: the scatter of the run means as it came, no floor, no archive.</param>
/// <param name="ByTime">True: segments weigh by the seconds they last; false: those are not known, and each weighs the same.</param>
public sealed record RouteEnergy(IReadOnlyList<RunLevel> Runs, Estimate Overall, bool ByTime);
