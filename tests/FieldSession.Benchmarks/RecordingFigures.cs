using System.Diagnostics;

namespace FieldSession.Benchmarks;

/// <summary>An hour of sound through the native program: seconds to its end, and memory above the bare program.</summary>
/// <param name="program">The program.</param>
/// <param name="folder">Where files may lie; somebody else takes it away.</param>
/// <param name="isQuick">Whether six minutes are taken for the hour, to try the command.</param>
internal sealed class RecordingFigures(NativeProgram program, string folder, bool isQuick)
{
    private const int RateHz = 48_000;
    private const int PieceS = 10;
    private const double AskedMs = 30_000;
    private const double AskedMoreForFlacMs = 15_000;
    private const double AskedMb = 33.6;

    private int Pieces => isQuick ? 36 : 360;

    private string Length => isQuick ? "six minutes" : "an hour";

    /// <summary>Measures them all; FLAC where the reference encoder is installed.</summary>
    public IEnumerable<Figure> All()
    {
        string wav = Path.Combine(folder, "hour.wav");
        WriteNoise(wav);
        double bare = program.Run("--version");
        double most = 0;
        double[] took = Stopwatches.Ms(3, () => most = program.Run("levels", wav));
        yield return new Figure($"`levels` of {Length} of sound, 24 bits, WAV", "ms", took, "filters and transforms on one core")
        {
            Asked = new Asked(AskedMs),
        };
        yield return new Figure("memory of that, above the bare program", "MB", [most - bare], "blocks, and a level every 0.125 s")
        {
            Asked = new Asked(AskedMb),
        };
        if (Encoded(wav) is { } flac)
        {
            yield return new Figure(
                $"`levels` of {Length} of sound, 24 bits, FLAC",
                "ms",
                Stopwatches.Ms(3, () => program.Run("levels", flac)),
                "the same, and decoding"
            )
            {
                Asked = new Asked(AskedMs + AskedMoreForFlacMs),
            };
            File.Delete(flac);
        }

        File.Delete(wav);
    }

    private string? Encoded(string wav)
    {
        string flac = Path.ChangeExtension(wav, ".flac");
        try
        {
            using Process encoder = Process.Start("flac", ["-s", "-f", "-o", flac, wav]);
            encoder.WaitForExit();
            return encoder.ExitCode == 0 ? flac : null;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            // no encoder here, so that figure is left out
            return null;
        }
    }

    // ten seconds of cabin-like noise again and again
    private void WriteNoise(string path)
    {
        Random lot = new(1);
        byte[] piece = new byte[RateHz * PieceS * 3];
        double level = 0;
        for (int i = 0; i < piece.Length; i += 3)
        {
            level = (0.98 * level) + (0.02 * ((2 * lot.NextDouble()) - 1));
            int sample = (int)(level * 0x7FFFFF);
            (piece[i], piece[i + 1], piece[i + 2]) = ((byte)sample, (byte)(sample >> 8), (byte)(sample >> 16));
        }

        using BinaryWriter file = new(File.Create(path));
        file.Write("RIFF"u8);
        file.Write((uint)(36 + ((long)piece.Length * Pieces)));
        file.Write("WAVEfmt "u8);
        foreach (int word in new[] { 16, (1 << 16) | 1, RateHz, RateHz * 3, (24 << 16) | 3 })
        {
            file.Write(word);
        }

        file.Write("data"u8);
        file.Write((uint)((long)piece.Length * Pieces));
        for (int i = 0; i < Pieces; i++)
        {
            file.Write(piece);
        }
    }
}
