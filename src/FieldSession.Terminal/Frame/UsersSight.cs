using System.Globalization;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal;

/// <summary>How a user last looked at the screens: remembered from one day to the next, nothing of any study.</summary>
/// <param name="Look">Name of the look; null: none was chosen.</param>
/// <param name="IsCovered">Whether the running comparison was covered.</param>
/// <param name="Columns">Columns of the terminal; null: not known.</param>
/// <param name="Rows">Rows of the terminal; null: not known.</param>
internal sealed record UsersSight(string? Look = null, bool IsCovered = false, int? Columns = null, int? Rows = null)
{
    private const int MostCells = 1000;

    /// <summary>What the lines of the file tell; a line that tells nothing is passed over.</summary>
    public static UsersSight Of(IEnumerable<string> lines) =>
        lines
            .Select(line => line.Split('=', StringSplitOptions.TrimEntries))
            .Where(parts => parts.Length == 2)
            .Aggregate(new UsersSight(), (sight, parts) => sight.With(parts[0], parts[1]));

    /// <summary>The lines of the file.</summary>
    public IEnumerable<string> Lines =>
        [
            .. Look is null ? Array.Empty<string>() : [$"look = {Look}"],
            $"covered = {(IsCovered ? "yes" : "no")}",
            .. Columns is { } columns && Rows is { } rows
                ? [string.Create(CultureInfo.InvariantCulture, $"size = {columns}x{rows}")]
                : Array.Empty<string>(),
        ];

    /// <summary>The look to begin with: no colour where the surroundings ask for none, else the last one chosen.</summary>
    public Palette PaletteFor(string? noColour) => string.IsNullOrEmpty(noColour) ? Palette.Named(Look) : Palette.For(noColour);

    private UsersSight With(string name, string value) =>
        name switch
        {
            "look" => this with { Look = value },
            "covered" => this with { IsCovered = value == "yes" },
            "size" when value.Split('x') is [var columns, var rows] => this with { Columns = Cells(columns), Rows = Cells(rows) },
            _ => this,
        };

    private static int? Cells(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int cells) && cells is > 0 and <= MostCells ? cells : null;
}
