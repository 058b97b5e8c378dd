using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Legends;

namespace FieldSession.Store.Exports.Html;

/// <summary>What all plots of a report share: ink, letters, axes, and how they become a piece of SVG.</summary>
internal static class Drawing
{
    /// <summary>The letters of every plot.</summary>
    public const string Letters = "Helvetica, Arial, sans-serif";

    /// <summary>Size of letters, CSS pixels.</summary>
    public const double LetterSize = 13;

    /// <summary>The ink of words and lines: dark grey, 12:1 on white.</summary>
    public static OxyColor Ink => OxyColor.FromRgb(0x2b, 0x33, 0x3a);

    /// <summary>Lines that stay behind.</summary>
    public static OxyColor Faint => OxyColor.FromRgb(0xd5, 0xda, 0xde);

    /// <summary>The band of what does not matter.</summary>
    public static OxyColor Band => OxyColor.FromRgb(0xe3, 0xec, 0xe4);

    /// <summary>
    /// One ink a spec, told apart by people who see no red or green as well (M. Okabe, K. Ito, Color Universal Design, 2008), darkened to
    /// 4.5:1 on white.
    /// </summary>
    public static OxyColor[] Inks =>
        [
            OxyColor.FromRgb(0x00, 0x5a, 0x92),
            OxyColor.FromRgb(0xb4, 0x4a, 0x00),
            OxyColor.FromRgb(0x00, 0x73, 0x55),
            OxyColor.FromRgb(0x9c, 0x3d, 0x74),
            OxyColor.FromRgb(0x45, 0x4d, 0x55),
        ];

    /// <summary>One mark a spec, so that no plot speaks by colour alone.</summary>
    public static MarkerType[] Marks => [MarkerType.Circle, MarkerType.Square, MarkerType.Triangle, MarkerType.Diamond];

    /// <summary>An empty plot.</summary>
    public static PlotModel Plot() =>
        new()
        {
            DefaultFont = Letters,
            DefaultFontSize = LetterSize,
            TextColor = Ink,
            PlotAreaBorderColor = OxyColors.Transparent,
            PlotAreaBorderThickness = new OxyThickness(0),
            Padding = new OxyThickness(2, 6, 14, 2),
        };

    /// <summary>The names of the specs above a plot, one below the other where it is narrow.</summary>
    /// <param name="width">Width of the plot, CSS pixels.</param>
    public static Legend Legend(double width) =>
        new()
        {
            LegendPlacement = LegendPlacement.Outside,
            LegendPosition = LegendPosition.TopLeft,
            LegendOrientation = IsNarrow(width) ? LegendOrientation.Vertical : LegendOrientation.Horizontal,
            LegendMargin = 0,
            LegendPadding = 0,
        };

    /// <summary>Whether a plot is drawn for a phone.</summary>
    /// <param name="width">Its width, CSS pixels.</param>
    public static bool IsNarrow(double width) => width < 500;

    /// <summary>An axis of numbers along the bottom or the left.</summary>
    public static LinearAxis Axis(AxisPosition position, string title) =>
        new()
        {
            Position = position,
            Title = title,
            MajorGridlineStyle = LineStyle.Solid,
            MajorGridlineColor = Faint,
            MajorGridlineThickness = 1,
            MinorTickSize = 0,
            MajorTickSize = 0,
            TicklineColor = Ink,
            AxisTitleDistance = 6,
            IsZoomEnabled = false,
        };

    /// <summary>The plot as SVG, without the frame of a document.</summary>
    public static string Drawn(PlotModel plot, double width, double height)
    {
        using MemoryStream drawn = new();
        new SvgExporter
        {
            Width = width,
            Height = height,
            IsDocument = false,
            TextMeasurer = new WordWidths(),
        }.Export(plot, drawn);
        return new System.Text.UTF8Encoding(false).GetString(drawn.ToArray()).TrimStart('\uFEFF');
    }
}

/// <summary>
/// How much room words take, a little more than the Helvetica of most computers needs: the page is drawn before anybody knows which letters
/// it will be read in, and words without room are cut off. Own estimate: small letters 0.56 of the size, capitals 0.74, letters of other
/// scripts 1.
/// </summary>
internal sealed class WordWidths : RenderContextBase
{
    private const double LineHeight = 1.2;

    /// <inheritdoc/>
    public override int ClipCount => 0;

    /// <inheritdoc/>
    public override void PushClip(OxyRect clippingRectangle) => throw OnlyMeasures();

    /// <inheritdoc/>
    public override void PopClip() => throw OnlyMeasures();

    /// <inheritdoc/>
    public override void DrawLine(
        IList<ScreenPoint> points,
        OxyColor stroke,
        double thickness,
        EdgeRenderingMode edgeRenderingMode,
        double[] dashArray,
        LineJoin lineJoin
    ) => throw OnlyMeasures();

    /// <inheritdoc/>
    public override void DrawPolygon(
        IList<ScreenPoint> points,
        OxyColor fill,
        OxyColor stroke,
        double thickness,
        EdgeRenderingMode edgeRenderingMode,
        double[] dashArray,
        LineJoin lineJoin
    ) => throw OnlyMeasures();

    /// <inheritdoc/>
    public override void DrawText(
        ScreenPoint p,
        string text,
        OxyColor fill,
        string fontFamily,
        double fontSize,
        double fontWeight,
        double rotate,
        HorizontalAlignment halign,
        VerticalAlignment valign,
        OxySize? maxSize
    ) => throw OnlyMeasures();

    /// <inheritdoc/>
    public override OxySize MeasureText(string text, string fontFamily, double fontSize, double fontWeight) =>
        string.IsNullOrEmpty(text)
            ? OxySize.Empty
            : new OxySize(text.Split('\n').Max(line => line.Sum(WidthOf)) * fontSize, text.Split('\n').Length * LineHeight * fontSize);

    private static NotSupportedException OnlyMeasures() => new NotSupportedException("words are measured here, and nothing is drawn");

    private static double WidthOf(char letter) =>
        letter switch
        {
            >= 'A' and <= 'Z' or '%' or '@' => 0.74,
            < '\u0250' => 0.56,
            _ => 1,
        };
}
