using System.Collections.Immutable;
using CsvHelper;

namespace FieldSession.Store.Exports;

/// <summary>A table of an export: one CSV file, RFC 4180 (UTF-8, lines end with CR LF, header first). Unknown is an empty cell.</summary>
/// <param name="table">Its name, without extension.</param>
/// <param name="description">What a row is.</param>
public abstract class ExportTable(string table, string description) : ExportFile(table + ".csv", description)
{
    /// <summary>The last column of every table: which study a row belongs to.</summary>
    public const string StudyColumn = "study";

    /// <summary>Its name, without extension.</summary>
    public string Table { get; } = table;

    /// <inheritdoc/>
    public override string MediaType => "text/csv";

    /// <summary>Its columns, in order.</summary>
    public abstract ImmutableArray<ExportField> Fields { get; }

    /// <summary>The columns that together tell a row from all others of its study.</summary>
    public ImmutableArray<string> Key { get; init; } = [];

    /// <summary>The columns that together tell a row from all others of any study.</summary>
    public ImmutableArray<string> FullKey => [StudyColumn, .. Key];

    /// <summary>The columns that name rows of other tables.</summary>
    public ImmutableArray<TableLink> Links { get; init; } = [];
}

/// <summary>A table whose rows are drawn from things of one kind.</summary>
/// <param name="table">Its name, without extension.</param>
/// <param name="description">What a row is.</param>
/// <param name="columns">Its columns.</param>
/// <param name="rows">The things that a study has a row of.</param>
internal sealed class DrawnTable<T>(
    string table,
    string description,
    ImmutableArray<ExportColumn<T>> columns,
    Func<ExportSource, IEnumerable<T>> rows
) : ExportTable(table, description)
{
    /// <inheritdoc/>
    public override ImmutableArray<ExportField> Fields { get; } =
    [
        .. columns.Select(column => column.Field),
        new ExportField(StudyColumn, FieldType.Text, null, ExportWords.StudyColumnDescription) { IsRequired = true },
    ];

    /// <summary>Says whether a study has the table; by default every study has.</summary>
    public Func<ExportSource, bool> Is { get; init; } = _ => true;

    /// <summary>Says why the table is hidden; by default it never is.</summary>
    public Func<ExportSource, string?> Hidden { get; init; } = _ => null;

    /// <inheritdoc/>
    public override bool IsIn(ExportSource source) => Is(source);

    /// <inheritdoc/>
    public override string? HiddenBecause(ExportSource source) => Hidden(source);

    /// <inheritdoc/>
    public override byte[] BytesOf(ExportSource source)
    {
        using MemoryStream bytes = new();
        using (CsvWriter csv = CsvWriter.Create(bytes, CsvWriterOptions.Default, leaveOpen: true))
        {
            csv.WriteRecord([.. Fields.Select(field => field.Name)]);
            foreach (T row in rows(source))
            {
                csv.WriteRecord([.. columns.Select(column => column.Cell(row)), source.Identity?.Hash]);
            }
        }

        return bytes.ToArray();
    }
}
