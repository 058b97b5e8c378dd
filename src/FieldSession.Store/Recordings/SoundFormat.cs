namespace FieldSession.Store.Recordings;

/// <summary>How the samples of a recording are written.</summary>
/// <param name="RateHz">Frames a second; a frame is one sample of every channel.</param>
/// <param name="Bits">Bits of a sample as the file says.</param>
/// <param name="Channels">Channels, 1 or more.</param>
/// <param name="IsFloat">Whether samples are floating point.</param>
public sealed record SoundFormat(int RateHz, int Bits, int Channels, bool IsFloat)
{
    /// <summary>The largest positive sample, as a number of full scale: where a recorder clips.</summary>
    public double LargestSample => IsFloat ? 1 : 1 - Math.ScaleB(1, 1 - Bits);
}
