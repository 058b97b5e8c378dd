using System.Diagnostics;
using System.Text;
using FieldSession.Aligning;

namespace FieldSession.Terminal.Commands;

/// <summary>
/// A program of the user's that prints levels, or a named pipe that one writes into. It is read on a thread of its own; what it says on its message stream
/// goes nowhere, and with this program it ends.
/// </summary>
internal sealed class LevelSource : IDisposable
{
    private const int LongestLine = 400;
    private readonly TimeProvider _clock;
    private readonly Process? _program;

    private LevelSource(TimeProvider clock, Process? program, Func<TextReader> open)
    {
        _clock = clock;
        _program = program;
        Thread reading = new(() => Read(open)) { IsBackground = true, Name = "levels" };
        reading.Start();
    }

    /// <summary>The levels.</summary>
    public StreamedLevels Levels { get; } = new();

    /// <summary>Starts a source; one that can't be started has ended.</summary>
    /// <param name="command">A command line, or the path of a named pipe.</param>
    /// <param name="clock">Where the time comes from.</param>
    public static LevelSource Of(string command, TimeProvider clock)
    {
        if (File.Exists(command) && !File.GetAttributes(command).HasFlag(FileAttributes.Directory) && IsPipe(command))
        {
            // opening waits until somebody writes, so that is the thread's to do
            return new(clock, null, () => new StreamReader(new FileStream(command, FileMode.Open, FileAccess.Read, FileShare.ReadWrite)));
        }

        Process? program = UsersProgram.Start(command);
        return new(clock, program, () => program is null ? TextReader.Null : program.StandardOutput);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        UsersProgram.End(_program);
        _program?.Dispose();
    }

    private static bool IsPipe(string path) => OperatingSystem.IsWindows() || (File.GetUnixFileMode(path) & UnixFileMode.UserExecute) == 0;

    private void Read(Func<TextReader> open)
    {
        try
        {
            using TextReader reader = open();
            StringBuilder line = new();
            for (int next = reader.Read(); next >= 0; next = reader.Read())
            {
                if (next == '\n')
                {
                    Levels.Take(line.ToString(), _clock.GetUtcNow());
                    line.Clear();
                }
                else if (line.Length < LongestLine)
                {
                    line.Append((char)next);
                }
            }
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException or ObjectDisposedException or InvalidOperationException)
        {
            // a source that breaks off has ended
        }

        Levels.End();
    }
}
