using System.Text.RegularExpressions;
using FieldSession.Reporting;

namespace FieldSession.Store.Exports.Html;

/// <summary>The parts of a report by the names that a team's template calls them: "how-to-read".</summary>
public static partial class PartNames
{
    /// <summary>Every name, in the order of the report.</summary>
    public static IEnumerable<string> All => Enum.GetValues<ReportPart>().Select(Of);

    /// <summary>The name of a part.</summary>
    public static string Of(ReportPart part) => InnerCapital().Replace(part.ToString(), "-$0").ToLowerInvariant();

    /// <summary>The part of a name; null: none.</summary>
    public static ReportPart? Find(string name) =>
        Enum.GetValues<ReportPart>().Where(part => Of(part) == name).Select(part => (ReportPart?)part).FirstOrDefault();

    [GeneratedRegex("(?<!^)[A-Z]")]
    private static partial Regex InnerCapital();
}
