using System.Globalization;
using DuckDB.NET.Data;

namespace FieldSession.Tests.Archiving;

/// <summary>A DuckDB in memory that reads a folder of exports in place.</summary>
internal sealed class ADuckDb : IDisposable
{
    private readonly DuckDBConnection _connection = new("DataSource=:memory:");

    public ADuckDb(string exports)
    {
        _connection.Open();
        Do($"SET VARIABLE exports = '{exports.Replace("'", "''", StringComparison.Ordinal)}'");
        Do(File.ReadAllText(TeamFiles.Path("in-place.sql")));
    }

    /// <summary>The rows that a query answers, cells cut by '|', as psql -A -t prints them.</summary>
    public string Ask(string query)
    {
        using DuckDBCommand command = _connection.CreateCommand();
        command.CommandText = query;
        using DuckDBDataReader reader = command.ExecuteReader();
        List<string> rows = [];
        while (reader.Read())
        {
            rows.Add(string.Join('|', Enumerable.Range(0, reader.FieldCount).Select(i => Text(reader.GetValue(i)))));
        }

        return string.Join('\n', rows);
    }

    public void Dispose() => _connection.Dispose();

    private static string Text(object value) =>
        value switch
        {
            DBNull => "",
            bool yes => yes ? "t" : "f",
            DateOnly day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            DateTime day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            IFormattable number => number.ToString(null, CultureInfo.InvariantCulture),
            _ => value.ToString()!,
        };

    private void Do(string statements)
    {
        using DuckDBCommand command = _connection.CreateCommand();
        command.CommandText = statements;
        command.ExecuteNonQuery();
    }
}
