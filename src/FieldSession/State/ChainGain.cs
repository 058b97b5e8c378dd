namespace FieldSession.State;

/// <summary>The gain of a chain at one time: level = 10 lg of the mean square + gain.</summary>
/// <param name="Chain">The chain.</param>
/// <param name="GainDb">The gain, dB.</param>
/// <param name="At">When the calibrator was heard.</param>
/// <param name="Sha256">SHA-256 of the file with the calibrator's tone; null: the gain was given.</param>
public sealed record ChainGain(string Chain, double GainDb, DateTimeOffset At, string? Sha256);

/// <summary>How a chain is calibrated: by the first of its gains, and how far it drifted until the last.</summary>
/// <param name="Chain">The chain.</param>
/// <param name="GainDb">The gain that holds, dB; null: not calibrated.</param>
/// <param name="DriftDb">By how much the tone's level changed from the first time to the last, dB; null: heard once at most.</param>
public sealed record ChainCalibration(string Chain, double? GainDb, double? DriftDb)
{
    /// <summary>The calibration of a chain.</summary>
    public static ChainCalibration Of(Study study, string chain)
    {
        ArgumentNullException.ThrowIfNull(study);
        ChainGain[] gains = [.. study.ChainGains.Where(gain => gain.Chain == chain).OrderBy(gain => gain.At)];
        return gains.Length == 0
            ? new(chain, null, null)
            : new(chain, gains[0].GainDb, gains.Length > 1 ? gains[0].GainDb - gains[^1].GainDb : null);
    }
}

/// <summary>A chain: recorder, microphone, place, gain and file settings together.</summary>
/// <param name="Name">Its name, one word.</param>
/// <param name="Words">What it is made of.</param>
public sealed record NamedChain(string Name, string Words);
