using FieldSession.Store.Sealing;
using FieldSession.Terminal;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Revealing;

/// <summary>A key that two people hold: sealed, checked, listed and opened with both passphrases, by command and on the screen.</summary>
public sealed class AKeyOfTwoPeopleIsOpenedByBoth : IDisposable
{
    private const string First = "first quiet words";
    private const string Second = "second quiet words";

    private readonly AtThePrompt _prompt = new();
    private readonly string[] _seal;

    public AKeyOfTwoPeopleIsOpenedByBoth()
    {
        _prompt.Write("plan/plan.toml", AWholeDay.Plan);
        _prompt.Write("plan/route.csv", AWholeDay.Route);
        _prompt.Must(0, ["start", _prompt.Here("plan"), _prompt.Study]);
        _seal =
        [
            "seal",
            _prompt.Study,
            "--specs",
            _prompt.Write("specs.txt", "ALPHA\nBETA\n"),
            "--key",
            _prompt.Here("a.key"),
            "--two-people",
        ];
    }

    public void Dispose() => _prompt.Dispose();

    [Fact]
    public void Both_passphrases_are_asked_for_one_after_the_other_by_every_command_that_opens_the_key()
    {
        Assert.Contains("second person, passphrase of your own", Asked(0, _seal, First, Second));
        Assert.Equal(2, KeyFile.LabelOf(_prompt.Here("a.key"), out _)!.People);
        Asked(0, ["keycheck", _prompt.Here("a.key"), "--study", _prompt.Study], First, Second);
        Assert.Contains("BETA", Asked(0, ["fitting", _prompt.Here("a.key"), "--csv"], First, Second));
        Drive();
        string[] reveal = ["reveal", _prompt.Study, "--key", _prompt.Here("a.key"), .. Marks(), "--reader", "Ro", "--reader", "Ilse"];
        Assert.Contains("BETA", Asked(0, reveal, First, Second));
        Assert.True(_prompt.Now().Opening!.CommitmentHolds);
    }

    [Theory]
    [InlineData(First, "")]
    [InlineData(Second, First)]
    [InlineData(First, First)]
    [InlineData("", Second)]
    public void One_of_them_alone_or_in_the_other_place_opens_nothing(string first, string second)
    {
        Asked(0, _seal, First, Second);
        string list = Asked(1, ["fitting", _prompt.Here("a.key"), "--csv"], first, second);
        Assert.DoesNotContain("ALPHA", list, StringComparison.Ordinal);
        Drive();
        Assert.DoesNotContain(
            "ALPHA",
            Asked(1, ["reveal", _prompt.Study, "--key", _prompt.Here("a.key")], first, second),
            StringComparison.Ordinal
        );
        Assert.Null(_prompt.Now().Opening);
    }

    [Fact]
    public void On_the_screen_the_second_person_is_asked_after_the_first_and_a_wrong_word_begins_with_the_first_again()
    {
        Asked(0, _seal, First, Second);
        Drive();
        string[] marks = [.. Marks().Where(word => word != "--mark").Select(mark => mark.Split('=')[1])];
        using OpenedStudy opened = OpenedStudy.At(_prompt.Study, _prompt.Outside());
        using Tui tui = Screens(opened);
        tui.Watcher = screen => Assert.DoesNotContain("quiet words", screen, StringComparison.Ordinal);
        tui.Keys($"parked<Enter>a.key<Enter>{First}<Enter>");
        Assert.Contains("the second person types theirs", tui.Screen, StringComparison.Ordinal);
        tui.Keys("wrong quiet words<Enter>");
        Assert.Contains("the custodian types the passphrase", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("wrong passphrase", tui.Screen, StringComparison.Ordinal);
        tui.Keys($"{First}<Enter>{Second}<Enter>");
        Assert.Contains("the mark under the tape", tui.Screen, StringComparison.Ordinal);
        tui.Keys($"{marks[0]}<Enter>{marks[1]}<Enter>Ro<Enter>Ilse<Enter><Enter>");
        Assert.Contains("ok  it gives the published commitment", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void At_a_keyboard_Enter_takes_the_words_by_lot_and_they_are_typed_once_by_each_of_the_two()
    {
        StringWriter said = new();
        Queue<char> keys = new();
        int asked = 0;
        ConsoleKeyInfo Press()
        {
            if (keys.Count == 0)
            {
                asked++;
                keys = new(asked % 2 == 1 ? "\r" : $"{Offered(said)}\r");
            }

            char key = keys.Dequeue();
            return new ConsoleKeyInfo(key, key == '\r' ? ConsoleKey.Enter : ConsoleKey.None, false, false, false);
        }

        Assert.Equal(
            0,
            CommandLine.Run(_seal, _prompt.Outside() with { Error = said, Output = new StringWriter(), ReadKeyUnseen = Press })
        );
        Assert.Equal(4, asked);
        string[] both =
        [
            .. said.ToString()
                .Split('\n')
                .Where(line => line.StartsWith("four words by lot", StringComparison.Ordinal))
                .Select(line => line.Split(": ")[1].Trim()),
        ];
        Assert.Equal(2, both.Distinct().Count());
        Assert.NotNull(_prompt.Outside().KeyFile.Open(_prompt.Here("a.key"), TwoPassphrases.Joined(both[0], both[1])).Key);
    }

    private static string Offered(StringWriter said) =>
        said.ToString().Split('\n').Last(line => line.StartsWith("four words by lot", StringComparison.Ordinal)).Split(": ")[1].Trim();

    private string Asked(int code, string[] words, string first, string second) =>
        _prompt.Must(code, words, $"{first}\n{second}\n", passphrase: null);

    private void Drive()
    {
        _prompt.Enter(AWholeDay.Ready).Drive(6);
        _prompt.Predict(_prompt.Now().Codes.First());
    }

    private IEnumerable<string> Marks() =>
        _prompt
            .Outside()
            .KeyFile.Open(_prompt.Here("a.key"), TwoPassphrases.Joined(First, Second))
            .Key!.Places.OrderBy(line => _prompt.Now().DrivenCodes.ToList().IndexOf(line.Code))
            .SelectMany(line => new[] { "--mark", $"{line.Code}={line.UnderTape}" });

    private Tui Screens(OpenedStudy opened) =>
        new(
            opened.Logbook,
            _prompt.Clock,
            desk =>
                desk with
                {
                    OpenKey = (path, passphrase, ring) =>
                        DriveCommand.Tried(_prompt.Here(path), passphrase, opened.Logbook.Study, ring, _prompt.Outside().KeyFile),
                    TwoPassphrases = TwoPassphrases.Joined,
                },
            screen: ScreenName.Reveal
        );
}
