using System.Globalization;
using FieldSession.Reporting;
using Fluid.Values;

namespace FieldSession.Store.Exports.Html;

/// <summary>A section of the report as a template sees it.</summary>
internal static class SectionValues
{
    private const double WideColumns = 720;
    private const double NarrowColumns = 340;

    // What is longer may be broken inside a word, so that no cell makes a table wider than paper; own rule.
    private const int LongestWord = 20;
    private const int LongestCell = 60;

    // An interval with its units is as long; a sentence that begins with a number is longer.
    private const int LongestFigure = 24;

    /// <summary>The section; blocks with nothing in them are left out.</summary>
    /// <param name="section">The section.</param>
    /// <param name="isFolded">Whether the page may fold it.</param>
    public static FluidValue Of(ReportSection section, bool isFolded) =>
        Values.Parts(
            ("id", Values.Text(PartNames.Of(section.Part))),
            ("title", Values.Text(section.Title)),
            ("is_answer", Values.Truth(section.Part == ReportPart.Answer)),
            ("is_verdict", Values.Truth(section.Part == ReportPart.Verdict)),
            ("is_detail", Values.Truth(isFolded)),
            (
                "blocks",
                Values.List(
                    section
                        .Blocks.Index()
                        .Select(block => Of(block.Item, $"{PartNames.Of(section.Part)}-{block.Index + 1}", section))
                        .OfType<FluidValue>()
                )
            )
        );

    private static FluidValue? Of(ReportBlock block, string id, ReportSection section) =>
        block switch
        {
            Subheading heading => Block("subheading", ("words", Values.Text(heading.Words))),
            Headline headline => Block("headline", ("words", Values.Text(headline.Words))),
            Paragraph paragraph => Block("paragraph", ("words", Values.Text(paragraph.Words))),
            Points { Items.Count: > 0 } points => Block("points", ("items", Values.List(points.Items.Select(Values.Text)))),
            LabelledLines { Items.Count: > 0 } lines => Block("lines", ("lines", Values.List(lines.Items.Select(Line)))),
            ReadingsMap { Rows.Count: > 0 } map => MapValues.Of(map, PageWords.EveryReading),
            ReportTable { Rows.Count: > 0 } table => Table(table, id, section),
            ReportChart { IsEmpty: false } chart => Chart(chart, id),
            _ => null,
        };

    private static FluidValue Line(LabelledLine line) =>
        Values.Parts(("label", Values.Text(line.Label)), ("word", Values.Text(line.Word)), ("words", Values.Text(line.Words)));

    private static FluidValue Block(string kind, params (string Name, FluidValue Value)[] parts) =>
        Values.Parts([("kind", Values.Text(kind)), .. parts]);

    private static FluidValue Table(ReportTable table, string id, ReportSection section)
    {
        bool[] areNumbers =
        [
            .. Enumerable.Range(0, table.Columns.Count).Select(column => column > 0 && table.Rows.All(row => IsNumber(row[column]))),
        ];
        return Block(
            "table",
            ("about", Values.Text($"{section.Title}, {id.Split('-')[^1]}: {string.Join(", ", table.Columns)}")),
            ("columns", Values.List(table.Columns.Select((name, column) => Cell(name, areNumbers[column])))),
            ("rows", Values.List(table.Rows.Select(row => Values.List(row.Select((cell, column) => Cell(cell, areNumbers[column]))))))
        );
    }

    private static FluidValue Cell(string words, bool isNumber) =>
        Values.Parts(("words", Values.Text(words)), ("is_number", Values.Truth(isNumber)), ("is_long", Values.Truth(IsLong(words))));

    /// <summary>Whether the words of a cell may be broken inside a word.</summary>
    public static bool IsLong(string words) => words.Split(' ').Any(word => word.Length > LongestWord) || words.Length > LongestCell;

    // A column of figures is set flush right; unknown is said in words and may be among them.
    private static bool IsNumber(string cell) =>
        cell.Length == 0 || cell == Reviewing.Figures.Unknown || (cell.Length <= LongestFigure && BeginsAsNumber(cell));

    private static bool BeginsAsNumber(string cell) =>
        char.IsAsciiDigit(cell[0]) || (cell[0] is '+' or '-' or '<' && cell.Length > 1 && (char.IsAsciiDigit(cell[1]) || cell[1] == ' '));

