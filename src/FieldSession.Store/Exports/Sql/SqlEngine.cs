namespace FieldSession.Store.Exports.Sql;

/// <summary>An engine that questions exports in SQL.</summary>
public enum SqlEngine
{
    /// <summary>PostgreSQL: a database of the team, which exports are loaded into.</summary>
    PostgreSql,

    /// <summary>DuckDB: reads folders of exports in place.</summary>
    DuckDb,
}
