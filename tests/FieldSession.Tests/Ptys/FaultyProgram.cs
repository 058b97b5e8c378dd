using FieldSession.Terminal;
using FieldSession.Terminal.Look;
using FieldSession.Tests.Fuzzing;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;
using Xunit.Runner.InProc.SystemConsole;

namespace FieldSession.Tests.Ptys;

/// <summary>A program of its own in this assembly: a screen whose handler fails, in the frame in which the real screens run.</summary>
internal static class FaultyProgram
{
    /// <summary>The environment variable that tells a test process from this program.</summary>
    public const string Variable = "FIELDSESSION_FAULTY";

    /// <summary>The words that start it.</summary>
    public static string[] Words(string fault) =>
        ["env", $"{Variable}=1", "dotnet", "exec", Path.Combine(AppContext.BaseDirectory, "FieldSession.Tests.dll"), fault];

    private static Task<int> Main(string[] words) =>
        Environment.GetEnvironmentVariable(Variable) == "1" ? Task.FromResult(TerminalProgram.Run(() => new FaultyShell(words[0])))
        : words is ["fuzz", ..] ? Task.FromResult(FuzzedProgram.Run(words[1..]))
        : ConsoleRunner.Run(words);

    private sealed class FaultyShell : Runnable, IToldOfFaults
    {
        private readonly string _fault;
        private readonly PageView _page = new() { Width = Dim.Fill(), Height = Dim.Fill() };
        private int _told;

        public FaultyShell(string fault)
        {
            _fault = fault;
            CanFocus = true;
            Add(_page);
            _page.Show([PageRow.Of("ready")], Palette.Day);
        }

        public void Tell(Exception fault) => _page.Show([PageRow.Of($"told of {++_told}: {fault.Message}")], Palette.Day);

        protected override bool OnKeyDown(Key key)
        {
            if (key == Key.Q)
            {
                App!.RequestStop(this);
            }
            else if (_fault == "stuck")
            {
                Thread.Sleep(Timeout.Infinite);
            }
            else if (_fault == "elsewhere")
            {
                new Thread(() => throw new InvalidOperationException("made for this test")).Start();
            }
            else
            {
                throw new InvalidOperationException("made for this test");
            }

            return true;
        }
    }
}
