namespace FieldSession.Store.Journaling;

/// <summary>LiteDB's data file. The log reaches the disk before any page it would have to restore is overwritten.</summary>
internal sealed class PageStream(IDiskFile file, DiskFault fault, LogStream log) : DurableStream(file, fault)
{
    public override void SetLength(long value)
    {
        log.Flush();
        base.SetLength(value);
    }

    protected override void Put(ReadOnlyMemory<byte> bytes, long at)
    {
        log.Flush();
        base.Put(bytes, at);
    }
}
