using OxyPlot;

namespace FieldSession.Store.Exports.Html;

/// <summary>
/// How much room words take, a little more than the Helvetica of most computers needs: the page is drawn before anybody knows which letters it will be
/// read in, and words without room are cut off. Own estimate: small letters 0.56 of the size, capitals 0.74, letters of other scripts 1.
/// </summary>
internal sealed class WordWidths() : PdfRenderContext(1, 1, OxyColors.White)
{
    private const double LineHeight = 1.2;

    /// <inheritdoc/>
    public override OxySize MeasureText(string text, string fontFamily, double fontSize, double fontWeight) => string.IsNullOrEmpty(text)
        ? OxySize.Empty
        : new OxySize(text.Split('\n').Max(line => line.Sum(WidthOf)) * fontSize, text.Split('\n').Length * LineHeight * fontSize);

    private static double WidthOf(char letter) => letter switch
    {
        >= 'A' and <= 'Z' or '%' or '@' => 0.74,
        < '\u0250' => 0.56,
        _ => 1,
    };
}
