namespace FieldSession.Store.Recordings;

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
