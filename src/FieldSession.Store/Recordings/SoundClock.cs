namespace FieldSession.Store.Recordings;

/// <summary>What a recorder wrote into a file about its time; no other word of its description is read.</summary>
/// <param name="SamplesSinceMidnight">Time reference of the first sample, samples since midnight of the recorder's clock.</param>
/// <param name="BegunAt">Date and time of day at which the recording began, in the recorder's zone; null: not told, or not readable.</param>
public sealed record SoundClock(long SamplesSinceMidnight, DateTime? BegunAt);
