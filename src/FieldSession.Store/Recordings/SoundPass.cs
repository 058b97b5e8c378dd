using System.Collections.Immutable;
using FieldSession.Signals;

namespace FieldSession.Store.Recordings;

/// <summary>What came of reading a recording once.</summary>
/// <param name="Frames">Frames read.</param>
/// <param name="MeanSquares">Mean square of every channel.</param>
public sealed record SoundPass(long Frames, ImmutableArray<double> MeanSquares)
{
    private const int BlockFrames = 4096;

    // 60 dB: a microphone that is not plugged in, not one that sits further back
    private const double DeadShare = 1e-6;

    /// <summary>Channels, from 1, that are silent, or 60 dB and more below the loudest.</summary>
    public ImmutableArray<int> DeadChannels =>
        [.. MeanSquares.Index().Where(channel => channel.Item <= DeadShare * MeanSquares.Max()).Select(channel => channel.Index + 1)];

    /// <summary>Reads a recording to its end and hands one channel to all who take it.</summary>
    /// <param name="reader">The recording.</param>
    /// <param name="channel">The channel, from 1.</param>
    /// <param name="takers">Who takes the samples.</param>
    /// <exception cref="RecordingRefusedException">The recording is damaged, or holds not one sample.</exception>
    /// <exception cref="IOException">It can't be read.</exception>
    public static SoundPass Through(ISoundReader reader, int channel, params IReadOnlyList<ISampleTaker> takers)
    {
        ArgumentNullException.ThrowIfNull(reader);
        int channels = reader.Format.Channels;
        double[] frames = new double[BlockFrames * channels];
        double[] taken = new double[BlockFrames];
        double[] squares = new double[channels];
        long count = 0;
        int read;
        while ((read = reader.Read(frames)) > 0)
        {
            for (int c = 0; c < channels; c++)
            {
                squares[c] += Squares(frames, channels, c, read);
            }

            for (int i = 0; i < read; i++)
            {
                taken[i] = frames[(i * channels) + channel - 1];
            }

            foreach (ISampleTaker taker in takers)
            {
                taker.Take(taken.AsSpan(0, read));
            }

            count += read;
        }

        return count > 0 ? new(count, [.. squares.Select(sum => sum / count)]) : throw new RecordingRefusedException(RecordingWords.Empty);
    }

    private static double Squares(double[] frames, int channels, int channel, int count)
    {
        double sum = 0;
        for (int i = channel; i < count * channels; i += channels)
        {
            sum += frames[i] * frames[i];
        }

        return sum;
    }
}
