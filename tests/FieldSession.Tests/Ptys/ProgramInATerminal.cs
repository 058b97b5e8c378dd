using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Ptys;

/// <summary>A short day's study on the disk, and the real program on it in a terminal of its own.</summary>
internal sealed class ProgramInATerminal : IDisposable
{
    private readonly AtThePrompt _prompt = AWholeDay.Sealed().Enter(AWholeDay.Ready);

    public ProgramInATerminal(int columns = 80, int rows = 24)
    {
        Terminal = new PtyTerminal(columns, rows);
    }

    public static string Path => Crashes.RunningProgram.PathOfProgram;

    public PtyTerminal Terminal { get; private set; }

    /// <summary>The study as it is on the disk.</summary>
    public Study Study => _prompt.Now();

    public string StudyPath => _prompt.Study;

    /// <summary>Opens the drive screen and waits until it is there.</summary>
    public ProgramInATerminal Driving(string how = PtyTerminal.Plainly, params (string Name, string? Value)[] settings)
    {
        Terminal.Start([Path, "drive", StudyPath], how, settings).Until("T-7");
        return this;
    }

    /// <summary>Starts run 1 and stores a reading with a note.</summary>
    public ProgramInATerminal OnTheRoad()
    {
        Terminal.Type("\r").Until("NEXT 1 of 3").Type("5860\r").Until("NEXT 2 of 3").Type("; a hum\r").Until("note on 1");
        return this;
    }

    /// <summary>Holds the study against what <see cref="OnTheRoad"/> typed.</summary>
    public void EverythingIsInTheStudy()
    {
        Assert.Equal("58-60", Study.RunOn!.LastReading!.Levels.ToString());
        Assert.Equal("a hum", Assert.Single(Study.Notes).Words);
    }

    /// <summary>Starts the program again in another terminal; it must say where the crew was.</summary>
    public void TheNextStartSaysWhereYouWere()
    {
        Terminal.Dispose();
        Terminal = new PtyTerminal();
        Driving();
        Terminal.Until("run 1 of 6").Until("NEXT 2 of 3").Until("58-60").Type("\x11");
        Assert.Equal(0, Terminal.Ended());
    }

    public void Dispose()
    {
        Terminal.Dispose();
        _prompt.Dispose();
    }
}