    private static FluidValue Chart(ReportChart chart, string id) =>
        Block(
            "chart",
            ("title", Values.Text(chart.Title)),
            ("words", Values.Text(chart.Words)),
            ("key", Values.Text(KeyOf(chart))),
            ("wide", Values.Drawn(SvgPiece.Of(Drawn(chart, WideColumns), $"{id}-wide", chart.Title, chart.Words))),
            ("narrow", Values.Drawn(SvgPiece.Of(Drawn(chart, NarrowColumns), $"{id}-narrow", chart.Title, chart.Words)))
        );

    private static string Drawn(ReportChart chart, double width) =>
        chart switch
        {
            IntervalChart intervals => IntervalDrawing.Of(intervals, width),
            RunLevelChart levels => RunLevelDrawing.Of(levels, width),
            SpectrumChart spectra => SpectrumDrawing.Of(spectra, width),
            _ => throw new ArgumentException($"{chart.GetType().Name}: nobody knows how to draw it", nameof(chart)),
        };

    private static string KeyOf(ReportChart chart) =>
        chart switch
        {
            IntervalChart intervals => "Dot: difference"
                + (intervals.HasIntervals ? PageWords.KeyToIntervals : "")
                + (intervals.HasMargins ? PageWords.KeyToMargins : "")
                + (intervals.MarkedMeans is { } means ? $". Filled: {means}." : "."),
            SpectrumChart => PageWords.KeyToSpectra,
            RunLevelChart { Drifts.Count: > 0 } => PageWords.KeyToRunLevelsWithDrift,
            _ => PageWords.KeyToRunLevels,
        };
}

/// <summary>The table of readings as a template sees it.</summary>
internal static class MapValues
{
    private const double LineWidth = 84;
    private const double LineHeight = 18;
    private const double Air = 3;

    // a line that shows less than this would make mountains of tenths
    private const double SmallestSpanDb = 3;

    /// <summary>The table.</summary>
    public static FluidValue Of(ReadingsMap map, string title) =>
        Values.Parts(
            ("kind", Values.Text("map")),
            ("about", Values.Text(title)),
            ("columns", Values.List(map.Columns.Select(Values.Text))),
            ("rows", Values.List(map.Rows.Select(Row)))
        );

    private static FluidValue Row(MapRow row) =>
        Values.Parts(
            ("name", Values.Text(row.Name)),
            ("is_long", Values.Truth(SectionValues.IsLong(row.Name))),
            ("line", Values.Drawn(Line(row.Cells))),
            ("cells", Values.List(row.Cells.Select(Cell)))
        );

    private static FluidValue Cell(MapCell cell) =>
        Values.Parts(
            ("levels", Values.Text(cell.Levels)),
            ("mark", Values.Text(cell.Mark)),
            ("is_out", Values.Truth(cell.IsOut)),
            (
                "heat",
                Values.Text(
                    cell.Heat switch
                    {
                        MapHeat.FarAbove => "heat2",
                        MapHeat.Above => "heat1",
                        MapHeat.FarBelow => "cool2",
                        MapHeat.Below => "cool1",
                        _ => "",
                    }
                )
            )
        );

    // the same numbers are in the row: nothing for whoever does not see it
    private static string Line(IReadOnlyList<MapCell> cells)
    {
        double[] known = [.. cells.Select(cell => cell.LevelDb).OfType<double>()];
        if (known.Length < 2)
        {
            return "";
        }

        double middle = (known.Min() + known.Max()) / 2;
        double span = Math.Max(known.Max() - known.Min(), SmallestSpanDb);
        string Across(int place) => Number(Air + place * (LineWidth - 2 * Air) / Math.Max(1, cells.Count - 1));
        string Up(double levelDb) => Number(LineHeight / 2 - (levelDb - middle) / span * (LineHeight - 2 * Air));
        IEnumerable<string> dots = cells
            .Index()
            .Where(cell => cell.Item.LevelDb is not null)
            .Select(cell => PageWords.Dot(Across(cell.Index), Up(cell.Item.LevelDb!.Value)));
        string points = string.Join(
            ' ',
            cells
                .Index()
                .Where(cell => cell.Item.LevelDb is not null)
                .Select(cell => $"{Across(cell.Index)},{Up(cell.Item.LevelDb!.Value)}")
        );
        return PageWords.SmallLine(LineWidth, LineHeight, points, string.Concat(dots));
    }

    private static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
