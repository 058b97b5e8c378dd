using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml;

namespace FieldSession.Store.Exports.Html;

/// <summary>
/// A drawn plot as a piece of a page: it scales with the page, and says its title and its words to whoever does not see it.
/// </summary>
internal static partial class SvgPiece
{
    // said once for the whole drawing
    private static ImmutableArray<string> Shared { get; } = ["font-family", "font-weight"];

    private const string Svg = "http://www.w3.org/2000/svg";

    /// <summary>The piece.</summary>
    /// <param name="drawn">The plot as it was drawn, an svg element.</param>
    /// <param name="id">A name that no other plot of the page has.</param>
    /// <param name="title">What is plotted.</param>
    /// <param name="words">What it shows.</param>
    public static string Of(string drawn, string id, string title, string words)
    {
        using StringReader text = new(drawn);
        using XmlReader reader = XmlReader.Create(
            text,
            new XmlReaderSettings { IgnoreWhitespace = true, DtdProcessing = DtdProcessing.Prohibit }
        );
        StringBuilder piece = new();
        using (XmlWriter writer = XmlWriter.Create(piece, new XmlWriterSettings { OmitXmlDeclaration = true, NewLineChars = "\n" }))
        {
            reader.Read();
            while (!reader.EOF)
            {
                CopyNext(reader, writer, id, title, words);
            }
        }

        return piece.ToString();
    }

    // The definitions hold nothing but frames to cut at; the axes are made so wide that nothing lies outside.
    private static void CopyNext(XmlReader reader, XmlWriter writer, string id, string title, string words)
    {
        if (reader is { NodeType: XmlNodeType.Element, LocalName: "defs" })
        {
            reader.Skip();
            return;
        }

        Copy(reader, writer, id, title, words);
        reader.Read();
    }

    private static void Copy(XmlReader reader, XmlWriter writer, string id, string title, string words)
    {
        switch (reader.NodeType)
        {
            case XmlNodeType.Element when reader.Depth == 0:
                Begin(reader, writer, id, title, words);
                break;
            case XmlNodeType.Element:
                Element(reader, writer);
                break;
            case XmlNodeType.Text:
                writer.WriteString(reader.Value);
                break;
            case XmlNodeType.EndElement:
                writer.WriteEndElement();
                break;
            default:
                break;
        }
    }

    private static void Begin(XmlReader reader, XmlWriter writer, string id, string title, string words)
    {
        string width = Number(reader.GetAttribute("width"));
        string height = Number(reader.GetAttribute("height"));
        writer.WriteStartElement("svg", Svg);
        writer.WriteAttributeString("id", id);
        writer.WriteAttributeString("role", "img");
        writer.WriteAttributeString("aria-label", VisibleText.Of(title));
        writer.WriteAttributeString("aria-describedby", $"{id}-words");
        writer.WriteAttributeString("viewBox", $"0 0 {width} {height}");
        writer.WriteAttributeString("width", width);
        writer.WriteAttributeString("height", height);
        writer.WriteAttributeString("font-family", Drawing.Letters);
        writer.WriteElementString("title", Svg, VisibleText.Of(title));
        writer.WriteStartElement("desc", Svg);
        writer.WriteAttributeString("id", $"{id}-words");
        writer.WriteString(VisibleText.Of(words));
        writer.WriteEndElement();
    }

    private static void Element(XmlReader reader, XmlWriter writer)
    {
        bool isWhole = reader.IsEmptyElement;
        writer.WriteStartElement(reader.LocalName, Svg);
        while (reader.MoveToNextAttribute())
        {
            if (reader.Name is not ("xmlns" or "clip-path") && !Shared.Contains(reader.Name))
            {
                writer.WriteAttributeString(reader.LocalName, LongNumber().Replace(reader.Value, number => Short(number.Value)));
            }
        }

        if (isWhole)
        {
            writer.WriteEndElement();
        }
    }

    // tenths of a CSS pixel are finer than any screen
    private static string Short(string number) =>
        double.Parse(number, CultureInfo.InvariantCulture).ToString("0.#", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\d+\.\d{2,}")]
    private static partial Regex LongNumber();

    private static string Number(string? attribute) =>
        double.Parse(attribute!.Replace("px", "", StringComparison.Ordinal), CultureInfo.InvariantCulture)
            .ToString("0", CultureInfo.InvariantCulture);
}
