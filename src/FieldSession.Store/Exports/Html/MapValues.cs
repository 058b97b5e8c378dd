using System.Globalization;
using FieldSession.Reporting;
using Fluid.Values;

namespace FieldSession.Store.Exports.Html;

/// <summary>The table of readings as a template sees it.</summary>
internal static class MapValues
{
    private const double LineWidth = 84;
    private const double LineHeight = 18;
    private const double Air = 3;

    // a line that shows less than this would make mountains of tenths
    private const double SmallestSpanDb = 3;

    /// <summary>The table.</summary>
    public static FluidValue Of(ReadingsMap map, string title) => Values.Parts(
        ("kind", Values.Text("map")),
        ("about", Values.Text(title)),
        ("columns", Values.List(map.Columns.Select(Values.Text))),
        ("rows", Values.List(map.Rows.Select(Row))));

    private static FluidValue Row(MapRow row) => Values.Parts(
        ("name", Values.Text(row.Name)),
        ("is_long", Values.Truth(SectionValues.IsLong(row.Name))),
        ("line", Values.Drawn(Line(row.Cells))),
        ("cells", Values.List(row.Cells.Select(Cell))));

    private static FluidValue Cell(MapCell cell) => Values.Parts(
        ("levels", Values.Text(cell.Levels)),
        ("mark", Values.Text(cell.Mark)),
        ("is_out", Values.Truth(cell.IsOut)),
        ("heat", Values.Text(cell.Heat switch
        {
            MapHeat.FarAbove => "heat2",
            MapHeat.Above => "heat1",
            MapHeat.FarBelow => "cool2",
            MapHeat.Below => "cool1",
            _ => "",
        })));

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
        IEnumerable<string> dots = cells.Index()
            .Where(cell => cell.Item.LevelDb is not null)
            .Select(cell => PageWords.Dot(Across(cell.Index), Up(cell.Item.LevelDb!.Value)));
        string points = string.Join(' ', cells.Index().Where(cell => cell.Item.LevelDb is not null).Select(cell => $"{Across(cell.Index)},{Up(cell.Item.LevelDb!.Value)}"));
        return PageWords.SmallLine(LineWidth, LineHeight, points, string.Concat(dots));
    }

    private static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
