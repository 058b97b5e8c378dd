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

/// <summary>A recording, read once from its beginning to its end.</summary>
public interface ISoundReader
{
    /// <summary>How the samples are written.</summary>
    SoundFormat Format { get; }

    /// <summary>The recorder's own time; null: the file tells none.</summary>
    SoundClock? Clock { get; }

    /// <summary>What is odd about the file although it can be read; complete once the end is reached.</summary>
    IReadOnlyList<string> Remarks { get; }

    /// <summary>Reads the next frames, as numbers of full scale, channels side by side.</summary>
    /// <param name="samples">Room for whole frames, one or more.</param>
    /// <returns>Frames read; 0 at the end.</returns>
    /// <exception cref="RecordingRefusedException">The file is damaged.</exception>
    /// <exception cref="IOException">The file can't be read.</exception>
    int Read(Span<double> samples);
}

/// <summary>What a recorder wrote into a file about its time; no other word of its description is read.</summary>
/// <param name="SamplesSinceMidnight">Time reference of the first sample, samples since midnight of the recorder's clock.</param>
/// <param name="BegunAt">Date and time of day at which the recording began, in the recorder's zone; null: not told, or not
/// readable.</param>
public sealed record SoundClock(long SamplesSinceMidnight, DateTime? BegunAt);

/// <summary>Which rates levels are taken from.</summary>
internal static class SoundRates
{
    private const int LowestHz = 8000;
    private const int HighestHz = 768_000;

    /// <summary>The same format where its rate is good.</summary>
    /// <exception cref="RecordingRefusedException">The rate is too low, or no rate.</exception>
    public static SoundFormat Accepted(SoundFormat format) =>
        format.RateHz switch
        {
            <= 0 or > HighestHz => throw new RecordingRefusedException(RecordingWords.RateUnlikely(format.RateHz)),
            < LowestHz => throw new RecordingRefusedException(RecordingWords.RateTooLow(format.RateHz)),
            _ => format,
        };
}
