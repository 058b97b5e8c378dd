using System.Globalization;
using System.Text;
using FieldSession.Measures;
using FieldSession.State;
using FieldSession.Store.Exports.Html;
using Fluid.Values;

namespace FieldSession.Store.Exports.Paper;

/// <summary>
/// Sheets to print before the day, for a battery that dies and for people who rate alone: the route, a blank log for each run, rating
/// sheets, prediction slips, checks. Codes are written in by hand; no sheet knows who is who.
/// </summary>
public static class PaperSheets
{
    /// <summary>Name of the file.</summary>
    public const string FileName = "paper.html";

    private const string TemplateName = "paper.html.liquid";

    // what fits on a page of A4 or Letter in large type
    private const int RowsAPage = 22;

    /// <summary>Writes the sheets of a plan into a folder and gives the path.</summary>
    /// <exception cref="ExportRefusedException">The folder is a file, the file is there already, or the disk takes no more.</exception>
    public static string Write(string folder, Plan plan)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        string path = Path.Combine(folder, FileName);
        if (Path.Exists(path))
        {
            throw new ExportRefusedException(ExportWords.NameIsTaken(path));
        }

        FilesTogether.Write(
            folder,
            [(FileName, Encoding.UTF8.GetBytes(NumberForm.OfFiles(() => Of(plan))))],
            new HashSet<string>(),
            CancellationToken.None
        );
        return path;
    }

    /// <summary>The sheets as one page of HTML that a browser prints on A4 or Letter.</summary>
    public static string Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return ReportTemplate
            .Of(OwnText.Of(TemplateName), TemplateName)
            .Filled(
                new Dictionary<string, FluidValue>
                {
                    ["title"] = Values.Text(plan.StudyName),
                    ["question"] = Values.Text(plan.Question),
                    ["protocol"] = Values.Text(plan.Protocol),
                    ["calibrator"] = Values.Text(plan.CalibratorDb.ToString("0.#", CultureInfo.InvariantCulture)),
                    ["degrees"] = Values.Text(plan.Units == UnitSystem.Imperial ? "degF" : "degC"),
                    ["custodian"] = Values.Text(plan.Custodian ?? ""),
                    ["people"] = Values.List(plan.Crew.Select(member => Values.Text(member.Name))),
                    ["attributes"] = Values.List(plan.Attributes.Select(Values.Text)),
                    ["steps"] = Values.List(
                        RatingSteps.All.Select(step => Values.Text($"{step.Points}  {step.Disturbance} / {step.Control}"))
                    ),
                    ["causes"] = Values.List(SpoiltCauses.All.Select(cause => Values.Text($"{cause.Letter} {cause.Meaning}"))),
                    ["segments"] = Values.List(plan.Route.Select(segment => Segment(segment, plan.Units))),
                    ["runs"] = Values.List(
                        Enumerable.Range(1, plan.Order.Count).Select(number => Values.Parts(("number", Values.Text($"{number}"))))
                    ),
                    ["pages"] = Values.List(
                        plan.Route.Chunk(RowsAPage).Select(page => Values.List(page.Select(segment => Segment(segment, plan.Units))))
                    ),
                }
            );
    }

    private static FluidValue Segment(Segment segment, UnitSystem units) =>
        Values.Parts(
            ("number", Values.Text($"{segment.Number}")),
            ("name", Values.Text(segment.Name)),
            ("kind", Values.Text(segment.Kind.Word)),
            ("speed", Values.Text(segment.Speed.In(units))),
            ("length", Values.Text(segment.Length.In(units))),
            ("seconds", Values.Text(segment.Seconds.ToString("0", CultureInfo.InvariantCulture))),
            ("mark", Values.Text(segment.StartMark ?? ""))
        );
}
