using FieldSession.Store.Journaling;

namespace FieldSession.Tests.Crashes;

/// <summary>
/// A disk in memory that writes down every write, cut and sync, so that the power can be cut at any of them, and that can
/// be full. Names (new files, renames, deletions) are taken for durable at once.
/// </summary>
internal sealed class MemoryDisk : IDisk
{
    private const int WouldBlock = 11;
    private readonly Lock _gate = new();
    private readonly Dictionary<string, MemoryFile> _files = [];
    private readonly List<DiskEvent> _events = [];

    /// <summary>How many bytes all files together may have.</summary>
    public long Room { get; set; } = long.MaxValue;

    /// <summary>How many bytes all files have together.</summary>
    public long Used => Locked(() => _files.Values.Sum(file => (long)file.Bytes.Count));

    /// <summary>Whether it is plugged in.</summary>
    public bool IsThere { get; private set; } = true;

    /// <summary>How often it was pulled out.</summary>
    public int Pulled { get; private set; }

    /// <summary>
    /// What every step is answered with, as a share does while it is away: what was open works again afterwards; null: nothing.
    /// </summary>
    public Func<IOException>? IsAway { get; set; }

    /// <summary>What is refused, with what; null: nothing.</summary>
    public Func<string, Exception?> Refuses { get; set; } = _ => null;

    /// <summary>Why a file can't be removed; null: it can.</summary>
    public Func<string, Exception?> RefusesToDelete { get; set; } = _ => null;

    /// <summary>
    /// Whether the next flush of a file fails. A failed one drops what was written since the last: the system's memory still shows it, the
    /// disk has it not, and a later flush that succeeds does not bring it (Linux since 4.13; "fsync() on PostgreSQL", LWN 752063, from
    /// memory). Null: none fails.
    /// </summary>
    public Func<string, bool>? FailsToFlush { get; init; }

    /// <summary>Whether a flush of a file says yes and drops what was written; null: none does.</summary>
    public Func<string, bool>? LiesAtFlush { get; init; }

    /// <summary>Whether what the disk holds is kept apart from what the system remembers.</summary>
    public bool HasMemoryAndDisk => FailsToFlush is not null || LiesAtFlush is not null;

    /// <summary>Everything that happened, in order.</summary>
    public IReadOnlyList<DiskEvent> Events => Locked(() => _events.ToList());

    public IEnumerable<string> Names =>
        Locked(() => _files.Keys.Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal).ToList());

    public byte[] this[string path]
    {
        get => Locked(() => _files[path].Bytes.ToArray());
        set => Locked(() => _files[path] = new MemoryFile { Bytes = [.. value] });
    }

    public MemoryDisk Copy()
    {
        MemoryDisk copy = new();
        foreach ((string path, MemoryFile file) in _files)
        {
            copy[path] = [.. file.Bytes];
        }

        return copy;
    }

    public void Note(int acknowledged) => Record(new DiskEvent("", DiskAct.Acknowledge, acknowledged, []));

    public bool Exists(string path) => Locked(() => IsThere && _files.ContainsKey(path));

    /// <summary>Pulls the disk out: nothing that was open works any more, not even when it is back.</summary>
    public void PullOut() =>
        Locked(() =>
        {
            Pulled++;
            return IsThere = false;
        });

    /// <summary>Plugs it in again.</summary>
    public void PlugIn() =>
        Locked(() =>
        {
            _files.Values.ToList().ForEach(file => file.IsOpen = false);
            return IsThere = true;
        });

    public byte[] ReadAll(string path) => Exists(path) ? this[path] : throw new FileNotFoundException("no such file", path);

    public IDiskFile Look(string path) =>
        Locked(() =>
            _files.TryGetValue(path, out MemoryFile? file) && IsThere
                ? new MemoryHandle(this, path, file, isOnlyRead: true)
                : throw new FileNotFoundException("no such file", path)
        );

    public IDiskFile? LookPastMemory(string path) =>
        !HasMemoryAndDisk
            ? Look(path)
            : Locked(() =>
                _files.TryGetValue(path, out MemoryFile? file)
                    ? new MemoryHandle(this, path, new MemoryFile { Bytes = file.OnDisk }, isOnlyRead: true)
                    : throw new FileNotFoundException("no such file", path)
            );

    /// <summary>The disk loses a file's end, and the system remembers none of it, as after a mount again.</summary>
    public void Lose(string path, long from) =>
        Locked(() =>
        {
            _files[path].OnDisk.RemoveRange((int)from, _files[path].OnDisk.Count - (int)from);
            return true;
        });

    /// <summary>The disk as it is found when the power was cut.</summary>
    public MemoryDisk AfterPowerCut()
    {
        MemoryDisk left = new();
        foreach ((string path, MemoryFile file) in _files)
        {
            left[path] = [.. file.OnDisk];
        }

        return left;
    }

    public IDiskFile Open(string path, FileMode mode) =>
        Locked(() =>
        {
            if (!IsThere)
            {
                throw new DirectoryNotFoundException($"Could not find a part of the path '{path}'.");
            }

            ThrowWhileAway();
            if (Refuses(path) is { } refusal)
            {
                throw refusal;
            }

            if (mode == FileMode.Open && !_files.ContainsKey(path))
            {
                throw new FileNotFoundException("no such file", path);
            }

            MemoryFile file =
                mode != FileMode.Create && _files.TryGetValue(path, out MemoryFile? old) ? old : _files[path] = new MemoryFile();
            if (file.IsOpen)
            {
                throw new IOException("in use", WouldBlock);
            }

            file.IsOpen = true;
            _events.Add(new DiskEvent(path, DiskAct.Name, 0, []));
            return new MemoryHandle(this, path, file);
        });

    public void Move(string from, string to) =>
        Locked(() =>
        {
            _files[to] = _files[from];
            _events.Add(new DiskEvent(from, DiskAct.Move, 0, []) { To = to });
            return _files.Remove(from);
        });

    public void Delete(string path) =>
        Locked(() =>
        {
            if (RefusesToDelete(path) is { } refusal)
            {
                throw refusal;
            }

            _events.Add(new DiskEvent(path, DiskAct.Delete, 0, []));
            return _files.Remove(path);
        });

    public void SyncFolderOf(string path) { }

    /// <summary>Whether so many more bytes find room; throws as a full disk does where they do not.</summary>
    public void Take(long bytes)
    {
        if (bytes > 0 && Used + bytes > Room)
        {
            throw new IOException("No space left on device", 0x1C);
        }
    }

    /// <summary>Throws what a share answers while it is away.</summary>
    public void ThrowWhileAway()
    {
        if (IsAway?.Invoke() is { } fault)
        {
            throw fault;
        }
    }

    public void Record(DiskEvent happened) =>
        Locked(() =>
        {
            _events.Add(happened);
            return true;
        });

    public T Locked<T>(Func<T> act)
    {
        lock (_gate)
        {
            return act();
        }
    }
}
