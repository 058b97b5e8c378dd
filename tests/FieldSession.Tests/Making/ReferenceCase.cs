using System.Globalization;

namespace FieldSession.Tests.Making;

/// <summary>One folder of tests/FieldSession.Tests/References: input and expected values of an independent implementation.</summary>
internal sealed class ReferenceCase
{
    private readonly string folder;

    public ReferenceCase(string name)
    {
        folder = Path.Combine(Top(), "tests", "FieldSession.Tests", "References", name);
        Expected = [.. System.IO.File.ReadLines(File("expected.csv")).Skip(1).Where(line => line.Length > 0).Select(Line)];
    }

    /// <summary>Every expected value: its name, the value (null: not defined), the tolerance (absolute up to 1, relative above).</summary>
    public IReadOnlyList<(string Quantity, double? Value, double Tolerance)> Expected { get; }

    public string File(string name) => Path.Combine(folder, name);

    /// <summary>The readings with the columns named as a readings CSV names them.</summary>
    public string ReadingsCsv()
    {
        string[] lines = System.IO.File.ReadAllLines(File("data.csv"));
        string header = string.Join(',', lines[0].Split(',').Select(name => name switch
        {
            "t" => "minutes",
            "cls" => "class",
            "excluded" => "spoilt",
            _ => name,
        }));
        return string.Join('\n', [header, .. lines.Skip(1)]);
    }

    public static void AssertNear(string quantity, double? expected, double? found, double tolerance)
    {
        if (expected is not { } wanted)
        {
            Assert.True(found is null, $"{quantity}: expected unknown, found {found:R}");
            return;
        }

        double allowed = tolerance * Math.Max(1, Math.Abs(wanted));
        Assert.True(found is { } value && Math.Abs(value - wanted) <= allowed, $"{quantity}: expected {wanted:R}, found {found:R}");
    }

    private static (string, double?, double) Line(string line)
    {
        string[] parts = line.Split(',');
        string value = parts[1].Trim('"');
        return (
            parts[0].Trim('"'),
            double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) ? number : null,
            double.Parse(parts[2], NumberStyles.Float, CultureInfo.InvariantCulture));
    }

    private static string Top()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !System.IO.File.Exists(Path.Combine(folder, "FieldSession.sln")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new InvalidOperationException("FieldSession.sln is not above the tests");
    }
}
