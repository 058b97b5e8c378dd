using FieldSession.Terminal.Commands;

namespace FieldSession.Tests.Commands;

public class HiddenLineTests
{
    [Fact]
    public void A_passphrase_is_read_repaired_and_never_shown()
    {
        StringWriter shown = new();
        Assert.Equal("four words ü", Typed("four wordx\bs ü\r", shown));
        Assert.Equal(Environment.NewLine, shown.ToString());
    }

    [Fact]
    public void The_end_of_input_is_no_passphrase() => Assert.Null(Typed("abc\u0004", new StringWriter()));

    [Fact]
    public void Asked_at_a_keyboard_only_the_question_is_seen()
    {
        StringWriter messages = new();
        Queue<char> keys = new("quiet\r");
        Surroundings outside = new()
        {
            Input = TextReader.Null,
            Output = TextWriter.Null,
            Error = messages,
            Clock = TimeProvider.System,
            Lot = new Sealing.SeededLot(1),
            ReadKeyUnseen = () => Key(keys.Dequeue()),
        };
        Assert.Equal("quiet", outside.AskSecret("passphrase: "));
        Assert.Equal("passphrase: " + Environment.NewLine, messages.ToString());
    }

    private static string? Typed(string typed, TextWriter shown)
    {
        Queue<char> keys = new(typed);
        return HiddenLine.Read(() => Key(keys.Dequeue()), shown);
    }

    private static ConsoleKeyInfo Key(char key) =>
        key switch
        {
            '\r' => new ConsoleKeyInfo('\r', ConsoleKey.Enter, false, false, false),
            '\b' => new ConsoleKeyInfo('\b', ConsoleKey.Backspace, false, false, false),
            '\u0004' => new ConsoleKeyInfo('\u0004', ConsoleKey.D, false, false, true),
            _ => new ConsoleKeyInfo(key, ConsoleKey.None, false, false, false),
        };
}
