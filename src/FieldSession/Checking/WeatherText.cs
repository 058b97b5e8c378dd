using FieldSession.Journal;
using FieldSession.Measures;

namespace FieldSession.Checking;

/// <summary>Reads <c>weather air=6.1 road=5 wind=2.5 gust=4 surface=dry</c>, in the plan's units; any part can be left away.</summary>
public static class WeatherText
{
    private const string Form = CheckingWords.WeatherForm;

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, UnitSystem units)
    {
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !Typed.Is(words[0], "weather"))
        {
            return null;
        }

        if (words.Length == 1)
        {
            return Parsed.No(CheckingWords.WeatherSaysNothing, Form);
        }

        WeatherNoted weather = new(null, null, null, null, null);
        foreach (string word in words.Skip(1))
        {
            (WeatherNoted Next, string? Wrong) read = Read(weather, word, units);
            if (read.Wrong is { } wrong)
            {
                return Parsed.No(wrong, Form);
            }

            weather = read.Next;
        }

        return Parsed.As(weather);
    }

    private static (WeatherNoted Next, string? Wrong) Read(WeatherNoted weather, string word, UnitSystem units)
    {
        int equals = word.IndexOf('=', StringComparison.Ordinal);
        if (equals < 1 || equals == word.Length - 1)
        {
            return (weather, CheckingWords.IsNoPartOfWeather(word));
        }

        string name = word[..equals].ToLowerInvariant();
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

    private static WeatherNoted With(WeatherNoted weather, string name, double number, UnitSystem units) => name switch
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
