namespace FieldSession.Store.Exports.Sql;

/// <summary>The sentences of SQL.</summary>
internal static class SqlWords
{
    public const string PlainInPlace = """
        CREATE OR REPLACE MACRO plain(t) AS CASE WHEN regexp_matches(t, '^''+[=+@\t\r-]') THEN substr(t, 2) ELSE t END;
        """;

    public const string OfStudy = " REFERENCES study ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED";

    public static string Table(string table, string meaning, string lines) => $"-- {meaning}\nCREATE TABLE {table} (\n{lines}\n);\n";

    public static string Link(string column, string table, string otherColumn) => $"FOREIGN KEY (study, {column}) REFERENCES {table} (study, {otherColumn}) DEFERRABLE INITIALLY DEFERRED";

    public static string OneStudyAtATime(string table) => $"CREATE TRIGGER of_this_study AFTER INSERT ON {table} REFERENCING NEW TABLE AS fresh FOR EACH STATEMENT EXECUTE FUNCTION of_this_study();\n";

    public static string Meaning(string table, string column, string quoted) => $"COMMENT ON COLUMN {table}.{column} IS {quoted};\n";

    public static string ReadInPlace(string file, string columns) =>
        $"SELECT * FROM read_csv(getvariable('exports') || '/*/{file}', columns = {{{columns}}}, header = true, auto_detect = false, delim = ',', quote = '\"', escape = '\"')";

    public static string NoRow(string columns) => $"SELECT {columns} WHERE false";

    // a table that no export has a file of is there all the same, and empty
    public static string InPlace(string table, string file, string meaning, string read, string none) =>
        $"-- {meaning}\nSET VARIABLE {table}_files = (SELECT CASE WHEN count(*) = 0 THEN {none} ELSE {read} END FROM glob(getvariable('exports') || '/*/{file}'));\nCREATE OR REPLACE VIEW {table} AS SELECT * FROM query(getvariable('{table}_files'));\n";
}
