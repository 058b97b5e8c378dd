using System.Collections.Immutable;
using System.Text;
using FieldSession.Measures;
using FieldSession.State;
using FieldSession.Store.Journaling;

namespace FieldSession.Store.Planning;

/// <summary>
/// A plan folder as two texts that are edited word by word: what is not touched stays as somebody wrote it. Anything can be
/// written into it; whether it is a plan, <see cref="Judged"/> says.
/// </summary>
/// <param name="FolderName">The study's name where the plan names none.</param>
/// <param name="Toml">Text of <c>plan.toml</c>.</param>
/// <param name="Rows">The route's rows, each with a text for every one of <see cref="Columns"/>.</param>
/// <param name="IsImperial">Whether speeds and lengths are in miles.</param>
public sealed record PlanPages(string FolderName, string Toml, ImmutableList<ImmutableArray<string>> Rows, bool IsImperial)
{
    private const string FirstPlan = "specs = 2\norder = \"R 1 R 1 R\"\n";

    /// <summary>The columns of the route that are edited, in order.</summary>
    public ImmutableArray<string> Columns =>
        IsImperial
            ? ["segment", "kind", "speed_mph", "length_mi", "limit_mph", "nominal_db", "start_mark", "phrase", "class"]
            : ["segment", "kind", "speed_kmh", "length_m", "limit_kmh", "nominal_db", "start_mark", "phrase", "class"];

    /// <summary>The route as it is written.</summary>
    public string Csv =>
        string.Concat(Rows.Select(row => string.Join(',', row.Select(Field)) + "\n").Prepend(string.Join(',', Columns) + "\n"));

    /// <summary>The pages of a folder; where it holds no plan yet, a plan to begin with.</summary>
    /// <exception cref="IOException">A file is there and can't be read, is too large, or is not UTF-8.</exception>
    public static PlanPages Open(string folder)
    {
        string plan = Path.Combine(folder, PlanFile.Plan);
        string route = Path.Combine(folder, PlanFile.Route);
        string toml = File.Exists(plan) ? SmallText.Read(plan) : FirstPlan;
        return Of(new DirectoryInfo(folder).Name, toml, File.Exists(route) ? SmallText.Read(route) : "");
    }

    /// <summary>The pages of two texts.</summary>
    public static PlanPages Of(string folderName, string toml, string routeCsv)
    {
        ImmutableArray<ImmutableArray<string>> cells = RouteCells.Of(routeCsv);
        ImmutableArray<string> header = cells.IsEmpty ? [] : [.. cells[0].Select(name => name.Trim().ToLowerInvariant())];
        PlanPages pages = new(folderName, toml, [], header.Contains("speed_mph") || UnitsIn(toml) == "imperial");
        return pages with
        {
            Rows = [.. cells.Skip(1).Select(row => pages.Columns.Select(column => Cell(header, row, column)).ToImmutableArray())],
        };
    }

    /// <summary>The columns' hints: what each takes, and what holds where it is empty.</summary>
    public ImmutableArray<string> ColumnHints =>
        [
            PlanFolderWords.SegmentHint,
            PlanFolderWords.KindHint,
            PlanFolderWords.SpeedHint(IsImperial ? "mph" : "km/h"),
            PlanFolderWords.LengthHint(IsImperial ? "miles" : "metres"),
            PlanFolderWords.LimitHint,
            PlanFolderWords.NominalLevelHint,
            PlanFolderWords.StartMarkHint,
            PlanFolderWords.PhraseHint,
            PlanFolderWords.ClassHint,
        ];

    /// <summary>The text of every word that the plan holds, by name, dotted where it is in a table.</summary>
    public IReadOnlyDictionary<string, string> Texts() =>
        Words().DistinctBy(word => word.Name).ToDictionary(word => word.Name, PlanField.TextOf);

    /// <summary>The text of a field; empty: the plan does not hold it.</summary>
    public string TextOf(PlanField field)
    {
        ArgumentNullException.ThrowIfNull(field);
        return Texts().GetValueOrDefault(field.Name, "");
    }

    /// <summary>The fields to edit: those of the units, and those that the plan holds.</summary>
    public ImmutableArray<PlanField> Fields(IReadOnlyDictionary<string, string> texts) =>
        [.. PlanFields.All.Where(field => field.Units is null || field.Units == Units || texts.ContainsKey(field.Name))];

    /// <summary>The name of the word that is in a line of the plan; null: none.</summary>
    public string? NameAt(int line) => Words().FirstOrDefault(word => word.Line == line)?.Name;

    /// <summary>The pages with a field's text.</summary>
    public PlanPages With(PlanField field, string text)
    {
        ArgumentNullException.ThrowIfNull(field);
        PlanPages changed = this with { Toml = PlanText.With(Toml, field.Name, field.ValueOf(text)) };
        return field.Name == "units" && Rows.IsEmpty ? changed with { IsImperial = UnitsIn(changed.Toml) == "imperial" } : changed;
    }

    /// <summary>The pages with a limit's value as typed; empty: its default.</summary>
    public PlanPages With(Limit limit, string text)
    {
        ArgumentNullException.ThrowIfNull(limit);
        PlanField asField = new(limit.Name, limit.Words, PlanFieldSort.Number, "");
        return this with { Toml = PlanText.With(Toml, "limits", limit.Name, asField.ValueOf(text)) };
    }

    /// <summary>The pages with the reason why a limit is changed; empty: none.</summary>
    public PlanPages WithReason(Limit limit, string text)
    {
        ArgumentNullException.ThrowIfNull(limit);
        ArgumentNullException.ThrowIfNull(text);
        return this with
        {
            Toml = PlanText.With(Toml, "limits.reasons", limit.Name, text.Trim().Length == 0 ? null : PlanText.Quoted(text.Trim())),
        };
    }

    /// <summary>What comes of the pages as they are.</summary>
    public PlanReading Judged() => PlanFolder.Parse(Toml, Csv, FolderName);

    /// <summary>Writes both files; the folder is made where there is none. Each file is whole, the old or the new.</summary>
    /// <exception cref="IOException">A file can't be written.</exception>
    public void Write(string folder)
    {
        Directory.CreateDirectory(folder);
        Disk disk = new();
        WholeFile.Write(disk, Path.Combine(folder, PlanFile.Route), Encoding.UTF8.GetBytes(Csv));
        WholeFile.Write(disk, Path.Combine(folder, PlanFile.Plan), Encoding.UTF8.GetBytes(Toml));
    }

    private UnitSystem Units =>
        UnitsIn(Toml) switch
        {
            "imperial" => UnitSystem.Imperial,
            "metric" => UnitSystem.Metric,
            _ => IsImperial ? UnitSystem.Imperial : UnitSystem.Metric,
        };

    private IEnumerable<PlanWord> Words() => PlanToml.Parse(Toml, new Troubles())?.Words ?? [];

    private static string? UnitsIn(string toml) =>
        PlanToml.Parse(toml, new Troubles())?.Find("units") is { } word ? PlanField.TextOf(word).ToLowerInvariant() : null;

    private static string Cell(ImmutableArray<string> header, ImmutableArray<string> row, string column)
    {
        int index = header.IndexOf(column);
        return index >= 0 && index < row.Length ? row[index].Trim() : "";
    }

    private static string Field(string text) =>
        text.AsSpan().IndexOfAny(",\"\n\r") < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
