using FieldSession.Sealing;
using FieldSession.Terminal.Custodian;
using FieldSession.Terminal.Look;

namespace FieldSession.Tests.Making;

/// <summary>The custodian's list without a terminal.</summary>
internal sealed class FittingTui : HeadlessTerminal
{
    private readonly FittingShell _shell;

    public FittingTui(KeySheet key, KeySheet? earlier = null, int columns = 80, int rows = 24)
        : base(new StoppedClock(), columns, rows)
    {
        _shell = new FittingShell(key, earlier, Palette.For("1"));
        Begin(_shell);
    }

    public FittingTui Keys(string keys)
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
