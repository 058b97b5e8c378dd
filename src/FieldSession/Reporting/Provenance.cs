namespace FieldSession.Reporting;

/// <summary>What pins a report to its journal and its program.</summary>
/// <param name="LineCount">Lines of the journal.</param>
/// <param name="HeadHash">Hash of its last line.</param>
/// <param name="Version">Version of the program.</param>
public sealed record Provenance(int LineCount, string HeadHash, string Version);
