using System.Text.RegularExpressions;
using FieldSession.State;
using FieldSession.Store.Planning;
using FieldSession.Terminal.Demonstration;
using FieldSession.Tests.House;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Screens;

/// <summary>
/// The demo's day with names as long as a crew writes them: roads of up to 45 letters, start marks of up to 60, people with two first
/// names. Whatever somebody has to act on is there to its end on 80 columns.
/// </summary>
public class LongNamesTests
{
    private const string Cut = "…";

    private static readonly (string Short, string Long)[] Names =
    [
        ("Quillmere entry", "Quillmere entry from the heron to the chapel"),
        ("Sallowheath lane", "Sallowheath lane between the two level crossings"),
        ("Wendlerow patches", "Wendlerow patches behind the agricultural school"),
        ("Carrowedge", "Carrowedge with the long bend above the reservoir"),
        ("Millrasp street", "Millrasp street as far as the covered market"),
        ("town sign with the heron", "second lamp post behind the town sign with the painted heron"),
        ("where the chippings begin", "where the new chippings begin behind the last house on the right"),
        ("bakery corner", "corner of the old bakery at the pedestrian crossing"),
        ("Ro", "Marie-Christine"),
        ("Tam", "Bartholomew"),
        ("Ilse", "Ilse-Wilhelmine"),
        ("impact boom", "boom over a single joint"),
    ];

    [Fact]
    public void The_drive_screen_shows_the_name_and_the_start_mark_of_the_segment_that_is_due()
    {
        using Tui tui = new(Driven(upTo: 8).Typed("run 417"));
        Assert.Contains(Names[0].Long, tui.Screen, StringComparison.Ordinal);
        Assert.Contains(Names[5].Long, tui.Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("review", "parked<Enter>")]
    [InlineData("predict", "parked<Enter>")]
    [InlineData("predict", "parked<Enter>1<Enter>2<Enter>4<Enter>")]
    [InlineData("report", "parked<Enter>")]
    [InlineData("rate", "parked<Enter>")]
    [InlineData("rate", "parked<Enter>1<Enter>")]
    [InlineData("legs", "parked<Enter>")]
    public void A_screen_of_the_evening_shows_every_sentence_to_its_end(string screen, string keys)
    {
        ADay day = Driven(upTo: 9).Typed("calibration after 93.9");
        using Tui tui = new(day, screen: screen);
        TheHouse.NoneOf(
            tui.Keys(keys).Rows.Where(row => row.Contains(Cut, StringComparison.Ordinal) && !IsSegmentByNumber(row, day.Study.Plan!)),
            "a sentence is shown to its end"
        );
    }

    // in a list a segment is known by its number, so its name may be cut
    private static bool IsSegmentByNumber(string row, Plan plan) =>
        plan.Route.Any(segment =>
            Regex.Match(row, $@"\b{segment.Number}\s+(\S[^{Cut}]*){Cut}") is { Success: true } cut
            && segment.Name.StartsWith(cut.Groups[1].Value, StringComparison.Ordinal)
        );

    private static ADay Driven(int upTo)
    {
        PlanReading reading = PlanFolder.Parse(LongOf("quillmere/plan.toml"), LongOf("quillmere/route.csv"), "quillmere");
        Assert.Empty(reading.Problems);
        ADay day = new(reading.Plan);
        foreach ((DateTimeOffset at, string line) in ADemoDay.Lines("quillmere/day.txt"))
        {
            if (
                line.StartsWith("calibration after", StringComparison.Ordinal)
                || (line.StartsWith("run ", StringComparison.Ordinal) && day.Study.Runs.Count == upTo)
            )
            {
                break;
            }

            day.Clock.Now = at;
            day.Typed(LongIn(line));
        }

        return day;
    }

    private static string LongOf(string file) => LongIn(DemoFiles.Text(file));

    private static string LongIn(string text) =>
        Names.Aggregate(text, (words, name) => Regex.Replace(words, $@"\b{name.Short}\b", name.Long));
}
