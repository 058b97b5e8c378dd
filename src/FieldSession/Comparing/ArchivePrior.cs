namespace FieldSession.Comparing;

/// <summary>What the archive lends: a variance of run means and how much it weighs.</summary>
/// <param name="S0SquaredDb2">Variance of a run mean expected from earlier days, dB squared.</param>
/// <param name="NuArchive">Degrees of freedom behind it.</param>
/// <param name="Nu0">Degrees of freedom it is allowed to weigh, at most 6.</param>
/// <param name="Days">How many earlier days are behind it.</param>
public sealed record ArchivePrior(double S0SquaredDb2, double NuArchive, double Nu0, int Days);
