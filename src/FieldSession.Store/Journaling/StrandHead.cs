namespace FieldSession.Store.Journaling;

/// <summary>The end of a strand's verified chain. Written down elsewhere, it shows later whether anything was changed.</summary>
/// <param name="Strand">The strand, 16 hex digits.</param>
/// <param name="Lines">How many of its lines hold.</param>
/// <param name="Hash">Hash of the last one, 64 hex digits.</param>
public sealed record StrandHead(string Strand, int Lines, string Hash);
