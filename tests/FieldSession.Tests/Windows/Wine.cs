using System.Diagnostics;
using System.Runtime.CompilerServices;
using FieldSession.Tests.Crashes;

namespace FieldSession.Tests.Windows;

/// <summary>
/// The program for Windows, run by wine: FIELDSESSION_PROGRAM names a script that does so, and FIELDSESSION_WINE the folder in which wine
/// keeps its drives.
/// 'bash .ci/windows' makes both.
/// </summary>
internal static class Wine
{
    /// <summary>Why it can't be run here; null: it can.</summary>
    public static string? WhyNot =>
        Environment.GetEnvironmentVariable("FIELDSESSION_WINE") is null ? "the program for Windows is run by '.ci/windows'" : null;

    private static string Drives => Path.Combine(Environment.GetEnvironmentVariable("FIELDSESSION_WINE")!, "dosdevices");

    /// <summary>A path of this system as Windows names it: its drive Z is the root here.</summary>
    public static string OnDriveZ(string path) => "Z:" + path.Replace('/', '\\');

    /// <summary>A folder of this system as a share of a server.</summary>
    public static string AsShare(string folder)
    {
        string server = Path.Combine(Drives, "unc", "laptop");
        string share = Path.GetFileName(Path.GetDirectoryName(folder)!);
        Directory.CreateDirectory(server);
        File.CreateSymbolicLink(Path.Combine(server, share), folder);
        return $@"\\laptop\{share}";
    }

    /// <summary>Builds a C program that lies beside these tests.</summary>
    /// <param name="source">Its file.</param>
    /// <param name="made">What is made of it.</param>
    /// <param name="compiler">The compiler and its words.</param>
    public static string Built(string source, string made, params string[] compiler)
    {
        string path = Path.Combine(AppContext.BaseDirectory, made);
        using Process building = Process.Start(
            compiler[0],
            [.. compiler[1..], "-O1", "-Wall", "-Werror", "-o", path, Path.Combine(AppContext.BaseDirectory, "Windows", source)]
        );
        building.WaitForExit();
        Assert.Equal(0, building.ExitCode);
        return path;
    }

    /// <summary>Runs any other program for Windows the same way, with its input and output in hand.</summary>
    public static Process Start(string program, params string[] words)
    {
        ProcessStartInfo start = new(RunningProgram.PathOfProgram, words) { RedirectStandardInput = true, RedirectStandardOutput = true };
        start.Environment["FIELDSESSION_EXE"] = program;
        return Process.Start(start)!;
    }
}

/// <summary>A test of the program for Windows under wine; elsewhere it is passed over and says so.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class WineFactAttribute : FactAttribute
{
    public WineFactAttribute([CallerFilePath] string? file = null, [CallerLineNumber] int line = -1)
        : base(file, line) => Skip = Wine.WhyNot;
}

/// <summary>The same with several cases.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class WineTheoryAttribute : TheoryAttribute
{
    public WineTheoryAttribute([CallerFilePath] string? file = null, [CallerLineNumber] int line = -1)
        : base(file, line) => Skip = Wine.WhyNot;
}
