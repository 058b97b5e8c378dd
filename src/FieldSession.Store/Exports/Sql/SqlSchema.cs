using System.Collections.Immutable;

namespace FieldSession.Store.Exports.Sql;

/// <summary>
/// The tables of an export in SQL, drawn from the same descriptions as the CSV files and <c>datapackage.json</c>: every row belongs to a
/// study, which is known by the hash of its first line.
/// </summary>
public static class SqlSchema
{
    private const string Loading = "loading.sql";
    private const string Study = ExportTable.StudyColumn;

    // words of SQL itself (PostgreSQL 15 manual, appendix C): as names of columns they need quotes
    private static readonly ImmutableHashSet<string> Reserved =
    [
        "all",
        "analyze",
        "and",
        "any",
        "array",
        "as",
        "asc",
        "case",
        "check",
        "column",
        "default",
        "desc",
        "distinct",
        "do",
        "else",
        "end",
        "except",
        "false",
        "for",
        "from",
        "group",
        "having",
        "in",
        "into",
        "is",
        "like",
        "limit",
        "not",
        "null",
        "offset",
        "on",
        "only",
        "or",
        "order",
        "select",
        "some",
        "table",
        "then",
        "to",
        "true",
        "union",
        "unique",
        "user",
        "using",
        "when",
        "where",
        "window",
        "with",
    ];

    private static IEnumerable<ExportTable> Tables => Exports.All.OfType<ExportTable>();

    /// <summary>The whole script.</summary>
    public static string Of(SqlEngine engine) =>
        engine switch
        {
            SqlEngine.PostgreSql => string.Join('\n', [ExportWords.SqlHead, "", OwnText.Of(Loading), .. Tables.Select(Created), ""]),
            _ => string.Join('\n', [ExportWords.SqlInPlaceHead, "", SqlWords.PlainInPlace, "", .. Tables.Select(InPlace), ""]),
        };

    private static string Created(ExportTable table) =>
        SqlWords.Table(table.Table, table.Description, string.Join(",\n", Lines(table).Select(line => $"    {line}")))
        + SqlWords.OneStudyAtATime(table.Table)
        + string.Concat(
            table.Fields.Select(field =>
                SqlWords.Meaning(
                    table.Table,
                    Name(field.Name),
                    Quoted(field.Unit is null ? field.Description : $"{field.Description}; {field.Unit}")
                )
            )
        );

    private static IEnumerable<string> Lines(ExportTable table) =>
        [
            .. table.Fields.Select(field => Column(table, field)),
            $"PRIMARY KEY ({string.Join(", ", table.FullKey.Select(Name))})",
            .. table.Fields.Where(field => field.IsUnique).Select(field => $"UNIQUE ({Study}, {Name(field.Name)})"),
            .. table.Links.Select(link => SqlWords.Link(Name(link.Field), link.Table, Name(link.OtherField))),
        ];

    private static string Column(ExportTable table, ExportField field)
    {
        string words = field.Words.Length == 0 ? "" : $" CHECK ({Name(field.Name)} IN ({string.Join(", ", field.Words.Select(Quoted))}))";
        return $"{Name(field.Name)} "
            + $"{PostgresType(field.Type)}{(field.IsRequired ? " NOT NULL" : "")}{words}"
            + $"{(field.Name == Study && table.Table != Study ? SqlWords.OfStudy : "")}";
    }

    private static string InPlace(ExportTable table) =>
        SqlWords.InPlace(
            table.Table,
            table.Name,
            table.Description,
            Quoted(
                SqlWords.ReadInPlace(
                    table.Name,
                    string.Join(", ", table.Fields.Select(field => $"{Quoted(field.Name)}: {Quoted(InPlaceType(field.Type))}"))
                )
            ),
            Quoted(
                SqlWords.NoRow(string.Join(", ", table.Fields.Select(field => $"NULL::{InPlaceType(field.Type)} AS {Name(field.Name)}")))
            )
        );

    private static string Name(string column) => Reserved.Contains(column) ? $"\"{column}\"" : column;

    private static string Quoted(string text) => $"'{text.Replace("'", "''", StringComparison.Ordinal)}'";

    private static string PostgresType(FieldType type) =>
        type switch
        {
            FieldType.Text => "text",
            FieldType.Count => "integer",
            FieldType.Number => "double precision",
            FieldType.YesNo => "boolean",
            _ => "timestamptz",
        };

    private static string InPlaceType(FieldType type) =>
        type switch
        {
            FieldType.Text => "VARCHAR",
            FieldType.Count => "INTEGER",
            FieldType.Number => "DOUBLE",
            FieldType.YesNo => "BOOLEAN",
            _ => "TIMESTAMP",
        };
}

/// <summary>An engine that questions exports in SQL.</summary>
public enum SqlEngine
{
    /// <summary>PostgreSQL: a database of the team, which exports are loaded into.</summary>
    PostgreSql,

    /// <summary>DuckDB: reads folders of exports in place.</summary>
    DuckDb,
}

/// <summary>The sentences of SQL.</summary>
internal static class SqlWords
{
    public const string PlainInPlace = """
        CREATE OR REPLACE MACRO plain(t) AS CASE WHEN regexp_matches(t, '^''+[=+@\t\r-]') THEN substr(t, 2) ELSE t END;
        """;

    public const string OfStudy = " REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED";

    public static string Table(string table, string meaning, string lines) => $"-- {meaning}\nCREATE TABLE {table} (\n{lines}\n);\n";

    public static string Link(string column, string table, string otherColumn) =>
        $"FOREIGN KEY (study, {column}) REFERENCES {table} (study, {otherColumn}) DEFERRABLE INITIALLY DEFERRED";

    public static string OneStudyAtATime(string table) =>
        $"CREATE TRIGGER of_this_study AFTER INSERT ON {table} REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE "
        + "FUNCTION of_this_study();\n";

    public static string Meaning(string table, string column, string quoted) => $"COMMENT ON COLUMN {table}.{column} IS {quoted};\n";

    public static string ReadInPlace(string file, string columns) =>
        $"SELECT * FROM read_csv(getvariable('exports') || '/*/{file}', columns = {{{columns}}}, header = true, "
        + "auto_detect = false, delim = ',', quote = '\"', escape = '\"')";

    public static string NoRow(string columns) => $"SELECT {columns} WHERE false";

    // a table that no export has a file of is there all the same, and empty
    public static string InPlace(string table, string file, string meaning, string read, string none) =>
        $"-- {meaning}\nSET VARIABLE {table}_files = (SELECT CASE WHEN count(*) = 0 THEN {none} ELSE {read} END FROM "
        + $"glob(getvariable('exports') || '/*/{file}'));\nCREATE OR REPLACE VIEW {table} AS SELECT * FROM "
        + $"query(getvariable('{table}_files'));\n";
}
