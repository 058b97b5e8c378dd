using FieldSession.Journal;
using LiteDB;
using LiteDB.Engine;

namespace FieldSession.Store.Journaling;

/// <summary>
/// The study's LiteDB file, open for writing, as plain LiteDB would read it. Every insert is one automatic transaction:
/// LiteDB's explicit ones leave it half alive when the disk is full. After any exception this object is to be disposed and
/// opened again: LiteDB may have closed itself, and nothing written after a fault of the disk reached it.
/// </summary>
internal sealed class LiteStore : IDisposable
{
    private readonly DiskFault _fault;
    private readonly LogStream _log;
    private readonly PageStream _pages;
    private readonly LiteEngine _engine;
    private bool _isIndexed;

    private LiteStore(DiskFault fault, LogStream log, PageStream pages, LiteEngine engine)
    {
        _fault = fault;
        _log = log;
        _pages = pages;
        _engine = engine;
    }

    /// <summary>Opens the file, or makes an empty one.</summary>
    public static LiteStore Open(IDisk disk, StudyPaths paths)
    {
        DiskFault fault = new();
        LogStream log = new(disk.Open(paths.Log, FileMode.OpenOrCreate), fault);
        PageStream? pages = null;
        try
        {
            pages = new PageStream(disk.Open(paths.Study, FileMode.OpenOrCreate), fault, log);
            LiteEngine engine = EngineOver(pages, log);
            disk.SyncFolderOf(paths.Study);
            return new LiteStore(fault, log, pages, engine);
        }
        catch
        {
            pages?.Dispose();
            log.Dispose();
            throw;
        }
    }

    /// <summary>LiteDB over a data file and its log. The collation is always the binary one: LiteDB's default is the
    /// language of the computer, and a file made so does not open on the next one.</summary>
    public static LiteEngine EngineOver(Stream pages, Stream log) =>
        new(
            new EngineSettings
            {
                DataStream = pages,
                LogStream = log,
                Collation = Collation.Binary,
            }
        );

    /// <summary>How many lines the file holds, if it holds the first ones of these; null: it holds others.</summary>
    public int? CountOfLeading(IReadOnlyList<Line> lines)
    {
        using IBsonDataReader last = _engine.Query(StoredLine.Collection, LastFirst(1));
        if (!last.Read())
        {
            return 0;
        }

        BsonDocument document = last.Current.AsDocument;
        long place = StoredLine.PlaceIn(document);
        return place >= 1 && place <= lines.Count && StoredLine.Holds(document, lines[(int)place - 1]) ? (int)place : null;
    }

    /// <summary>Adds lines; they are on the disk when it returns.</summary>
    /// <param name="lines">The next lines.</param>
    /// <param name="facts">What each of them did.</param>
    /// <param name="stored">How many lines are stored already.</param>
    public void Insert(IReadOnlyList<Line> lines, IReadOnlyList<LineFact> facts, int stored)
    {
        Index();
        _engine.Insert(StoredLine.Collection, lines.Select((line, i) => StoredLine.Of(line, stored + i + 1, facts[i])), BsonAutoId.Int64);
        _log.Flush();
        _fault.ThrowIfHappened();
    }

    private void Index()
    {
        foreach (string field in _isIndexed ? [] : StoredLine.Indexed)
        {
            _engine.EnsureIndex(StoredLine.Collection, field, BsonExpression.Create($"$.{field}"), unique: false);
        }

        _isIndexed = true;
    }

    /// <summary>Moves everything from the log into the data file, which then is whole without it.</summary>
    public void Checkpoint()
    {
        _engine.Checkpoint();
        _fault.ThrowIfHappened();
    }

    /// <summary>The bytes of the data file, for a copy made right after a checkpoint.</summary>
    public byte[] DataFile()
    {
        byte[] bytes = new byte[_pages.Length];
        _pages.Position = 0;
        _pages.ReadExactly(bytes);
        return bytes;
    }

    /// <summary>The query that meets the last places first.</summary>
    public static Query LastFirst(int limit) =>
        new()
        {
            OrderBy = BsonExpression.Create("_id"),
            Order = Query.Descending,
            Limit = limit,
        };

    /// <summary>Closes LiteDB, which makes a checkpoint, then the files it was given: it does not close those itself.</summary>
    public void Dispose()
    {
        try
        {
            _engine.Dispose();
        }
        finally
        {
            _pages.Dispose();
            _log.Dispose();
        }
    }
}

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
