using FieldSession.Terminal.Starting;

namespace FieldSession.Tests.Making;

/// <summary>The start screen without a terminal.</summary>
internal sealed class StartTui : HeadlessTerminal
{
    private readonly StartShell _shell;

    public StartTui(StartDesk desk, int columns = 80, int rows = 24)
        : base(new StoppedClock(), columns, rows)
    {
        _shell = new StartShell(desk);
        Begin(_shell);
    }

    public StartTui Keys(string keys)
    {
        Press(keys);
        return this;
    }

    public override void Dispose()
    {
        _shell.Dispose();
        base.Dispose();
    }
}
