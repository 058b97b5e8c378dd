namespace FieldSession.Store.Recordings;

/// <summary>What is said about a list of impacts.</summary>
internal static class ImpactsWords
{
    public const string None = "no impact";
    public const string TooMany = "more than 1000 impacts";
    public const string NoSegment = "not the name of a segment";
    public const string NoTime = "no time";
    public const string NoWindow = "does not end after its start, within 60 s";
    public const string Form = "a line holds segment, window_start_s and window_end_s, in seconds of the recording";
}
