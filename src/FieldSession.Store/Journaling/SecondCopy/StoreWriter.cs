using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>
/// Carries the lines into the LiteDB file, behind the back of whoever types. A fault there costs nothing but time:
/// LiteDB is closed, and the next line, or the next opening, tries again from where it really is. A file that reads well
/// and yet takes no further line is put aside, once, and made again.
/// </summary>
/// <param name="disk">Where the file is.</param>
/// <param name="paths">Its names.</param>
/// <param name="setAside">Puts a file that is of no use aside; told why.</param>
internal sealed class StoreWriter(IDisk disk, StudyPaths paths, Action<string> setAside) : IDisposable
{
    private const int LinesPerCheckpoint = 200;
    private const int MostLinesTold = 2_000;

    // lines that follow each other fast go over together: two threads that flush in turn make each other wait
    private static readonly TimeSpan Gathering = TimeSpan.FromMilliseconds(20);

    private readonly List<Line> _lines = [];
    private readonly Lock _queue = new();
    private readonly Lock _engine = new();
    private readonly AutoResetEvent _wake = new(initialState: false);
    private readonly ManualResetEventSlim _closing = new();
    private Thread? _thread;
    private LiteStore? _store;
    private int _stored;
    private int _sinceCheckpoint;
    private bool _wasSetAside;
    private bool _isAfterACrash;
    private volatile Exception? _fault;

    /// <summary>Why the file is behind; null: it is not.</summary>
    public Exception? Fault => _fault;

    /// <summary>Adds lines that are to be carried over.</summary>
    public void Enqueue(params IEnumerable<Line> lines)
    {
        lock (_queue)
        {
            _lines.AddRange(lines);
        }

        _wake.Set();
    }

    /// <summary>Begins to carry lines over on a thread of its own.</summary>
    public void Start()
    {
        _thread = new Thread(Work) { IsBackground = true, Name = "store" };
        _thread.Start();
    }

    /// <summary>Carries over all lines there are, and says in <see cref="Fault"/> if it could not.</summary>
    public void CatchUp()
    {
        lock (_engine)
        {
            _fault = TryToCarryOver();
            if (!_wasSetAside && _fault is { } broken and not IOException and not UnauthorizedAccessException)
            {
                _wasSetAside = true;
                _fault = Attempt.Of(() => setAside(broken.Message)) ?? TryToCarryOver();
            }
        }
    }

    /// <summary>The data file's bytes, with everything in them; null: it is behind.</summary>
    public byte[]? WholeDataFile()
    {
        lock (_engine)
        {
            CatchUp();
            byte[]? bytes = null;
            _fault ??= Attempt.Of(() =>
            {
                _store?.Checkpoint();
                bytes = _store?.DataFile();
            });
            return bytes;
        }
    }

    /// <summary>
    /// Carries over what is left, merges LiteDB's log, closes the file and reads it once more: LiteDB has no checksums, and a
    /// damage that can't be seen when a file is opened may swallow what is added to it. Such a file is made again.
    /// </summary>
    public void Dispose()
    {
        _closing.Set();
        _wake.Set();
        _thread?.Join();
        CatchUp();
        lock (_engine)
        {
            CloseStore();
            if (_fault is null && IsToBeProved && StoreCopy.FaultInMerged(disk, paths, _lines) is { } swallowed)
            {
                _fault = Attempt.Of(() => setAside(swallowed)) ?? TryToCarryOver();
                CloseStore();
            }
        }

        _wake.Dispose();
        _closing.Dispose();
    }

    private bool IsToBeProved => _isAfterACrash || _lines.Count <= StoreGlance.LinesComparedInFull;

    private void Work()
    {
        while (!_closing.IsSet)
        {
            _wake.WaitOne();
            _closing.Wait(Gathering);
            CatchUp();
        }
    }

    private Exception? TryToCarryOver()
    {
        Exception? fault = Attempt.Of(CarryOver);
        if (fault is not null)
        {
            CloseStore();
        }

        return fault;
    }

    private void CarryOver()
    {
        if (_store is null)
        {
            _isAfterACrash |= disk.Exists(paths.Log);
            _store = disk.Exists(paths.Journal)
                ? LiteStore.Open(disk, paths)
                : throw new FileNotFoundException(FileOnDiskWords.DriveIsGone); // a new file would lie in the place where it was
            _stored = Locked(() => _store.CountOfLeading(_lines)) ?? throw new InvalidDataException(SecondCopyWords.StoreHoldsOtherLines);
        }

        IReadOnlyList<LineFact> facts = [];
        while (Locked(() => Math.Min(_lines.Count, _stored + LinesPerCheckpoint)) is int upTo && upTo > _stored)
        {
            List<Line> batch = Locked(() => _lines.GetRange(_stored, upTo - _stored));
            facts = facts.Count >= upTo ? facts : FactsNow();
            _store.Insert(batch, [.. facts.Skip(_stored).Take(batch.Count)], _stored);
            _sinceCheckpoint += batch.Count;
            _stored = upTo;
            if (_sinceCheckpoint >= LinesPerCheckpoint)
            {
                _store.Checkpoint();
                _sinceCheckpoint = 0;
            }
        }
    }

    // telling the lines again takes longer with every line: beyond so many the file has the lines alone
    private IReadOnlyList<LineFact> FactsNow() =>
        Locked<Line[]>(() => [.. _lines]) is { Length: <= MostLinesTold } lines
            ? LineFact.Of(lines)
            : [.. Enumerable.Repeat(LineFact.None, Locked(() => _lines.Count))];

    private T Locked<T>(Func<T> read)
    {
        lock (_queue)
        {
            return read();
        }
    }

    private void CloseStore()
    {
        _ = Attempt.Of(() => _store?.Dispose());
        _store = null;
        _ = Attempt.Of(DeleteEmptyLog);
    }

    private void DeleteEmptyLog()
    {
        if (disk.Exists(paths.Log) && disk.ReadAll(paths.Log).Length == 0)
        {
            disk.Delete(paths.Log);
        }
    }
}
