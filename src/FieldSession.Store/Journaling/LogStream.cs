namespace FieldSession.Store.Journaling;

/// <summary>
/// LiteDB's write-ahead log, with commits that can't tear. LiteDB takes a transaction for whole as soon as it meets its
/// last page, the one marked confirmed, even where an earlier page never reached the disk (litedb-org/LiteDB#2935). So the
/// block that carries the mark is written last, after everything before it is on the disk.
/// </summary>
internal sealed class LogStream(IDiskFile file, DiskFault fault) : DurableStream(file, fault)
{
    private const int PageSize = 8192;
    private const int BlockSize = 4096;

    // place of the mark in a page of LiteDB's file format 8
    private const int ConfirmedMark = 18;

    public override void SetLength(long value)
    {
        base.SetLength(value);
        Flush();
    }

    protected override void Put(ReadOnlyMemory<byte> bytes, long at)
    {
        if (bytes.Length != PageSize || bytes.Span[ConfirmedMark] == 0)
        {
            base.Put(bytes, at);
            return;
        }

        base.Put(bytes[BlockSize..], at + BlockSize);
        Flush();
        base.Put(bytes[..BlockSize], at);
    }
}
