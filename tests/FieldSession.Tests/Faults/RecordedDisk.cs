namespace FieldSession.Tests.Faults;

/// <summary>
/// What the real program did to the disk, and the states in which a power cut may leave it. A change of a file that no flush has
/// reached is there, is not, or is there in some of its sectors of 512 bytes, each change for itself. The names of a folder are as they
/// were after some number of its changes, at least those before its last flush: a flush of a file makes none of its names safe
/// (POSIX; Linux man page fsync(2)).
/// </summary>
internal sealed class RecordedDisk
{
    private readonly Dictionary<string, RecordedFile> _now = [];
    private readonly Dictionary<string, List<(CallMade Call, RecordedFile? File)>> _names = [];
    private readonly Dictionary<string, int> _namesSafe = [];
    private readonly Dictionary<string, RecordedFile> _first;
    private int _place;

    /// <param name="files">The files at the beginning: path and bytes.</param>
    public RecordedDisk(IEnumerable<(string Path, byte[] Bytes)> files)
    {
        _first = files.ToDictionary(file => file.Path, file => new RecordedFile(file.Bytes));
        foreach ((string path, RecordedFile file) in _first)
        {
            _now[path] = file;
        }
    }

    /// <summary>How many changes of files and names are not safe now.</summary>
    public int Unsure => _now.Values.Sum(file => file.Unsure) + _names.Sum(folder => folder.Value.Count - _namesSafe.GetValueOrDefault(folder.Key));

    /// <summary>Takes the next call.</summary>
    public void Take(CallMade call)
    {
        _place++;
        switch (call.Name)
        {
            case "create" or "trunc" when call.Result >= 0:
                Open(call);
                break;
            case "write" or "ftruncate" when call.Result >= 0 && _now.TryGetValue(call.Path, out RecordedFile? file):
                file.Change(call, _place);
                break;
            case "fsync":
                Flush(call);
                break;
            case "rename" or "link" or "unlink" or "mkdir" when call.Result >= 0:
                Rename(call);
                break;
            default:
                break;
        }
    }

    /// <summary>The files that a power cut leaves now, drawn by lot.</summary>
    public Dictionary<string, byte[]> After(Random chance)
    {
        int kind = chance.Next(4);
        int upTo = chance.Next(_place + 1);
        int seed = chance.Next();
        Dictionary<string, RecordedFile> left = new(_first);
        foreach ((string folder, List<(CallMade, RecordedFile?)> changes) in _names)
        {
            int safe = _namesSafe.GetValueOrDefault(folder);
            int stand = kind switch { 0 => safe, 1 => changes.Count, _ => chance.Next(safe, changes.Count + 1) };
            changes.Take(stand).ToList().ForEach(change => Name(left, change.Item1, change.Item2));
        }

        return left.ToDictionary(file => file.Key, file => file.Value.After(place => Fate(kind, upTo, place, seed)));
    }

    /// <summary>The files with every change.</summary>
    public Dictionary<string, byte[]> Whole() => _now.ToDictionary(file => file.Key, file => file.Value.After(_ => 1));

    // nothing, all, a beginning of which the last change is torn, or each change for itself
    private static int Fate(int kind, int upTo, int place, int seed) => kind switch
    {
        0 => 0,
        1 => 1,
        2 => place < upTo ? 1 : place == upTo ? 2 + seed % 1000 : 0,
        _ => new Random(seed ^ place).Next(4) is var fate && fate < 2 ? fate : 2 + (seed ^ place) % 1000 & int.MaxValue,
    };

    private void Open(CallMade call)
    {
        if (_now.TryGetValue(call.Path, out RecordedFile? file))
        {
            if (call.Name == "trunc")
            {
                file.Change(call, _place);
            }
        }
        else
        {
            Note(call, _now[call.Path] = new RecordedFile([]));
        }
    }

    private void Flush(CallMade call)
    {
        if (_now.TryGetValue(call.Path, out RecordedFile? file))
        {
            file.Flush(call.Result >= 0);
        }
        else if (call.Result >= 0)
        {
            _namesSafe[call.Path] = _names.GetValueOrDefault(call.Path)?.Count ?? 0;
        }
    }

    private void Rename(CallMade call)
    {
        RecordedFile? file = _now.GetValueOrDefault(call.Path);
        Note(call, file);
        Name(_now, call, file);
    }

    private void Note(CallMade call, RecordedFile? file)
    {
        string folder = Path.GetDirectoryName(call.To.Length > 0 ? call.To : call.Path)!;
        if (!_names.TryGetValue(folder, out List<(CallMade, RecordedFile?)>? changes))
        {
            _names[folder] = changes = [];
        }

        changes.Add((call, file));
    }

    private static void Name(Dictionary<string, RecordedFile> names, CallMade call, RecordedFile? file)
    {
        if (call.Name is "unlink" or "rename")
        {
            _ = names.Remove(call.Path);
        }

        if (call.Name is not ("unlink" or "mkdir") && file is not null)
        {
            names[call.To.Length > 0 ? call.To : call.Path] = file;
        }
    }
}
