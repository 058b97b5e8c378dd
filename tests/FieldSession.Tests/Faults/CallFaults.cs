using System.Diagnostics;
using System.Runtime.CompilerServices;

namespace FieldSession.Tests.Faults;

/// <summary>
/// The program 'callfaults.c', built by the C compiler that a native build needs anyway: it runs the real program and lets chosen
/// system calls fail. Needs Linux 5.19 with seccomp notifications (man page seccomp_unotify(2)).
/// </summary>
internal static class CallFaults
{
    private static readonly Lazy<(string Path, string? WhyNot)> Made = new(Make);

    /// <summary>Why it can't be used here; null: it can.</summary>
    public static string? WhyNot => Made.Value.WhyNot;

    /// <summary>The words before a program's own that run it below this one.</summary>
    /// <param name="folder">Only calls on files below it are looked at.</param>
    /// <param name="fault">What fails; null: nothing.</param>
    /// <param name="record">Where what was done is written; null: nowhere.</param>
    public static string[] Words(string folder, CallFault? fault = null, string? record = null) =>
        [
            Made.Value.Path,
            "-w",
            folder,
            .. record is null ? Array.Empty<string>() : ["-r", record],
            .. fault is null ? Array.Empty<string>() : fault.Words,
        ];

    private static (string Path, string? WhyNot) Make()
    {
        string source = Path.Combine(AppContext.BaseDirectory, "Faults", "callfaults.c");
        string made = Path.Combine(AppContext.BaseDirectory, "callfaults");
        if (!OperatingSystem.IsLinux())
        {
            return (made, "system calls are caught as Linux catches them");
        }

        string building = $"{made}.{Environment.ProcessId}";
        if (Run("cc", "-O1", "-Wall", "-Werror", "-o", building, source) is { } fault)
        {
            return (made, $"the C compiler can't build {source}: {fault}");
        }

        File.Move(building, made, overwrite: true);
        return (made, Run(made, "true"));
    }

    private static string? Run(string program, params string[] words)
    {
        try
        {
            using Process running = Process.Start(new ProcessStartInfo(program, words) { RedirectStandardError = true })!;
            string said = running.StandardError.ReadToEnd();
            running.WaitForExit();
            return running.ExitCode == 0 ? null : $"{program} ended with {running.ExitCode}: {said}";
        }
        catch (System.ComponentModel.Win32Exception missing)
        {
            return missing.Message;
        }
    }
}

/// <summary>
/// A test that lets system calls of the real program fail; passed over where the system or the compiler for that is missing.
/// </summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class CallFaultFactAttribute : FactAttribute
{
    public CallFaultFactAttribute([CallerFilePath] string? file = null, [CallerLineNumber] int line = -1)
        : base(file, line) => Skip = CallFaults.WhyNot;
}

/// <summary>
/// A test that starts so many programs that it is run under the native one alone, as '.ci/run' does: one that is compiled while it runs
/// takes minutes.
/// </summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class NativeFaultFactAttribute : FactAttribute
{
    public NativeFaultFactAttribute([CallerFilePath] string? file = null, [CallerLineNumber] int line = -1)
        : base(file, line) =>
        Skip =
            CallFaults.WhyNot
            ?? (
                Environment.GetEnvironmentVariable("FIELDSESSION_PROGRAM") is null
                    ? "FIELDSESSION_PROGRAM names no native program; '.ci/run' does"
                    : null
            );
}

/// <summary>Tests that start many programs run one after the other.</summary>
internal static class FaultTests
{
    public const string Collection = "faults under the real program";

    /// <summary>A number that a long run sets, such as FIELDSESSION_CALL_FAULTS.</summary>
    public static int Number(string variable, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), out int more) ? more : otherwise;
}
