using System.Globalization;
using FieldSession.Store.Disks;
using Tomlyn.Syntax;

namespace FieldSession.Store.Planning;

/// <summary>One word of the plan with its value and its place in the file.</summary>
/// <param name="Name">The name, dotted where it is in a table: "limits.wind_warn_m_s".</param>
/// <param name="Value">The value as written.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Place in the line, from 1.</param>
internal sealed record PlanWord(string Name, ValueSyntax Value, int Line, int Column)
{
    /// <summary>The word at a place of the file; positions are those of the value.</summary>
    public static PlanWord Of(string name, ValueSyntax value) => new(name, value, value.Span.Start.Line + 1, value.Span.Start.Column + 1);

    /// <summary>The values of an array, each with its own place; null where this is no array.</summary>
    public IReadOnlyList<PlanWord>? Items =>
        Value is ArraySyntax array
            ? [.. array.Items.Select(item => item.Value).OfType<ValueSyntax>().Select(value => Of(Name, value))]
            : null;

    /// <summary>The words of an inline table; null where this is none.</summary>
    public IReadOnlyList<PlanWord>? Members =>
        Value is InlineTableSyntax table
            ? [.. table.Items.Select(item => item.KeyValue).OfType<KeyValueSyntax>().SelectMany(pair => PlanToml.WordsOf("", pair))]
            : null;

    /// <summary>What the value is, in words.</summary>
    public string Sort =>
        Value switch
        {
            StringValueSyntax => "text",
            IntegerValueSyntax or FloatValueSyntax => "a number",
            BooleanValueSyntax => PlanFolderWords.YesOrNo,
            ArraySyntax => "a list",
            InlineTableSyntax => "a table",
            _ => PlanFolderWords.DateOrTime,
        };

    /// <summary>Refuses the word at its place.</summary>
    public void Refuse(Troubles troubles, string what, string allowed) =>
        troubles.Refuse(PlanFile.Plan, Line, Column.ToString(CultureInfo.InvariantCulture), what, allowed);

    /// <summary>Says that the word is weak, at its place.</summary>
    public void Warn(Troubles troubles, string what, string better) =>
        troubles.Warn(PlanFile.Plan, Line, Column.ToString(CultureInfo.InvariantCulture), what, better);
}

/// <summary>One table of a list of tables, such as each <c>[[crew]]</c>.</summary>
/// <param name="Name">The list's name.</param>
/// <param name="Line">Line of its heading, from 1.</param>
/// <param name="Words">The words in it.</param>
internal sealed record PlanTable(string Name, int Line, IReadOnlyList<PlanWord> Words);

/// <summary>Reads one file of a plan folder as text.</summary>
internal static class PlanFile
{
    /// <summary>Name of the plan's file.</summary>
    public const string Plan = "plan.toml";

    /// <summary>Name of the route's file.</summary>
    public const string Route = "route.csv";

    /// <summary>The text without byte order mark; null with a trouble where there is none.</summary>
    public static string? Read(string folder, string name, Troubles troubles)
    {
        string path = Path.Combine(folder, name);
        try
        {
            FileKind.RefuseSpecial(path);
            return SmallText.Read(path);
        }
        catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException)
        {
            troubles.Refuse(name, null, null, PlanFolderWords.NoSuchFile(path), PlanFolderWords.PlanFolderHolds(Plan, Route));
        }
        catch (TextRefusedException refused)
        {
            troubles.Refuse(name, refused.Line, null, refused.What, refused.Remedy);
        }
        catch (Exception denied) when (denied is IOException or UnauthorizedAccessException)
        {
            troubles.Refuse(name, null, null, PlanFolderWords.CantBeRead(path), PlanFolderWords.LookWhetherItIsFile);
        }

        return null;
    }
}
