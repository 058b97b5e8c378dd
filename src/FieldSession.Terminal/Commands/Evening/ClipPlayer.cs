using System.Diagnostics;
using System.Runtime.InteropServices;

namespace FieldSession.Terminal.Commands;

/// <summary>
/// Hands clips to the user's own player, one file at a time. Its name is drawn by lot and says nothing; it is gone when the player ends,
/// when this program is stopped, and what a crash left goes before the next clip is written.
/// </summary>
internal sealed class ClipPlayer : IDisposable
{
    private readonly string _command;
    private readonly Surroundings _outside;
    private readonly List<PosixSignalRegistration> _signals;
    private volatile Process? _playing;

    /// <summary>Makes the folder for clips, empty and for this user alone.</summary>
    /// <param name="command">The command line of the player; the clip's path is put behind it.</param>
    /// <param name="outside">The world outside.</param>
    /// <exception cref="IOException">The folder can't be made or emptied.</exception>
    public ClipPlayer(string command, Surroundings outside)
    {
        _command = command;
        _outside = outside;
        RemoveClips();
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(outside.ClipsFolder);
        }
        else
        {
            Directory.CreateDirectory(outside.ClipsFolder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }

        _signals =
        [
            .. new[] { PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP, PosixSignal.SIGQUIT }.Select(signal =>
                PosixSignalRegistration.Create(signal, _ => Stop())
            ),
        ];
    }

    /// <summary>Plays a clip to its end.</summary>
    /// <param name="wav">The clip as a WAV file.</param>
    /// <returns>How the player ended; null: it could not be started.</returns>
    /// <exception cref="IOException">The clip could not be written.</exception>
    public PlayerEnd? Play(byte[] wav)
    {
        string path = Path.Combine(_outside.ClipsFolder, $"{Convert.ToHexStringLower(_outside.Lot.Bytes(6))}.wav");
        FileStreamOptions options = new() { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        try
        {
            using (FileStream file = new(path, options))
            {
                file.Write(wav);
            }

            long begun = _outside.Clock.GetTimestamp();
            return Run(path) is { } code ? new PlayerEnd(code, _outside.Clock.GetElapsedTime(begun)) : null;
        }
        finally
        {
            File.Delete(path);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _signals.ForEach(signal => signal.Dispose());
        RemoveClips();
    }

    private int? Run(string path)
    {
        using Process? player = UsersProgram.Start(_command, path);
        if (player is null)
        {
            return null;
        }

        _playing = player;
        try
        {
            // what it says could name nothing but the clip
            player.BeginOutputReadLine();
            player.WaitForExit();
            return player.ExitCode;
        }
        finally
        {
            _playing = null;
        }
    }

    // the signal then ends this program, as it would have without us
    private void Stop()
    {
        UsersProgram.End(_playing);
        RemoveClips();
    }

    private void RemoveClips()
    {
        if (Directory.Exists(_outside.ClipsFolder))
        {
            Directory.Delete(_outside.ClipsFolder, recursive: true);
        }
    }
}

/// <summary>How a player ended.</summary>
/// <param name="ExitCode">Its exit code; 0: all went well.</param>
/// <param name="Took">How long it ran.</param>
internal readonly record struct PlayerEnd(int ExitCode, TimeSpan Took);
