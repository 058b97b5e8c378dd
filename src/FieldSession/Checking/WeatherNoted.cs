using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Checking;

/// <summary>The conditions were looked at. What was not typed stays unknown.</summary>
/// <param name="Air">Air temperature.</param>
/// <param name="Road">Temperature of the road surface.</param>
/// <param name="Wind">Mean wind.</param>
/// <param name="Gust">Gusts.</param>
/// <param name="Surface">State of the surface, such as dry.</param>
public sealed record WeatherNoted(Temperature? Air, Temperature? Road, WindSpeed? Wind, WindSpeed? Gust, string? Surface) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => Gate.WhileDataAreOpen(study);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        Weather weather = new(mark) { Air = Air, Road = Road, Wind = Wind, Gust = Gust, Surface = Surface };
        return (study with { Weather = study.Weather.Add(weather) }).Undoably(study, mark, "weather");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        UnitSystem units = after.Plan?.Units ?? UnitSystem.Metric;
        string?[] parts =
        [
            Air is { } air ? $"air {air.In(units)}" : null,
            Road is { } road ? $"road {road.In(units)}" : null,
            Wind is { } wind ? $"wind {wind.In(units)}" : null,
            Gust is { } gust ? $"gust {gust.In(units)}" : null,
            Surface is { } surface ? $"{surface}" : null,
        ];
        string said = string.Join(", ", parts.OfType<string>());
        string warnings = string.Join("; ", RunChecks.WeatherWarnings(after).Select(w => "look out: " + w));
        return new Echo($"weather {said}{(warnings.Length > 0 ? "; " + warnings : "")}");
    }
}
