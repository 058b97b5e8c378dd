namespace FieldSession.State;

/// <summary>The gain of a chain at one time: level = 10 lg of the mean square + gain.</summary>
/// <param name="Chain">The chain.</param>
/// <param name="GainDb">The gain, dB.</param>
/// <param name="At">When the calibrator was heard.</param>
/// <param name="Sha256">SHA-256 of the file with the calibrator's tone; null: the gain was given.</param>
public sealed record ChainGain(string Chain, double GainDb, DateTimeOffset At, string? Sha256);

/// <summary>A chain: recorder, microphone, place, gain and file settings together.</summary>
/// <param name="Name">Its name, one word.</param>
/// <param name="Words">What it is made of.</param>
public sealed record NamedChain(string Name, string Words);
