using FieldSession.Store.Recordings.Flac;

namespace FieldSession.Store.Recordings;

/// <summary>A recording that is read from disk; the file is never written to, and others may go on using it.</summary>
public sealed class SoundFile : IDisposable
{
    private readonly FileStream _file;
    private readonly long? _length;

    private SoundFile(FileStream file)
    {
        _file = file;
        // a pipe under a name has no length
        _length = file.CanSeek ? file.Length : null;
        Reader = ReaderOf(new(file, _length));
    }

    /// <summary>Its samples.</summary>
    public ISoundReader Reader { get; }

    /// <summary>When the file was last written to, UTC; once copied, when it was copied.</summary>
    public DateTime WrittenUtc => File.GetLastWriteTimeUtc(_file.SafeFileHandle);

    /// <summary>Whether the file has grown since it was opened.</summary>
    public bool HasGrown => _length is { } length && _file.Length > length;

    /// <summary>What is odd about the file; complete once the end is reached.</summary>
    public IReadOnlyList<string> Remarks => HasGrown ? [.. Reader.Remarks, RecordingWords.Grew] : Reader.Remarks;

    /// <summary>Opens a file.</summary>
    /// <exception cref="RecordingRefusedException">No level can be taken from it.</exception>
    /// <exception cref="IOException">There is no such file, or it can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read, or it is a folder.</exception>
    public static SoundFile Open(string path)
    {
        FileStream file = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        try
        {
            return new(file);
        }
        catch
        {
            file.Dispose();
            throw;
        }
    }

    /// <summary>A reader for the bytes of a recording, by what is at their beginning.</summary>
    /// <param name="bytes">The recording from its first byte.</param>
    /// <exception cref="RecordingRefusedException">No level can be taken from it.</exception>
    public static ISoundReader ReaderOf(ByteSource bytes)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        ReadOnlySpan<byte> first = bytes.Peek(12);
        if (first.IsEmpty)
        {
            throw new RecordingRefusedException(RecordingWords.Empty);
        }

        if (first.StartsWith("RIFF"u8) || first.StartsWith("RF64"u8) || first.StartsWith("BW64"u8))
        {
            return new WavReader(bytes);
        }

        return first.StartsWith("fLaC"u8) ? new FlacReader(bytes) : throw new RecordingRefusedException(WhyNot(first));
    }

    /// <inheritdoc/>
    public void Dispose() => _file.Dispose();

    private static string WhyNot(ReadOnlySpan<byte> first)
    {
        if (IsMpeg(first) || first[Math.Min(4, first.Length)..].StartsWith("ftyp"u8))
        {
            return RecordingWords.Lossy(IsMpeg(first) ? "MPEG" : "MP4");
        }

        if (first.StartsWith("OggS"u8))
        {
            return RecordingWords.NotRead("Ogg");
        }

        return first.StartsWith("FORM"u8) ? RecordingWords.NotRead("AIFF") : RecordingWords.UnknownFormat;
    }

    // a tag before the sound, or the eleven ones that a frame begins with
    private static bool IsMpeg(ReadOnlySpan<byte> first) =>
        first.StartsWith("ID3"u8) || (first.Length > 1 && first[0] == 0xFF && (first[1] & 0xE0) == 0xE0);
}
