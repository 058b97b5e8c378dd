namespace FieldSession.Tests.Faults;

/// <summary>
/// A folder as the record tells it: its names at the beginning, and every change of them since. A change of two names, as a rename makes
/// it, is one.
/// </summary>
/// <param name="first">Its names at the beginning, and what they named: a <see cref="RecordedFile"/> or a folder.</param>
internal sealed class RecordedFolder(IReadOnlyDictionary<string, object> first)
{
    private readonly List<(string Name, object? Node)[]> _changes = [];

    /// <summary>A folder that was just made.</summary>
    public RecordedFolder()
        : this(new Dictionary<string, object>()) { }

    /// <summary>Its names now.</summary>
    public Dictionary<string, object> Now { get; } = new(first);

    /// <summary>How many changes a flush has made safe: the first so many.</summary>
    public int Safe { get; private set; }

    /// <summary>How many changes there were.</summary>
    public int Changes => _changes.Count;

    /// <summary>Changes names in one step; null: the name is gone.</summary>
    public void Change(params (string Name, object? Node)[] names)
    {
        _changes.Add(names);
        Apply(Now, names);
    }

    /// <summary>Its flush was answered well.</summary>
    public void Flush() => Safe = _changes.Count;

    /// <summary>Its names after the first changes.</summary>
    public Dictionary<string, object> After(int changes)
    {
        Dictionary<string, object> names = new(first);
        _changes.Take(changes).ToList().ForEach(change => Apply(names, change));
        return names;
    }

    private static void Apply(Dictionary<string, object> names, (string Name, object? Node)[] change)
    {
        foreach ((string name, object? node) in change)
        {
            if (node is null)
            {
                _ = names.Remove(name);
            }
            else
            {
                names[name] = node;
            }
        }
    }
}
