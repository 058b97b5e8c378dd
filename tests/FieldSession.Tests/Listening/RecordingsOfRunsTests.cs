using FieldSession.Aligning;
using FieldSession.State;
using FieldSession.Terminal.Commands;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Listening;

public sealed class RecordingsOfRunsTests
{
    [Fact]
    public void A_recording_is_found_to_be_of_the_run_that_was_driven_meanwhile_and_its_levels_are_kept()
    {
        using ADayWithRecorder day = new(rateHz: 48_000);
        day.Tone();
        day.Drive();

        string said = day.Listen();

        RunRecording kept = Assert.Single(day.Study.Recordings);
        Assert.Equal(1, kept.Run);
        Assert.Equal(ClockSource.FileTime, kept.ClockBy);
        Assert.Equal(day.Study.Runs[0].Readings.Select(reading => reading.Mark.Number), kept.Segments.Select(heard => heard.Line));
        Assert.Equal(94 + 20, ChainCalibration.Of(day.Study, "recorder").GainDb!.Value, 0.01);
        Assert.Contains("4 of 4 readings heard, clock by file time within 2.0 s", said, StringComparison.Ordinal);

        // 60 dB of ring over noise that holds some 40 dB of the band's width
        Assert.All(kept.Segments.SkipLast(1), heard => Assert.InRange(heard.RingDb!.Value + 114, 59, 62));
        Assert.Equal(0.25, kept.Segments[^1].RingLastsS!.Value, 0.1);
        Assert.Null(kept.Segments[0].RingLastsS);
    }

    [Fact]
    public void Marks_go_before_the_file_s_time_and_tell_it_closer()
    {
        using ADayWithRecorder day = new();
        string path = day.Drive((_, samples) => Knocking.Three(samples, 16_000, 2.0));
        day.EnterAt(day.Study.Runs[0].Started.At.AddSeconds(-4 + 0.3), "mark");

        day.Listen();

        RunRecording kept = Assert.Single(day.Study.Recordings);
        Assert.Equal(ClockSource.Marks, kept.ClockBy);
        Assert.Equal(0.5, kept.HalfRangeS);
        Assert.Equal(0.3, (kept.BegunAt - day.Study.Runs[0].Started.At.AddSeconds(-6)).TotalSeconds, 0.02);
    }

    [Fact]
    public void Marks_that_contradict_the_file_s_time_are_asked_about()
    {
        using ADayWithRecorder day = new();
        string path = day.Drive((_, samples) => Knocking.Three(samples, 16_000, 2.0));
        day.EnterAt(day.Study.Runs[0].Started.At.AddSeconds(-4), "mark");
        File.SetLastWriteTimeUtc(path, File.GetLastWriteTimeUtc(path).AddSeconds(9));

        Assert.Contains(
            "its marks and its file time are 9 s apart; give --clock marks or --clock file",
            day.Prompt.Must(2, ["listen", day.Prompt.Study, path]),
            StringComparison.Ordinal
        );
        Assert.Empty(day.Study.Recordings);

        day.Prompt.Must(0, ["listen", day.Prompt.Study, path, "--clock", "marks"]);
        Assert.Equal(ClockSource.Marks, Assert.Single(day.Study.Recordings).ClockBy);
    }

    [Fact]
    public void A_recording_of_another_day_is_refused_and_a_given_time_takes_it()
    {
        using ADayWithRecorder day = new();
        string path = day.Drive();
        DateTime closed = File.GetLastWriteTimeUtc(path);
        File.SetLastWriteTimeUtc(path, closed.AddDays(1));

        Assert.Contains(
            "no run was driven from 2026-02-04",
            day.Prompt.Must(2, ["listen", day.Prompt.Study, path]),
            StringComparison.Ordinal
        );
        Assert.Empty(day.Study.Recordings);

        day.Prompt.Must(0, ["listen", day.Prompt.Study, path, "--offset", "86400"]);
        Assert.Single(day.Study.Recordings);
    }

