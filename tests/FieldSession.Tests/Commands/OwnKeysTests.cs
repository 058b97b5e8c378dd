using FieldSession.State;
using FieldSession.Terminal;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;
using FieldSession.Tests.Sealing;

namespace FieldSession.Tests.Commands;

/// <summary>The user's own keys: taken from a file, or refused with file, line and what to do.</summary>
public sealed class OwnKeysTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("fieldsession-keys").FullName;
    private readonly StringWriter _error = new();

    private static KeyTable Taken(params string[] lines)
    {
        (KeyTable keys, string? refusal) = OwnKeys.Of(KeyTable.Standard, lines);
        Assert.Null(refusal);
        return keys;
    }

    [Fact]
    public void Changed_keys_work_and_those_as_delivered_do_not_any_more()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860");
        using Tui tui = new(
            day.Book,
            day.Clock,
            desk => desk with { Keys = Taken("# for the left hand", "", "drive t = g &", "drive m\t= b", "everywhere F12 = Ctrl+R") }
        );
        Assert.Contains("g w s r n e spoilt", tui.Rows[^1], StringComparison.Ordinal);
        tui.Keys("g");
        Assert.Equal(SpoiltCause.Traffic, day.Study.RunOn!.LastReading!.Spoilt!.Cause);
        tui.Keys("&b");
        Assert.Null(day.Study.RunOn!.LastReading!.Spoilt);
        Assert.Equal(3, day.Study.NextSegment!.Number);
        Study before = day.Study;
        tui.Keys("t<Esc>m<Esc>");
        Assert.Same(before, day.Study);
    }

    [Fact]
    public void Words_at_a_stop_are_told_by_the_keys_that_were_pressed()
    {
        ADay day = new ADay().Ready().Typed("run 417", "5860", "6365", "714");
        using Tui tui = new(day.Book, day.Clock, desk => desk with { Keys = Taken("drive r = x") });
        tui.Keys("run 862<Enter>");
        Assert.Equal(2, day.Study.RunOn?.Number);
        Assert.All(day.Study.Runs[0].Readings, reading => Assert.Null(reading.Spoilt));
    }

    [Fact]
    public void Two_rows_may_change_places_by_way_of_a_third_key()
    {
        KeyTable keys = Taken("drive t = %", "drive s = t", "drive t = s");
        Assert.Equal(("t", "s"), (keys.ActOf(ScreenName.Drive, 's')?.Line, keys.ActOf(ScreenName.Drive, 't')?.Line));
    }

    [Theory]
    [InlineData(
        "drive t = w",
        "line 1: 'w' would mean two things on drive: 'spoilt by traffic; again takes the flag back' and 'spoilt by wind "
            + "gust; again takes the flag back'; give one of them another key"
    )]
    [InlineData("drive t = F12", "'F12' would mean two things on drive")]
    [InlineData("drive t = 5", "readings are typed with '5'")]
    [InlineData("drive t = .", "readings are typed with '.'")]
    [InlineData("drive t = Hyper+9", "'Hyper+9' is not a key")]
    [InlineData("drive q = x", "no row of 'drive' begins with 'q'")]
    [InlineData("sleep t = x", "no row of 'sleep' begins with 't'")]
    [InlineData("drive Enter = x", "'Enter' can't be changed")]
    [InlineData("drive ; = x", "';' can't be changed")]
    [InlineData("everywhere F12 = l", "'l' is typed into the box there")]
    [InlineData("drive t x", "write 'drive t = g +'")]
    [InlineData("drive t =", "write 'drive t = g +'")]
    public void A_wrong_line_is_refused_and_nothing_of_the_file_is_taken(string line, string said)
    {
        (KeyTable keys, string? refusal) = OwnKeys.Of(KeyTable.Standard, ["drive m = b", line]);
        Assert.Contains(said.Replace("line 1", "line 2", StringComparison.Ordinal), refusal, StringComparison.Ordinal);
        Assert.Same(KeyTable.Standard, keys);
    }

    [Fact]
    public void The_refusal_names_the_file()
    {
        string file = Path.Combine(_folder, "keys");
        File.WriteAllText(file, "# mine\ndrive t = w\n");
        Assert.Null(UsersOwn.Read(Outside()));
        Assert.StartsWith($"fieldsession: {file}, line 2: 'w' would mean two things on drive", _error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_file_the_keys_are_as_delivered() => Assert.Same(KeyTable.Standard, UsersOwn.Read(Outside())!.Keys);

    public void Dispose()
    {
        _error.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    private Surroundings Outside() =>
        new()
        {
            Input = TextReader.Null,
            Output = TextWriter.Null,
            Error = _error,
            Clock = new StoppedClock(),
            Lot = new SeededLot(3),
            ConfigFolder = _folder,
        };
}
