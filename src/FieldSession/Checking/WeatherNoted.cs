using System.Collections.Immutable;
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
        Weather weather = new(mark)
        {
            Air = Air,
            Road = Road,
            Wind = Wind,
            Gust = Gust,
            Surface = Surface,
        };
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

/// <summary>
/// Reads <c>weather air=6.1 road=5 wind=2.5 gust=4 surface=dry</c>, in the plan's units; any part can be left away. As people say it,
/// <c>weather air 8 road 7 wind 2 dry</c> and <c>air=8</c> alone are the same.
/// </summary>
public static class WeatherText
{
    private static readonly ImmutableArray<string> Measured = ["air", "road", "wind", "gust", "gusts"];
    private static readonly ImmutableArray<string> Surfaces = ["dry", "damp", "moist", "wet", "icy", "snow"];

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, UnitSystem units)
    {
        string[] words = Typed.Words(text);
        bool isNamed = words.Length > 0 && Typed.Is(words[0], "weather");
        if (!isNamed && !BeginsWithPart(words))
        {
            return null;
        }

        return isNamed && words.Length == 1
            ? Parsed.No(CheckingWords.WeatherSaysNothing, CheckingWords.WeatherForm(units))
            : Of(words.Skip(isNamed ? 1 : 0), units);
    }

    private static Parsed Of(IEnumerable<string> words, UnitSystem units)
    {
        WeatherNoted weather = new(null, null, null, null, null);
        foreach (string word in Parts([.. words]))
        {
            (WeatherNoted Next, string? Wrong) read = Read(weather, word, units);
            if (read.Wrong is { } wrong)
            {
                return Parsed.No(wrong, CheckingWords.WeatherForm(units));
            }

            weather = read.Next;
        }

        return Parsed.As(weather);
    }

    private static bool BeginsWithPart(string[] words) =>
        words.Length > 0
        && words[0].Split('=') switch
        {
            [var name, { Length: > 0 }] => IsMeasured(name) || Typed.Is(name, "surface"),
            [var name] => words.Length > 1 && IsMeasured(name) && Typed.Number(words[1]) is not null,
            _ => false,
        };

    private static bool IsMeasured(string name) => Measured.Contains(name, StringComparer.OrdinalIgnoreCase);

    // "air 8" is "air=8", and a state of the surface says what it is
    private static IEnumerable<string> Parts(string[] words)
    {
        for (int i = 0; i < words.Length; i++)
        {
            bool isPair = i + 1 < words.Length && (IsMeasured(words[i]) || Typed.Is(words[i], "surface"));
            if (isPair)
            {
                yield return $"{words[i]}={words[++i]}";
            }
            else
            {
                yield return Surfaces.Contains(words[i], StringComparer.OrdinalIgnoreCase) ? $"surface={words[i]}" : words[i];
            }
        }
    }

    private static (WeatherNoted Next, string? Wrong) Read(WeatherNoted weather, string word, UnitSystem units)
    {
        int equals = word.IndexOf('=', StringComparison.Ordinal);
        if (equals < 1 || equals == word.Length - 1)
        {
            return (weather, CheckingWords.IsNoPartOfWeather(word));
        }

        string name = Typed.Is(word[..equals], "gusts") ? "gust" : word[..equals].ToLowerInvariant();
        string value = word[(equals + 1)..];
        if (name == "surface")
        {
            return (weather with { Surface = value.ToLowerInvariant() }, null);
        }

        if (name is not ("air" or "road" or "wind" or "gust"))
        {
            return (weather, CheckingWords.PartsOfWeatherAre(name));
        }

        if (Typed.Number(value) is not { } number)
        {
            return (weather, CheckingWords.IsNoNumber(value));
        }

        try
        {
            return (With(weather, name, number, units), null);
        }
        catch (QuantityOutOfRangeException absurd)
        {
            return (weather, $"{name}={value} can't be: {absurd.Why}");
        }
    }

    private static WeatherNoted With(WeatherNoted weather, string name, double number, UnitSystem units) =>
        name switch
        {
            "air" => weather with { Air = Degrees(number, units) },
            "road" => weather with { Road = Degrees(number, units) },
            "wind" => weather with { Wind = Blowing(number, units) },
            _ => weather with { Gust = Blowing(number, units) },
        };

    private static Temperature Degrees(double number, UnitSystem units) =>
        units == UnitSystem.Imperial ? Temperature.FromFahrenheit(number) : Temperature.FromCelsius(number);

    private static WindSpeed Blowing(double number, UnitSystem units) =>
        units == UnitSystem.Imperial ? WindSpeed.FromMph(number) : WindSpeed.FromMetresPerSecond(number);
}
