namespace FieldSession.State;

/// <summary>
/// How a chain is calibrated: by the gain that was given or the first tone that was heard, and how far it drifted until the last tone.
/// </summary>
/// <param name="Chain">The chain.</param>
/// <param name="GainDb">The gain that holds, dB; null: not calibrated.</param>
/// <param name="DriftDb">By how much the tone's level changed from the first time to the last, dB; null: heard once at most.</param>
public sealed record ChainCalibration(string Chain, double? GainDb, double? DriftDb)
{
    /// <summary>The calibration of a chain.</summary>
    public static ChainCalibration Of(Study study, string chain)
    {
        ArgumentNullException.ThrowIfNull(study);
        ChainGain? given = study.ChainGains.FindLast(gain => gain.Chain == chain && gain.Sha256 is null);
        ChainGain[] heard = [.. study.ChainGains.Where(gain => gain.Chain == chain && gain.Sha256 is not null).OrderBy(gain => gain.At)];
        return new(chain, (given ?? heard.FirstOrDefault())?.GainDb, heard.Length > 1 ? heard[0].GainDb - heard[^1].GainDb : null);
    }
}