    [Fact]
    public void Two_recordings_for_one_run_are_refused_and_another_one_only_replaces_the_first_on_demand()
    {
        using ADayWithRecorder day = new();
        string path = day.Drive();
        string other = day.Prompt.Here("other.wav");
        byte[] bytes = File.ReadAllBytes(path);
        bytes[^1] ^= 1;
        File.WriteAllBytes(other, bytes);
        File.SetLastWriteTimeUtc(other, File.GetLastWriteTimeUtc(path));

        Assert.Contains(
            "run 1 is in two of the files",
            day.Prompt.Must(2, ["listen", day.Prompt.Study, path, other]),
            StringComparison.Ordinal
        );
        Assert.Empty(day.Study.Recordings);

        day.Prompt.Must(0, ["listen", day.Prompt.Study, path]);
        string first = day.Study.Recordings[0].Sha256;
        Assert.Contains(
            "run 1 has another recording already",
            day.Prompt.Must(2, ["listen", day.Prompt.Study, other]),
            StringComparison.Ordinal
        );
        Assert.Equal(first, Assert.Single(day.Study.Recordings).Sha256);

        day.Prompt.Must(0, ["listen", day.Prompt.Study, other, "--again"]);
        Assert.NotEqual(first, Assert.Single(day.Study.Recordings).Sha256);
    }

    [Fact]
    public void Silence_is_refused_and_a_lossy_file_too_and_nothing_is_stored()
    {
        using ADayWithRecorder day = new();
        string path = day.Drive((_, samples) => Array.Clear(samples));
        string lossy = day.Prompt.Write("a.mp3", "ID3 and so on");

        string said = day.Prompt.Must(2, ["listen", day.Prompt.Study, path, lossy]);

        Assert.Contains("there is only silence in it; check microphone and cable", said, StringComparison.Ordinal);
        Assert.Contains("MPEG is lossy, not for levels", said, StringComparison.Ordinal);
        Assert.Empty(day.Study.Recordings);
    }

    [Fact]
    public void Overload_all_the_way_is_refused_and_in_one_window_it_is_told()
    {
        using ADayWithRecorder day = new();
        string loud = day.Drive((_, samples) => Louder(samples, 0, samples.Length));
        string once = day.Drive((_, samples) => Louder(samples, 12 * 16_000, 18 * 16_000));

        string said = day.Prompt.Must(2, ["listen", day.Prompt.Study, loud, once]);

        Assert.Contains("run 1: every window is overloaded; record with less gain", said, StringComparison.Ordinal);
        Assert.Contains("1 overloaded; these don't count", said, StringComparison.Ordinal);
        Assert.Equal(2, Assert.Single(day.Study.Recordings).Run);
    }

    [Fact]
    public void After_a_locked_prediction_and_while_a_run_is_on_no_recording_is_taken()
    {
        using ADayWithRecorder day = new();
        string path = day.Drive();
        day.Prompt.Enter($"run {day.Study.CodeAsked}\n");
        Assert.Contains(
            "a run is on; recordings are taken at a stop",
            day.Prompt.Must(1, ["listen", day.Prompt.Study, path]),
            StringComparison.Ordinal
        );
        day.Prompt.Enter("end trial\ncalibration after 94.0\n");
        day.Prompt.Enter($"predict Ro feature={day.Study.Codes.First()} sure=4\n");
        Assert.Contains(
            "no recording can be taken any more",
            day.Prompt.Must(1, ["listen", day.Prompt.Study, path]),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_drifting_chain_is_told()
    {
        using ADayWithRecorder day = new();
        day.Tone(94, "before.wav");
        day.Drive();
        day.Tone(93.3, "after.wav");

        Assert.Contains("over 0.5 dB of drift its levels don't count", day.Listen(), StringComparison.Ordinal);
        Assert.Equal(-0.7, ChainCalibration.Of(day.Study, "recorder").DriftDb!.Value, 0.01);
    }

    [Fact]
    public void The_stop_shows_how_the_recording_of_the_last_run_is_and_no_level_of_it()
    {
        using ADayWithRecorder day = new();
        day.Tone();
        day.Drive((_, samples) => Louder(samples, 12 * 16_000, 18 * 16_000));
        day.Listen();
        using OpenedStudy opened = OpenedStudy.ToRead(day.Prompt.Study, day.Prompt.Outside());
        using Tui tui = new(opened.Logbook, day.Prompt.Clock, desk => desk, 120, 40, "stop");

        tui.Keys("parked<Enter>");

        Assert.Contains("recordings of 1 of 1 runs", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("run 1: 4 of 4 readings heard, clock by file time within 2.0 s", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("1 overloaded; these don't count, record with less gain", tui.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("178", tui.Screen, StringComparison.Ordinal);
    }

    private static void Louder(float[] samples, int from, int to)
    {
        for (int i = from; i < to; i++)
        {
            samples[i] *= 100_000;
        }
    }
}
