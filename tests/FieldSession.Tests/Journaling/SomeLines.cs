using FieldSession.Journal;

namespace FieldSession.Tests.Journaling;

/// <summary>Lines of a made-up day, a few seconds apart.</summary>
internal static class SomeLines
{
    public const string OneLaptop = "00112233445566aa";
    public const string OtherLaptop = "00112233445566bb";

    public static List<Line> Of(int count, string strand = OneLaptop, Line? after = null, string note = "the road is dry")
    {
        List<Line> lines = [];
        Line? last = after;
        for (int i = 0; i < count; i++)
        {
            last = After(last, strand, note);
            lines.Add(last);
        }

        return lines;
    }

    public static Line After(Line? last, string strand = OneLaptop, string note = "the road is dry")
    {
        int number = (last?.Number ?? 0) + 1;
        DateTimeOffset at = new DateTimeOffset(2026, 11, 25, 9, 30, 0, TimeSpan.Zero).AddSeconds(7 * number);
        return Line.Make(
            number,
            last?.Hash ?? Line.NoHash,
            at,
            strand,
            "note",
            1,
            body =>
            {
                body.WriteStartObject();
                body.WriteString("text", $"{note}, {number}: \"lane 2\", 18 °C\nsecond row");
                body.WriteNumber("km", number * 1.5);
                body.WriteEndObject();
            }
        );
    }

    public static string[] Hashes(this IEnumerable<Line> lines) => [.. lines.Select(line => line.Hash)];
}
