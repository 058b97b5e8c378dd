using System.Runtime.CompilerServices;
using FieldSession.Tests.Ptys;
using Terminal.Gui.App;

namespace FieldSession.Tests.Making;

/// <summary>What holds for the whole test process, set before any test, so that classes may run side by side.</summary>
internal static class TuiSetup
{
    [ModuleInitializer]
    internal static void Init()
    {
        if (Environment.GetEnvironmentVariable(FaultyProgram.Variable) is not null)
        {
            return;
        }

        // Before the first type of Terminal.Gui is touched: no test may open the developer's own terminal.
        Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
        Environment.SetEnvironmentVariable("TUI_CONFIG", null);

        // Every application blocks a thread of the pool.
        ThreadPool.SetMinThreads(64, 64);
        DoNotSleep();
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void DoNotSleep() => Application.MaximumIterationsPerSecond = ushort.MaxValue;
}
