namespace FieldSession.Tests.Ptys;

/// <summary>Lines typed to 'enter' in a terminal, and the signals that a terminal and a system send.</summary>
[Collection(Pty.Collection)]
public sealed class EnteringInATerminalTests
{
    private const string CtrlC = "\x03";
    private const string CtrlD = "\x04";

    [PtyTheory]
    [InlineData(2)]
    [InlineData(15)]
    [InlineData(1)]
    public void A_signal_ends_it_and_every_act_that_was_answered_is_in_the_study(int signal)
    {
        using ProgramInATerminal program = new();
        PtyTerminal terminal = Entering(program).Signal(signal);

        Assert.Equal(128 + signal, terminal.Ended());
        Assert.Equal(["first", "second"], program.Study.Notes.Select(note => note.Words));
    }

    [PtyFact]
    public void The_key_of_the_terminal_ends_it_too()
    {
        using ProgramInATerminal program = new();
        PtyTerminal terminal = Entering(program).Type(CtrlC);

        Assert.Equal(130, terminal.Ended());
        Assert.Equal(["first", "second"], program.Study.Notes.Select(note => note.Words));
    }

    [PtyFact]
    public void The_window_is_closed_and_the_next_program_may_write_at_once()
    {
        using ProgramInATerminal program = new();
        Entering(program).HangUp();
        using PtyTerminal next = new();
        next.Start([ProgramInATerminal.Path, "enter", program.StudyPath]).Type("; third\r").Until("note: third").Type(CtrlD);

        Assert.Equal(0, next.Ended());
        Assert.Equal(["first", "second", "third"], program.Study.Notes.Select(note => note.Words));
    }

    [PtyFact]
    public void Stopped_and_continued_it_takes_the_next_act()
    {
        using ProgramInATerminal program = new();
        PtyTerminal terminal = Entering(program).Signal(20);
        terminal.Type("; third\r").Signal(18).Until("note: third").Type(CtrlD);

        Assert.Equal(0, terminal.Ended());
        Assert.Equal(["first", "second", "third"], program.Study.Notes.Select(note => note.Words));
    }

    private static PtyTerminal Entering(ProgramInATerminal program) =>
        program
            .Terminal.Start([ProgramInATerminal.Path, "enter", program.StudyPath])
            .Type("; first\r")
            .Until("note: first")
            .Type("; second\r")
            .Until("note: second");
}
