using System.Collections.Immutable;

namespace FieldSession.Tests.House;

/// <summary>
/// Files that need each other, directly or by way of others (R. E. Tarjan, "Depth-first search and linear graph algorithms", 1972).
/// </summary>
internal sealed class Circles
{
    private readonly IReadOnlyDictionary<string, ImmutableHashSet<string>> _used;
    private readonly Dictionary<string, int> _place = [];
    private readonly Dictionary<string, int> _lowest = [];
    private readonly Stack<string> _open = new();
    private readonly List<ImmutableArray<string>> _found = [];

    private Circles(IReadOnlyDictionary<string, ImmutableHashSet<string>> used) => _used = used;

    /// <summary>Every circle of two files and more.</summary>
    /// <param name="used">For each file those that it uses.</param>
    public static IReadOnlyList<ImmutableArray<string>> In(IReadOnlyDictionary<string, ImmutableHashSet<string>> used)
    {
        Circles circles = new(used);
        foreach (string file in used.Keys.Where(file => !circles._place.ContainsKey(file)))
        {
            circles.Visit(file);
        }

        return circles._found;
    }

    private void Visit(string file)
    {
        _place[file] = _lowest[file] = _place.Count;
        _open.Push(file);
        foreach (string next in _used.GetValueOrDefault(file, []))
        {
            if (!_place.TryGetValue(next, out int place))
            {
                Visit(next);
                _lowest[file] = Math.Min(_lowest[file], _lowest[next]);
            }
            else if (_open.Contains(next))
            {
                _lowest[file] = Math.Min(_lowest[file], place);
            }
        }

        if (_lowest[file] == _place[file])
        {
            Close(file);
        }
    }

    private void Close(string first)
    {
        List<string> circle = [];
        do
        {
            circle.Add(_open.Pop());
        } while (circle[^1] != first);
        if (circle.Count > 1)
        {
            _found.Add([.. circle]);
        }
    }
}
