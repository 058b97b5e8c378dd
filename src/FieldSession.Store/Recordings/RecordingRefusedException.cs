namespace FieldSession.Store.Recordings;

/// <summary>A recording that no level is taken from, and why.</summary>
/// <param name="why">What is wrong and what to do; without the file's name.</param>
public sealed class RecordingRefusedException(string why) : Exception(why);
