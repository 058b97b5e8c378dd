using System.Globalization;

namespace FieldSession.Tests.References;

/// <summary>
/// One folder of reference recordings. A tolerance is absolute here, always, in the quantity's unit (README.md beside the cases).
/// </summary>
internal sealed class RecordingCase
{
    private readonly string _folder;
    private readonly Dictionary<string, (string Value, double Tolerance)> _expected;

    private RecordingCase(string folder)
    {
        _folder = folder;
        _expected = File.ReadLines(PathOf("expected.csv"))
            .Skip(1)
            .Where(line => line != "")
            .Select(line => line.Split(',', 4))
            .ToDictionary(cells => cells[0], cells => (cells[1], double.Parse(cells[2], CultureInfo.InvariantCulture)));
    }

    public static RecordingCase Open(string name) => new(Path.Combine(AppContext.BaseDirectory, "References", "recordings", name));

    /// <summary>All quantities that begin with these words.</summary>
    public IEnumerable<string> Quantities(string begin = "") =>
        _expected.Keys.Where(name => name.StartsWith(begin, StringComparison.Ordinal));

    public string PathOf(string file) => Path.Combine(_folder, file);

    public string[][] Table(string file) =>
        [.. File.ReadLines(PathOf(file)).Skip(1).Where(line => line != "").Select(line => line.Split(','))];

    /// <summary>What is expected, as it is written.</summary>
    public string Text(string quantity) => _expected[quantity].Value;

    public double Number(string quantity) => double.Parse(Text(quantity), CultureInfo.InvariantCulture);

    /// <summary>Holds a number against what is expected; unknown has to be unknown.</summary>
    public void Holds(string quantity, double? found)
    {
        if (Text(quantity) == "none")
        {
            Assert.True(found is null, $"{quantity} should be unknown, is {found}");
            return;
        }

        bool isNear = found is { } number && Math.Abs(number - Number(quantity)) <= _expected[quantity].Tolerance;
        Assert.True(isNear, $"{quantity}: expected {Text(quantity)} within {_expected[quantity].Tolerance}, is {found:R}");
    }
}
