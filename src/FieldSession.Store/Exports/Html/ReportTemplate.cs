using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.RegularExpressions;
using System.Text.Unicode;
using System.Xml;
using System.Xml.Linq;
using FieldSession.Reporting;
using Fluid;
using Fluid.Values;

namespace FieldSession.Store.Exports.Html;

/// <summary>
/// The frame of a report in HTML, in the Liquid language, so that a team can make it its own. Whatever a template prints is escaped, unless
/// it asks for the plots, which are drawn by the program; a name that a template gets wrong is refused and not passed over.
/// </summary>
public sealed class ReportTemplate
{
    // Enough for the longest study; a template that goes round for ever ends here.
    private const int MostSteps = 2_000_000;

    private readonly IFluidTemplate _template;
    private readonly string _name;

    private ReportTemplate(IFluidTemplate template, string name)
    {
        _template = template;
        _name = name;
    }

    /// <summary>The team's logo as SVG; empty: none.</summary>
    internal string Logo { get; private init; } = "";

    /// <summary>The parts that the page shows, in order; null: all, in the order of the report.</summary>
    internal IReadOnlyList<ReportPart>? Order { get; private init; }

    /// <summary>The text of the template that the program carries with it.</summary>
    public static string DefaultText => OwnText.Of("report.html.liquid");

    /// <summary>The template that the program carries with it.</summary>
    public static ReportTemplate Default => Of(DefaultText, PageWords.OwnTemplate);

    /// <summary>Reads a template.</summary>
    /// <param name="text">Its text.</param>
    /// <param name="name">How it is called in a refusal, such as its path.</param>
    /// <exception cref="TemplateRefusedException">It is no template; the message says where and what to do.</exception>
    public static ReportTemplate Of(string text, string name)
    {
        ArgumentNullException.ThrowIfNull(text);
        return new FluidParser().TryParse(text, out IFluidTemplate? template, out string? fault)
            ? new ReportTemplate(template, name)
            : throw new TemplateRefusedException(PageWords.NotTemplate(name, fault));
    }

    /// <summary>
    /// Reads the template in a file, or a team's folder with <c>report.html.liquid</c>, <c>logo.svg</c> and <c>sections.txt</c>, each of
    /// which may be missing.
    /// </summary>
    /// <exception cref="TemplateRefusedException">It can't be read, or something in it is wrong.</exception>
    public static ReportTemplate At(string path)
    {
        try
        {
            return Directory.Exists(path) ? InFolder(path) : Of(SmallText.Read(path), path);
        }
        catch (Exception fault) when (fault is not TemplateRefusedException and (IOException or UnauthorizedAccessException))
        {
            throw new TemplateRefusedException(PageWords.TemplateCantBeRead(path, fault), fault);
        }
    }

    private static ReportTemplate InFolder(string folder)
    {
        string? Found(string name) => Path.Combine(folder, name) is var path && File.Exists(path) ? path : null;
        (string? page, string? logo, string? order) = (Found("report.html.liquid"), Found("logo.svg"), Found("sections.txt"));
        if (page is null && logo is null && order is null)
        {
            throw new TemplateRefusedException(PageWords.FolderHoldsNothing(folder));
        }

        ReportTemplate template = page is null ? Default : Of(SmallText.Read(page), page);
        return new ReportTemplate(template._template, template._name)
        {
            Logo = logo is null ? "" : LogoDrawing.Of(SmallText.Read(logo), logo),
            Order = order is null ? null : [.. Parts(SmallText.Read(order), order)],
        };
    }

    private static IEnumerable<ReportPart> Parts(string text, string path) =>
        text.Split('\n')
            .Index()
            .Select(line => (Number: line.Index + 1, Name: line.Item.Split('#')[0].Trim()))
            .Where(line => line.Name.Length > 0)
            .Select(line =>
                PartNames.Find(line.Name)
                ?? throw new TemplateRefusedException(PageWords.NoSuchPart(path, line.Number, line.Name, string.Join(", ", PartNames.All)))
            );

    /// <summary>The page.</summary>
    /// <param name="values">What the template may name.</param>
    /// <exception cref="TemplateRefusedException">The template names what there is not, or does not end.</exception>
    internal string Filled(IReadOnlyDictionary<string, FluidValue> values)
    {
        TemplateOptions options = new()
        {
            StrictVariables = true,
            StrictFilters = true,
            MaxSteps = MostSteps,
        };
        TemplateContext context = new(options);
        foreach ((string name, FluidValue value) in values)
        {
            context.SetValue(name, value);
        }

        try
        {
            return _template.Render(context, HtmlEncoder.Create(UnicodeRanges.All));
        }
        catch (FileNotFoundException fault)
        {
            throw new TemplateRefusedException(PageWords.TemplateAsksForFile(_name, fault), fault);
        }
        catch (InvalidOperationException fault)
        {
            throw new TemplateRefusedException(PageWords.TemplateNeverEnds(_name, MostSteps), fault);
        }
        catch (Exception fault) when (fault is FluidException or ParseException)
        {
            throw new TemplateRefusedException(PageWords.TemplateNamesUnknown(_name, fault), fault);
        }
    }
}

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

/// <summary>A team's logo, as it may be in a page that runs nothing and fetches nothing.</summary>
internal static class LogoDrawing
{
    private static ImmutableArray<string> Elements { get; } =
    ["svg", "g", "path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "text", "tspan", "title", "desc"];

    /// <summary>The drawing without what only its editor needs.</summary>
    /// <exception cref="TemplateRefusedException">It is no SVG, or holds what a page can't carry safely.</exception>
    public static string Of(string text, string path)
    {
        XElement drawing = Read(text, path);
        foreach (XElement element in drawing.DescendantsAndSelf())
        {
            if (!Elements.Contains(element.Name.LocalName))
            {
                throw new TemplateRefusedException(PageWords.LogoIsRefused(path, PageWords.LogoHolds(element.Name.LocalName)));
            }

            if (element.Attributes().FirstOrDefault(IsUnsafe) is { } attribute)
            {
                throw new TemplateRefusedException(PageWords.LogoIsRefused(path, PageWords.LogoHolds(attribute.Name.LocalName)));
            }
        }

        return drawing.ToString(SaveOptions.DisableFormatting);
    }

    private static bool IsUnsafe(XAttribute attribute) =>
        attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase)
        || attribute.Name.LocalName is "href" or "style" or "id"
        || attribute.Value.Contains("url(", StringComparison.OrdinalIgnoreCase);

    private static XElement Read(string text, string path)
    {
        try
        {
            using StringReader source = new(text);
            using XmlReader reader = XmlReader.Create(
                source,
                new XmlReaderSettings
                {
                    DtdProcessing = DtdProcessing.Prohibit,
                    IgnoreComments = true,
                    IgnoreProcessingInstructions = true,
                }
            );
            XElement root = XElement.Load(reader);
            return root.Name.LocalName == "svg"
                ? root
                : throw new TemplateRefusedException(PageWords.LogoIsRefused(path, PageWords.LogoHolds(root.Name.LocalName)));
        }
        catch (XmlException fault)
        {
            throw new TemplateRefusedException(PageWords.LogoIsNoSvg(path, fault), fault);
        }
    }
}

/// <summary>A template can't be used. The message names it, where it is wrong, and what to do.</summary>
/// <param name="message">The message.</param>
/// <param name="cause">What the library or the system said; null: nothing.</param>
public sealed class TemplateRefusedException(string message, Exception? cause = null) : IOException(message, cause);
