using System.CommandLine;
using FieldSession.Store.Exports.Sql;

namespace FieldSession.Terminal.Commands;

/// <summary>The command 'schema': prints the tables of an export in SQL.</summary>
internal static class SchemaCommand
{
    private const string Postgres = "postgresql";
    private const string InPlace = "duckdb";

    /// <summary>The command as the command line takes it.</summary>
    public static Command Make(Surroundings outside)
    {
        Argument<string> engine = new("ENGINE")
        {
            Description = $"{Postgres}, a database to load exports into, or {InPlace}, which reads folders of exports in place",
        };
        engine.AcceptOnlyFromAmong(Postgres, InPlace);
        Command command = new("schema", "prints the tables of an export in SQL") { engine };
        command.SetAction(typed =>
        {
            outside.Output.Write(SqlSchema.Of(typed.GetRequiredValue(engine) == InPlace ? SqlEngine.DuckDb : SqlEngine.PostgreSql));
            return ExitCode.Done;
        });
        return command;
    }
}
