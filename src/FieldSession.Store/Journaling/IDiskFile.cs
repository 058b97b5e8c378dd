namespace FieldSession.Store.Journaling;

/// <summary>One file, held open for this process alone. Nothing is buffered; nothing is durable before <see cref="Sync"/>.</summary>
internal interface IDiskFile : IDisposable
{
    /// <summary>Length, bytes.</summary>
    long Length { get; set; }

    /// <summary>Reads at a place; fewer bytes than asked for mean the end of the file.</summary>
    int Read(Span<byte> bytes, long at);

    /// <summary>Writes all the bytes at a place.</summary>
    void Write(ReadOnlySpan<byte> bytes, long at);

    /// <summary>Returns when everything written is on the disk itself.</summary>
    /// <exception cref="IOException">The disk said no. What it holds of the bytes written since the last time is not known, and a later success says nothing about them.</exception>
    void Sync();
}
