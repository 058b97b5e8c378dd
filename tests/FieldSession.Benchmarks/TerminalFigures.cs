using System.Diagnostics;
using System.Globalization;

namespace FieldSession.Benchmarks;

/// <summary>
/// What a pseudo terminal tells of the native program: terminal_speed.py types into it; without Python these are left out.
/// </summary>
internal static class TerminalFigures
{
    // Terminal.Gui looks for keys every 20 ms and draws 100 times a second: on average 10 and 5 ms are waiting
    private const double MeanWaitMs = 15;

    private static Dictionary<string, (Asked? Asked, double? Floor, string Limit)> Terms =>
        new()
        {
            ["start to the first whole frame, a day's study open"] = (new Asked(150), null, "start of the program; Terminal.Gui's start"),
            ["start to the first key's echo"] = (new Asked(150), null, "the same"),
            ["a figure to the screen"] = (null, MeanWaitMs, "Terminal.Gui looks for keys every 20 ms and draws every 10"),
            ["Enter: on the disk, compared, on the screen"] = (null, MeanWaitMs, "the same; a flush of the disk"),
            ["undo: on the disk, on the screen"] = (null, MeanWaitMs, "the same; a flush of the disk"),
            ["all keys of a reading and its undo"] = (new Asked(25, 50), MeanWaitMs, "the same"),
            ["memory after these keys, resident"] = (
                new Asked(60),
                null,
                "28 of it are the program's own pages, which the system can share and drop"
            ),
            ["idle, of one core"] = (new Asked(2), null, "50 looks for keys a second"),
        };

    /// <summary>Measures them.</summary>
    public static IEnumerable<Figure> Of(NativeProgram program, int cycles)
    {
        string script = Path.Combine("tests", "FieldSession.Benchmarks", "terminal_speed.py");
        ProcessStartInfo start = new("python3", [script, program.Path, $"{cycles}"]) { RedirectStandardOutput = true };
        Process? typing = Started(start);
        return typing is null ? [] : [.. Rows(typing).Select(Read)];
    }

    private static Process? Started(ProcessStartInfo start)
    {
        try
        {
            return Process.Start(start);
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
    }

    private static string[] Rows(Process typing)
    {
        using (typing)
        {
            string said = typing.StandardOutput.ReadToEnd();
            typing.WaitForExit();
            return typing.ExitCode == 0
                ? said.Split('\n', StringSplitOptions.RemoveEmptyEntries)
                : throw new InvalidOperationException("the terminal could not be typed into");
        }
    }

    // what, unit, values: cut by tabs
    private static Figure Read(string row)
    {
        string[] cells = row.Split('\t');
        (Asked? asked, double? floor, string limit) = Terms[cells[0]];
        return new Figure(cells[0], cells[1], [.. cells[2..].Select(cell => double.Parse(cell, CultureInfo.InvariantCulture))], limit)
        {
            Asked = asked,
            Floor = floor,
        };
    }
}
