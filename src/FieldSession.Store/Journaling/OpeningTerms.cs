namespace FieldSession.Store.Journaling;

/// <summary>How a study is opened.</summary>
/// <param name="TriesForLock">How often to try a study that another program holds, a tenth of a second apart.</param>
/// <param name="RecordFolder">The user's folder in which it is written down which lines were acknowledged; null: it is not.</param>
public sealed record OpeningTerms(int TriesForLock = 1, string? RecordFolder = null);
