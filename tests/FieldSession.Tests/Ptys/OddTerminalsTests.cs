using System.Globalization;

namespace FieldSession.Tests.Ptys;

/// <summary>Terminals of other kinds and sizes, keys that consoles swallow, and pasted text.</summary>
[Collection(Pty.Collection)]
public sealed class OddTerminalsTests
{
    private const string CtrlQ = "\x11";
    private const string Alt = "\x1b";

    private static string Pasted(string text) => $"\x1b[200~{text}\x1b[201~";

    private static string Note(ProgramInATerminal program) => Assert.Single(program.Study.Notes).Words;

    [PtyFact]
    public void A_dumb_terminal_is_refused_in_words()
    {
        using ProgramInATerminal program = new();
        program.Terminal.Start([ProgramInATerminal.Path, "drive", program.StudyPath], PtyTerminal.Plainly, ("TERM", "dumb"));
        Assert.Equal((2, ""), (program.Terminal.Ended(), program.Terminal.NotGivenBack));
        Assert.Contains("TERM=dumb", program.Terminal.Screen, StringComparison.Ordinal);
    }

    [PtyTheory]
    [InlineData("TERM", null)]
    [InlineData("TERM", "linux")]
    [InlineData("LANG", "C")]
    public void Terminals_of_other_kinds_show_the_same(string name, string? value)
    {
        using ProgramInATerminal program = new();
        program.Driving(PtyTerminal.Plainly, (name, value)).OnTheRoad().Terminal.Type(CtrlQ);
        Assert.Equal((0, ""), (program.Terminal.Ended(), program.Terminal.NotGivenBack));
    }

    [PtyTheory]
    [InlineData(null, true)]
    [InlineData("1", false)]
    public void Where_no_colour_is_wanted_none_is_sent(string? noColour, bool isColoured)
    {
        using ProgramInATerminal program = new();
        program.Driving(PtyTerminal.Plainly, ("NO_COLOR", noColour)).OnTheRoad().Terminal.Type("x").Until("does nothing").Type(CtrlQ);
        Assert.Equal(0, program.Terminal.Ended());
        int[] parts =
        [
            .. program
                .Terminal.Looks.SelectMany(look => look.Split(';'))
                .Where(part => part.Length > 0)
                .Select(part => int.Parse(part, CultureInfo.InvariantCulture)),
        ];
        Assert.Equal(isColoured, parts.Any(part => part is (>= 30 and <= 38) or (>= 40 and <= 48) or (>= 90 and <= 107)));
    }

    [PtyFact]
    public void Function_keys_of_terminals_work_those_of_a_console_do_no_harm_and_each_has_another_key()
    {
        using ProgramInATerminal program = new();
        PtyTerminal terminal = program.Driving().Terminal;
        terminal.Type("\x1bOQ").Until("starts run 1").Type("\x1bOR").Until("rate").Type("\x1b[13~");
        terminal.Type("\x1bOS").Until("Shut until the car is parked").Type("\x1b[12~").Until("STOP   next:");
        terminal.Type("\x1b[[D").Type("\x1b[[B").Type($"{Alt}4").Until("Shut until the car is parked");
        terminal.Type($"{Alt}2").Until("STOP   next:").Type($"{Alt}h").Until("Keys on drive").Type($"{Alt}q");
        Assert.Equal((0, ""), (terminal.Ended(), terminal.NotGivenBack));
        Assert.Empty(program.Study.Runs);
    }

    [PtyFact]
    public void Any_size_at_any_moment_keeps_what_is_half_typed()
    {
        using ProgramInATerminal program = new();
        PtyTerminal terminal = program.Driving().OnTheRoad().Terminal.Type("63").Until("> 63");
        terminal.Resize(120, 40).Until("> 63").Resize(20, 5).Until("2 Quarry road").Until("> 63");
        terminal
            .Type("65\r")
            .Until("3 Bridge joint")
            .Resize(60, 20)
            .Until("NEXT 3 of 3")
            .Until("63-65")
            .Resize(80, 24)
            .Until("NEXT 3 of 3")
            .Type(CtrlQ);
        Assert.Equal((0, ""), (terminal.Ended(), terminal.NotGivenBack));
    }

    [PtyFact]
    public void A_long_pasted_note_arrives_whole()
    {
        using ProgramInATerminal program = new();
        string words = string.Join(' ', Enumerable.Range(100, 400).Select(n => $"w{n}x"));
        program.Driving().Terminal.Type(";").Type(Pasted(words)).Until("w499x").Type("\r").Until("note: w100");
        Assert.Equal(words, Note(program));
    }

    [PtyFact]
    public void Pasted_lines_become_one_line()
    {
        using ProgramInATerminal program = new();
        program.Driving().Terminal.Type(";").Type(Pasted("first\rsecond\r\nthird")).Until("third").Type("\r").Until("note: first");
        Assert.Equal("first second third", Note(program));
    }

    [PtyFact]
    public void Unbracketed_pasting_is_slow_but_whole()
    {
        using ProgramInATerminal program = new();
        string words = string.Join(' ', Enumerable.Range(100, 60).Select(n => $"w{n}x"));
        program.Driving().Terminal.Type(";").Type(words).Until("w159x").Type("\r").Until("note: w100");
        Assert.Equal(words, Note(program));
    }

    [PtyFact]
    public void Typed_letters_of_any_script_are_kept_and_a_paste_that_was_torn_is_refused_not_stored()
    {
        using ProgramInATerminal program = new();
        PtyTerminal terminal = program
            .Driving()
            .Terminal.Type("; \u00fc 21 \u00b0 \u6f22\u5b57 e\u0301\r")
            .Until("note: \u00fc 21 \u00b0 \u6f22\u5b57 e\u0301");
        string words = string.Concat(Enumerable.Repeat("\u00fc\u00b0\u6f22", 200));
        terminal.Type(";").Type(Pasted(words)).Until("\u00fc\u00b0").Type("\r").Until("can't be read").Type(CtrlQ);
        Assert.Equal(0, terminal.Ended());
        Assert.Equal("\u00fc 21 \u00b0 \u6f22\u5b57 e\u0301", Note(program));
    }

    [PtyFact]
    public void The_mouse_is_left_to_the_terminal()
    {
        using ProgramInATerminal program = new();
        program.Driving().OnTheRoad();
        Assert.DoesNotContain("?100", program.Terminal.NotGivenBack, StringComparison.Ordinal);
    }
}
