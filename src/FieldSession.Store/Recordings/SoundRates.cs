namespace FieldSession.Store.Recordings;

/// <summary>Which rates levels are taken from.</summary>
internal static class SoundRates
{
    private const int LowestHz = 8000;
    private const int HighestHz = 768_000;

    /// <summary>The same format where its rate is good.</summary>
    /// <exception cref="RecordingRefusedException">The rate is too low, or no rate.</exception>
    public static SoundFormat Accepted(SoundFormat format) => format.RateHz switch
    {
        <= 0 or > HighestHz => throw new RecordingRefusedException(RecordingWords.RateUnlikely(format.RateHz)),
        < LowestHz => throw new RecordingRefusedException(RecordingWords.RateTooLow(format.RateHz)),
        _ => format,
    };
}
