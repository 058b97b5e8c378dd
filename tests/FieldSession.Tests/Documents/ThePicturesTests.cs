using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Documents;

/// <summary>
/// The pictures of the documents are the program's own screens, drawn as SVG. Where a screen changes, these tests say so;
/// 'FIELDSESSION_APPROVE=1 dotnet test --filter Pictures' draws them again.
/// </summary>
public sealed partial class ThePicturesTests
{
    private const string Folder = "docs/pictures";

    // What is typed on the last run of the demo, and how long a reader needs to see it: about twenty seconds in all.
    private static readonly ImmutableArray<(string Keys, double Seconds)> Reading =
    [
        ("", 2.5),
        ("<Enter>", 3),
        ("54", 1),
        ("57", 1),
        ("<Enter>", 3),
        ("6470", 1.5),
        ("t", 1.5),
        ("<Enter>", 3),
        (";truck overtaking us", 1.5),
        ("<Enter>", 2),
    ];

    [Fact]
    public void The_drive_screen_is_drawn_as_it_is_after_a_spoilt_reading()
    {
        using ADemoDay day = new ADemoDay().TypedToTheLastRun();
        using Tui tui = day.Screens();
        tui.Keys("<Enter>5457<Enter>6470t<Enter>");
        Approve(
            "drive",
            "The drive screen of the demo: the next segment in large letters, the reading just stored as spoilt by traffic, "
                + "the codes so far",
            tui
        );
    }

    [Fact]
    public void The_answer_card_is_drawn_as_the_crew_sees_it_blind()
    {
        using ADemoDay day = new ADemoDay().Typed("quillmere/day.txt");
        using Tui tui = day.Screens(screen: "review");
        tui.Keys("parked<Enter>");
        Approve(
            "answer",
            "The blind answer of the demo on the review screen: one sentence, meter, ear, worth, what the day could have "
                + "shown, by code only",
            tui
        );
    }

    [Fact]
    public void A_reading_is_drawn_key_by_key_as_a_moving_picture()
    {
        using ADemoDay day = new ADemoDay().TypedToTheLastRun();
        using Tui tui = day.Screens();
        ImmutableArray<(ImmutableArray<ImmutableArray<StyledText>> Screen, double Seconds)> screens =
        [
            .. Reading.Select(step => (tui.Keys(step.Keys).Looks, step.Seconds)),
        ];
        Assert.Equal(20, screens.Sum(one => one.Seconds));
        Golden.Approve(
            $"{Folder}/reading.svg",
            ScreenPicture.Moving("Twenty seconds of a run: a reading, a reading that traffic spoilt, a note on it", screens)
        );
    }

    [Fact]
    public void The_sample_report_is_the_report_of_the_demo()
    {
        (string _, string html) = AReport.OfDemo("quillmere");
        Golden.Approve("docs/sample/report.html", Hash().Replace(html, "(64 hexadecimal digits)"));
    }

    [Fact]
    public void The_photographs_of_the_report_were_taken_of_the_report_as_it_is()
    {
        string page = File.ReadAllText(Path.Combine(Repository.Root, "docs/sample/report.html"));
        string hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(page)));
        string taken = File.ReadAllText(Path.Combine(Repository.Root, $"{Folder}/taken-of.txt")).Trim();
        Assert.True(
            hash == taken,
            $"{Folder}/report-*.png were taken of another page: 'bash .ci/pictures PROGRAM' takes them again ({taken}, now {hash})"
        );
    }

    private static void Approve(string name, string title, Tui tui) =>
        Golden.Approve($"{Folder}/{name}.svg", ScreenPicture.Of(title, tui.Looks));

    [GeneratedRegex("[0-9a-f]{64}")]
    private static partial Regex Hash();
}
