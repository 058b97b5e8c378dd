using System.Collections.Immutable;
using System.Xml;
using System.Xml.Linq;

namespace FieldSession.Store.Exports.Html;

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
            using XmlReader reader = XmlReader.Create(source, new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, IgnoreComments = true, IgnoreProcessingInstructions = true });
            XElement root = XElement.Load(reader);
            return root.Name.LocalName == "svg" ? root : throw new TemplateRefusedException(PageWords.LogoIsRefused(path, PageWords.LogoHolds(root.Name.LocalName)));
        }
        catch (XmlException fault)
        {
            throw new TemplateRefusedException(PageWords.LogoIsNoSvg(path, fault), fault);
        }
    }
}
