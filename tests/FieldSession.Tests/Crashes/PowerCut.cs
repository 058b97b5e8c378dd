namespace FieldSession.Tests.Crashes;

/// <summary>
/// A state in which a power cut may leave a disk: of what was not synchronised, each block of 4 KiB of each file is
/// in any of the versions it went through since, and beyond the old end it may be zeros. Cutting a file is one step: it
/// happened or not (ext4, APFS and NTFS keep a journal of lengths; from memory).
/// </summary>
internal sealed class PowerCut(Random chance)
{
    private const int Block = 4096;
    private readonly Dictionary<string, MemoryFile> _safe = [];
    private readonly Dictionary<string, List<DiskEvent>> _open = [];

    /// <summary>How many lines had been acknowledged by then.</summary>
    public int Acknowledged { get; private set; }

    /// <summary>The disk as found after the power came back.</summary>
    public MemoryDisk After(IEnumerable<DiskEvent> events)
    {
        foreach (DiskEvent happened in events)
        {
            Replay(happened);
        }

        MemoryDisk disk = new();
        foreach ((string path, MemoryFile safe) in _safe)
        {
            disk[path] = Survives(safe, _open[path]);
        }

        return disk;
    }

    private void Replay(DiskEvent happened)
    {
        switch (happened.Act)
        {
            case DiskAct.Acknowledge:
                Acknowledged = (int)happened.At;
                break;
            case DiskAct.Name:
                _ = _safe.TryAdd(happened.Path, new MemoryFile());
                _ = _open.TryAdd(happened.Path, []);
                break;
            case DiskAct.Sync:
                _open[happened.Path].ForEach(change => Apply(_safe[happened.Path], change));
                _open[happened.Path].Clear();
                break;
            case DiskAct.Move:
                _safe[happened.To] = _safe[happened.Path];
                _open[happened.To] = _open[happened.Path];
                goto case DiskAct.Delete;
            case DiskAct.Delete:
                _ = _safe.Remove(happened.Path);
                _ = _open.Remove(happened.Path);
                break;
            default:
                _open[happened.Path].Add(happened);
                break;
        }
    }

    private byte[] Survives(MemoryFile safe, List<DiskEvent> open)
    {
        List<byte[]> versions =
        [
            [.. safe.Bytes],
        ];
        MemoryFile file = new() { Bytes = [.. safe.Bytes] };
        foreach (DiskEvent change in open)
        {
            Apply(file, change);
            versions.Add([.. file.Bytes]);
        }

        int last = chance.Next(versions.Count);
        byte[] found = new byte[versions[last].Length];
        for (int at = 0; at < found.Length; at += Block)
        {
            byte[] version = chance.GetItems(versions.Where((v, i) => v.Length > at || i <= last).ToArray(), 1)[0];
            int length = Math.Min(Block, Math.Min(found.Length, version.Length) - at);
            if (length > 0)
            {
                version.AsSpan(at, length).CopyTo(found.AsSpan(at));
            }
        }

        return found;
    }

    private static void Apply(MemoryFile file, DiskEvent change)
    {
        if (change.Act == DiskAct.Cut)
        {
            file.Cut(change.At);
        }
        else
        {
            file.Write(change.Bytes, change.At);
        }
    }
}
