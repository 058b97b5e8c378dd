namespace FieldSession.Tests.Ptys;

/// <summary>
/// However the program ends, the terminal is given back, what was typed is in the study, and the next start goes on there.
/// </summary>
[Collection(Pty.Collection)]
public sealed class EndsInATerminalTests
{
    private const string CtrlQ = "\x11";
    private const string CtrlZ = "\x1a";
    private const string F1 = "\x1bOP";

    [PtyFact]
    public void Leaving_by_the_key()
    {
        using ProgramInATerminal program = new();
        program.Driving().OnTheRoad().Terminal.Type(CtrlQ);
        Assert.Equal((0, ""), (program.Terminal.Ended(), program.Terminal.NotGivenBack));
        program.EverythingIsInTheStudy();
        program.TheNextStartSaysWhereYouWere();
    }

    [PtyTheory]
    [InlineData(2, 130)]
    [InlineData(3, 131)]
    [InlineData(15, 143)]
    [InlineData(1, 129)]
    public void A_signal_while_the_help_is_open_and_a_reading_half_typed(int signal, int code)
    {
        using ProgramInATerminal program = new();
        program.Driving().OnTheRoad().Terminal.Type("63").Until("> 63").Type(F1).Until("Keys on drive").Signal(signal);
        Assert.Equal((code, ""), (program.Terminal.Ended(), program.Terminal.NotGivenBack));
        program.EverythingIsInTheStudy();
    }

    [PtyTheory]
    [InlineData(PtyTerminal.Plainly)]
    [InlineData("trap \"\" HUP; exec \"$@\"")]
    public void The_window_is_closed_or_the_line_is_lost_even_where_hangups_are_ignored(string how)
    {
        using ProgramInATerminal program = new();
        program.Driving(how).OnTheRoad().Terminal.HangUp();
        Assert.Equal(129, program.Terminal.Ended());
        program.EverythingIsInTheStudy();
        program.TheNextStartSaysWhereYouWere();
    }

    [PtyFact]
    public void The_program_is_killed_without_a_chance()
    {
        using ProgramInATerminal program = new();
        program.Driving().OnTheRoad().Terminal.Signal(9);
        Assert.Equal(137, program.Terminal.Ended());
        program.EverythingIsInTheStudy();
        program.TheNextStartSaysWhereYouWere();
    }

    [PtyFact]
    public void Suspending_keys_and_signals_do_not_suspend_and_a_stopped_program_draws_itself_again()
    {
        using ProgramInATerminal program = new();
        program.Driving().OnTheRoad();
        program.Terminal.Type("63").Until("> 63").Type(CtrlZ).Signal(20).Type("65").Until("65");
        Assert.True(program.Terminal.IsRunning);
        program.Terminal.Signal(19).Wipe().Signal(18).Until("NEXT 2 of 3").Until("58-60").Type("\r").Until("NEXT 3 of 3");
        program.Terminal.Type(CtrlQ);
        Assert.Equal((0, ""), (program.Terminal.Ended(), program.Terminal.NotGivenBack));
        Assert.Equal("63-65", program.Study.RunOn!.LastReading!.Levels.ToString());
    }

    [PtyTheory]
    [InlineData("exec \"$@\" </dev/null")]
    [InlineData("exec \"$@\" </dev/null >/dev/null")]
    public void Streams_that_lead_elsewhere_do_not_keep_it_from_its_terminal(string how)
    {
        using ProgramInATerminal program = new();
        program.Driving(how).OnTheRoad().Terminal.Signal(15);
        Assert.Equal((143, ""), (program.Terminal.Ended(), program.Terminal.NotGivenBack));
        program.EverythingIsInTheStudy();
    }

    [PtyTheory]
    [InlineData("one", 0)]
    [InlineData("four", 70)]
    [InlineData("elsewhere", 134)]
    [InlineData("stuck", 143)]
    public void A_fault_in_a_handler_is_told_and_survived_and_one_that_is_not_gives_the_terminal_back(string fault, int code)
    {
        using PtyTerminal terminal = new();
        terminal.Start(FaultyProgram.Words(fault)).Until("ready").Type("f");
        if (fault == "one")
        {
            terminal.Until("told of 1").Type("q");
        }
        else if (fault == "four")
        {
            terminal.Type("fff");
        }
        else if (fault == "stuck")
        {
            terminal.Signal(15);
        }

        Assert.Equal((code, ""), (terminal.Ended(), terminal.NotGivenBack));
    }

    [PtyFact]
    public void Without_a_terminal_it_says_so_and_ends_instead_of_running_unseen()
    {
        using ProgramInATerminal program = new();
        program.Terminal.Start(["setsid", "-w", ProgramInATerminal.Path, "drive", program.StudyPath], "exec \"$@\" </dev/null");
        Assert.Equal(2, program.Terminal.Ended());
        Assert.Contains("there is no terminal", program.Terminal.Screen, StringComparison.Ordinal);
    }
}
