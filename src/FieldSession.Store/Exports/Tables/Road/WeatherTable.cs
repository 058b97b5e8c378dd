using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>The conditions noted.</summary>
internal static class WeatherTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<Weather>(
            "weather",
            "The conditions: one row a note of them; what was not typed is empty.",
            [
                Column.Count<Weather>("line", "journal line", w => w.Mark.Place).Always,
                Column.Time<Weather>("at", "when it was noted", w => w.Mark.At).Always,
                Column.Number<Weather>("air_c", "degC", "air temperature", w => w.Air?.Celsius),
                Column.Number<Weather>("road_c", "degC", "temperature of the road surface", w => w.Road?.Celsius),
                Column.Number<Weather>("wind_m_s", "m/s", "mean wind", w => w.Wind?.MetresPerSecond),
                Column.Number<Weather>("gust_m_s", "m/s", "gusts", w => w.Gust?.MetresPerSecond),
                Column.Text<Weather>("surface", "state of the surface: dry, damp, wet, or the crew's word", w => w.Surface),
                Column
                    .YesNo<Weather>("typed_later", "whether it was logged on paper and typed in afterwards", w => w.Mark.IsTypedLater)
                    .Always,
            ],
            source => source.Study.Weather
        )
        {
            Key = ["line"],
        };
}
