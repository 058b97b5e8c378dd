using System.Globalization;
using FieldSession.Acoustics;
using FieldSession.Signals;
using FieldSession.Store.Recordings;

namespace FieldSession.Terminal.Commands;

/// <summary>What the command 'levels' says.</summary>
internal static class LevelsWords
{
    private const int Band200 = -7;
    private const int Band250 = -6;

    public const string GainOrTone = "--gain and --tone: give one of them";
    public const string AfterNeedsTone = "--after: give --tone too, what the calibrator makes";
    public const string NoTone = "no steady tone of 1 kHz for 4 s; record the calibrator again, in quiet";
    public const string Pistonphone = "the tone is 250 Hz; the gain is taken from 1 kHz only, or given by --gain";
    public const string DifferencesOnly = "not calibrated: levels are re full scale, good for differences only";

    public static string GainIsANumber(string text) => $"--gain {FileText(text)}: give dB from -200 to 300";

    public static string ToneIsANumber(string text) => $"--tone {FileText(text)}: give what the calibrator makes, 40 to 160 dB, such as 94";

    public static string ChannelIsANumber(string text) => $"--channel {FileText(text)}: give a number from 1";

    public static string WindowIsFromTo(string text) => $"--window {FileText(text)}: give seconds as FROM-TO, such as 12-20.5";

    public static string RawIsRateBitsChannels(string text) =>
        $"--raw {FileText(text)}: give RATE,BITS,CHANNELS, such as 48000,24,1 or 48000,f32,2";

    public static string NoSuchFile(string path) => $"{path}: there is no such file that can be read; give its path";

    public static string NoSuchChannel(int channel, int channels) => $"there is no channel {channel}; it has {channels}";

    public static string DeadChannel(int channel, int channels) =>
        channels == 1
            ? "there is only silence in it; check microphone and cable"
            : $"channel {channel} is dead; choose another with --channel";

    public static string NoWeightings(int rateHz) => $"{rateHz} samples a second: bands only, no A or C levels; those need 44100";

    public static string NoToneAfter(string path) => $"{path}: no steady tone of 1 kHz for 4 s, so no drift is known";

    public static string Drifted(double driftDb, bool isVoid) =>
        $"the chain drifted by {driftDb:+0.00;-0.00} dB; {(isVoid ? "over 0.5 its levels don't count" : "over 0.3 look for the cause")}";

    public static string BeyondTheEnd(TimeWindow window, double seconds) =>
        $"window {Shown(window)}: the recording ends at {seconds:0.00} s";

    public static string Silence(TimeWindow window) => $"window {Shown(window)}: silence";

    public static string TooShortForBands(TimeWindow window) => $"window {Shown(window)}: too short for bands, which need 1.28 s";

    public static string Clipped(TimeWindow window, int events) =>
        $"window {Shown(window)}: clipped {events} times; its levels don't count";

    public static string LikeSpeech(TimeWindow window) => $"window {Shown(window)}: the level swings as in speech; keep silent in windows";

    public static IEnumerable<string> Of(MeteredRecording recording)
    {
        SoundFormat format = recording.Format;
        yield return $"{format.RateHz} samples a second, {format.Bits} bit{(format.IsFloat ? " floating point" : "")}, "
            + $"{(format.Channels == 1 ? "1 channel" : $"{format.Channels} channels")}, {recording.Levels.Seconds:0.00} s";
        if (recording.Calibration is { } calibration)
        {
            yield return Calibrated(calibration);
        }

        yield return "";
        yield return " from s    to s   LAeq LAFmax    L10    L50    L90    200    250   ring   prom";
        foreach (WindowLevels window in recording.Levels.Windows)
        {
            yield return Row(window);
        }

        foreach ((string segment, RingDecayTime? decay) in recording.Decays)
        {
            yield return decay is null
                ? $"ring after impacts, {segment}: not determinable, under 20 dB over the noise"
                : $"ring after impacts, {segment}: {decay.T60S:0.000} s for 60 dB ({decay.LowS:0.000} to {decay.HighS:0.000}), "
                    + $"impacts {decay.Events}";
        }

        foreach (string remark in recording.Remarks)
        {
            yield return $"! {remark}";
        }
    }

    private static string Calibrated(RecordingCalibration calibration) =>
        calibration.Tone is { } tone
            ? $"tone at {tone.FromS:0.0}-{tone.ToS:0.0} s: gain {calibration.GainDb:0.00} dB"
                + (calibration.DriftDb is { } drift ? $", drift {drift:+0.00;-0.00;0.00} dB" : "")
            : $"gain {calibration.GainDb:0.00} dB as given";

    private static string Row(WindowLevels window) =>
        string.Concat(
            $"{window.Window.FromS, 7:0.0} {window.Window.ToS, 7:0.0}",
            Cell(window.LAeqDb),
            Cell(window.LAFmaxDb),
            Cell(window.L10Db),
            Cell(window.L50Db),
            Cell(window.L90Db),
            Cell(Band(window, Band200)),
            Cell(Band(window, Band250)),
            Cell(window.RingDb),
            Cell(window.ProminenceDb)
        );

    private static double? Band(WindowLevels window, int n) =>
        window.Bands.Where(band => band.N == n).Select(band => band.LevelDb).FirstOrDefault();

    private static string Cell(double? level) => level is { } known ? $" {known, 6:0.0}" : "      -";

    private static string Shown(TimeWindow window) => string.Create(CultureInfo.CurrentCulture, $"{window.FromS:0.##}-{window.ToS:0.##} s");

    private static string FileText(string text) => Store.Readings.FileProblem.Shown(text);
}
