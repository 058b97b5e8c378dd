using System.Globalization;
using System.Text.RegularExpressions;
using FieldSession.State;

namespace FieldSession.Store.Planning;

/// <summary>Reads what the plan writes down of car, tyres and meter for whoever reads the report. Nothing is computed from it.</summary>
internal static partial class PlanFacts
{
    private const int Longest = 120;
    private const int MostHours = 14;
    private const int MinutesAnHour = 60;

    /// <summary>The words.</summary>
    public static IReadOnlyList<string> Names => ["car", "tyres_made", "tread", "hardness", "meter", "meter_position", "utc_offset"];

    /// <summary>The plan with these words; without one of them it has no facts.</summary>
    public static Plan With(Plan plan, PlanWords words, Troubles troubles) => Names.All(name => words.Find(name) is null)
        ? plan
        : plan with
        {
            FactsTold = new DayFacts
            {
                Car = words.Text("car", Longest, troubles),
                TyresMade = words.Text("tyres_made", Longest, troubles),
                Tread = words.Text("tread", Longest, troubles),
                Hardness = words.Text("hardness", Longest, troubles),
                Meter = words.Text("meter", Longest, troubles),
                MeterPosition = words.Text("meter_position", Longest, troubles),
                UtcOffsetMinutes = OffsetOf(words, troubles),
            },
        };

    private static int? OffsetOf(PlanWords words, Troubles troubles)
    {
        if (words.Text("utc_offset", Longest, troubles) is not { } text)
        {
            return null;
        }

        Match match = Offset().Match(text);
        int Part(int group) => int.Parse(match.Groups[group].ValueSpan, CultureInfo.InvariantCulture);
        if (match.Success && Part(2) <= MostHours && Part(3) < MinutesAnHour)
        {
            int minutes = Part(2) * MinutesAnHour + Part(3);
            return match.Groups[1].Value == "-" ? -minutes : minutes;
        }

        words.Find("utc_offset")!.Refuse(troubles, $"'utc_offset' is {Troubles.Quoted(text)}", PlanFolderWords.UtcOffsetForm);
        return null;
    }

    [GeneratedRegex(@"^([+-])(\d\d):(\d\d)$")]
    private static partial Regex Offset();
}
