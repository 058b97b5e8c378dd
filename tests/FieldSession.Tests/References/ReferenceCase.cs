using System.Globalization;

namespace FieldSession.Tests.References;

/// <summary>One folder of reference numbers: its tables, what is expected, and a count of what was held against it.</summary>
internal sealed class ReferenceCase
{
    private readonly string _folder;

    private ReferenceCase(string folder) => _folder = folder;

    public static ReferenceCase Open(string name) => new(Path.Combine(AppContext.BaseDirectory, "References", "cases", name));

    public static IEnumerable<string> Names() =>
        Directory.GetDirectories(Path.Combine(AppContext.BaseDirectory, "References", "cases")).Select(x => Path.GetFileName(x)).Order();

    public string PathOf(string file) => Path.Combine(_folder, file);

    /// <summary>Rows of a table as header to cell.</summary>
    public IReadOnlyList<Dictionary<string, string>> Table(string file)
    {
        string[] lines = File.ReadAllLines(PathOf(file));
        string[] header = Cells(lines[0]);
        return
        [
            .. lines.Skip(1).Where(line => line != "").Select(line => header.Zip(Cells(line)).ToDictionary(x => x.First, x => x.Second)),
        ];
    }

    /// <summary>Holds every expected row against the numbers; rows of the other estimator in gappy data only have to be near.</summary>
    /// <returns>How many rows were held.</returns>
    public int Check(
        IReadOnlyDictionary<string, object?> found,
        Func<string, double?>? nearEnough = null,
        Func<string, bool>? leaveOut = null
    )
    {
        List<string> offenders = [];
        int rows = 0;
        foreach (Dictionary<string, string> row in Table("expected.csv").Where(row => leaveOut?.Invoke(row["quantity"]) != true))
        {
            rows++;
            string name = row["quantity"];
            string? offence = found.TryGetValue(name, out object? value)
                ? Offence(row["value"], value, nearEnough?.Invoke(name) ?? Number(row["tolerance"]))
                : "nobody computes it";
            if (offence is not null)
            {
                offenders.Add($"{name}: {offence}");
            }
        }

        Assert.True(offenders.Count == 0, $"{offenders.Count} of {rows} rows:\n" + string.Join('\n', offenders));
        return rows;
    }

    public static double Number(string text) => text == "Inf" ? double.PositiveInfinity : double.Parse(text, CultureInfo.InvariantCulture);

    private static string? Offence(string expected, object? found, double tolerance)
    {
        if (expected is "NA" or "none")
        {
            return found is null ? null : $"should be unknown, is {found}";
        }

        if (found is string words)
        {
            return words == expected ? null : $"expected {expected}, is {words}";
        }

        double wanted = Number(expected);
        double? number = found is null ? null : Convert.ToDouble(found, CultureInfo.InvariantCulture);
        double allowed = tolerance * Math.Max(1, Math.Abs(wanted));
        return number is double n && Math.Abs(n - wanted) <= allowed ? null : $"expected {expected} within {tolerance}, is {number:R}";
    }

    private static string[] Cells(string line)
    {
        List<string> cells = [""];
        bool quoted = false;
        foreach (char c in line)
        {
            if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                cells.Add("");
            }
            else
            {
                cells[^1] += c;
            }
        }

        return [.. cells];
    }
}
