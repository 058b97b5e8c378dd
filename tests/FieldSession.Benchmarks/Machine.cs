using System.Globalization;
using System.Runtime.InteropServices;

namespace FieldSession.Benchmarks;

/// <summary>The machine that figures are from.</summary>
internal static class Machine
{
    /// <summary>The machine, the day and the state of the source, in a sentence.</summary>
    /// <param name="commit">The commit.</param>
    /// <param name="loadBefore">How busy it was before, 1-minute average; null: the system does not tell.</param>
    public static string InWords(string commit, double? loadBefore) =>
        $"{DateTime.UtcNow:yyyy-MM-dd}, commit {commit}; {Environment.ProcessorCount} cores of {Processor()}, "
        + $"{Gigabytes():0} GB, {RuntimeInformation.OSDescription}, "
        + $"{FileSystem()}, {RuntimeInformation.FrameworkDescription}; load {Load(loadBefore)} before, {Load(LoadNow())} after.";

    /// <summary>How many processes wanted to run, on average over the last minute; null: the system does not tell.</summary>
    public static double? LoadNow() =>
        File.Exists("/proc/loadavg") ? double.Parse(File.ReadAllText("/proc/loadavg").Split(' ')[0], CultureInfo.InvariantCulture) : null;

    private static string Load(double? load) => load?.ToString("0.0", CultureInfo.InvariantCulture) ?? "unknown";

    private static double Gigabytes() => GC.GetGCMemoryInfo().TotalAvailableMemoryBytes / 1e9;

    private static string Processor() =>
        File.Exists("/proc/cpuinfo")
        && File.ReadLines("/proc/cpuinfo").FirstOrDefault(line => line.StartsWith("model name", StringComparison.Ordinal)) is { } named
            ? named.Split(':')[1].Trim()
            : RuntimeInformation.ProcessArchitecture.ToString();

    private static string FileSystem() => $"files on {new DriveInfo(Path.GetTempPath()).DriveFormat}";
}
