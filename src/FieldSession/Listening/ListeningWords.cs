using System.Globalization;
using FieldSession.Aligning;
using FieldSession.State;

namespace FieldSession.Listening;

/// <summary>What is said of recordings of runs.</summary>
internal static class ListeningWords
{
    public const string DataAreFrozen = "a prediction is locked, so no recording can be taken any more";
    public const string RunIsOn = "a run is on; recordings are taken at a stop";
    public const string StopAndParkFirst = "stop and park first";
    public const string DriveFirst = "drive a run first";
    public const string GiveRunThatWasDriven = "give the number of a run that was driven";
    public const string RingIsOpenAlready = "the ring is uncovered already";
    public const string NoRecordingYet = "no recording was taken yet";
    public const string ListenFirst = "take recordings with 'fieldsession listen' first";
    public const string MarkIsAlone = "'mark' takes no words";
    public const string ChainNeedsNameAndWords = "a chain needs a name of one word, and what it is made of";
    public const string ChainForm = "type it as 'chain recorder at=headrest gain=3'";
    public const string RingNeedsReason = "uncovering the ring early needs a reason";
    public const string RingForm = "type 'ring open because WHY'; otherwise it opens with the last prediction";
    public const string SayWhichClock = "give --clock marks or --clock file";
    public const string ZoneIsNotTold = "its recorder gives a time without a zone";
    public const string GiveZone = "give --zone, such as +01:00";
    public const string NoTimeKnown = "its start time is not known";
    public const string GiveBegin = "give --begun DATE TIME";
    public const string GiveRightTime = "give --begun, --offset, or a mark";
    public const string CheckMicrophone = "check microphone and cable";
    public const string LowerGain = "record with less gain";
    public const string KeepSilent = "keep silent in windows";
    public const string StillRecording = "the file grew while it was read";
    public const string StopRecorder = "stop the recorder and listen again";
    public const string SilenceAlone = "there is only silence in it";
    public const string Pistonphone = "its tone is 250 Hz and not used; a calibrator of 1 kHz gives the gain";
    public const string PistonphoneAlone = "its tone is 250 Hz and not used";
    public const string GiveOtherTone = "give a calibrator's of 1 kHz, or --gain";
    public const string LogHoldsNoReading = "the log does not cover any reading";
    public const string GiveOffset = "give --offset, by how much the meter's clock was ahead";
    public const string JoinParts = "join the parts of a split recording into one file";
    public const string GainOff = "turn automatic gain and limiter off";

    public static string ChannelIsDead(int channel) => $"channel {channel} is dead";

    public static string ChooseChannel(int loudest) => $"give --channel {loudest}";

    public static string BandsAlone(int rateHz) => $"{rateHz} samples a second: bands only, no A or C levels";

    public static string NoSuchRun(int run) => $"there is no run {run}";

    public static string MarkIsGiven(int marks) => $"mark {marks} for the recorder's clock";

    public static string RingIsUncovered(string why) => $"the ring is uncovered before the predictions: {why}";

    public static string ChainIsCalibrated(ChainCalibration chain) =>
        chain.DriftDb is { } drift
            ? $"chain {chain.Chain} calibrated, drift {drift:+0.00;-0.00;0.00} dB"
            : $"chain {chain.Chain} calibrated";

    public static string RecordingIsTaken(RunRecording recording) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"recording {recording.Ordinal} of run {recording.Run}: {recording.Segments.Count} readings heard, {Clock(recording)}"
        );

    public static string LogIsCompared(LogComparison log, int doubts) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"log beside {log.Readings.Count(one => one.Fit != EntryFit.NotHeard)} readings: {doubts} in doubt, traffic "
                + $"proposed in {log.Readings.Count(one => one.HasTraffic)}"
        );

    public static string MarksContradictFile(double seconds) =>
        string.Create(CultureInfo.InvariantCulture, $"its marks and its file time are {Math.Abs(seconds):0} s apart");

    public static string NoRunInIt(DateTimeOffset begun, double seconds, int? asked) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{(asked is { } run ? $"run {run} was not driven" : "no run was driven")} from {begun:yyyy-MM-dd HH:mm:ss} to "
                + $"{begun.AddSeconds(seconds):HH:mm:ss} UTC"
        );

    public static string LessThanHalfOfRun(int run) => $"it holds less than half of run {run}";

    public static string OnlySilence(int run) => $"run {run}: only silence in its windows";

    public static string AllClipped(int run) => $"run {run}: every window is overloaded";

    public static string AllSpeech(int run) => $"run {run}: the level swings as in speech in every window";

    public static string AutomaticGain(int run, GainSlope slope) =>
        string.Create(CultureInfo.InvariantCulture, $"run {run}: automatic gain suspected, {slope.Slope:0.00} dB for each typed dB");

    public static string TypedContradict(int run, double seconds) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"run {run}: by the typed levels it began {Math.Abs(seconds):0} s {(seconds > 0 ? "earlier" : "later")}"
        );

    private static string Clock(RunRecording recording) =>
        string.Create(CultureInfo.InvariantCulture, $"clock by {InWords(recording.ClockBy)} within {recording.HalfRangeS:0.0} s");

    private static string InWords(ClockSource source) =>
        source switch
        {
            ClockSource.Marks => "marks",
            ClockSource.Given => "what was given",
            ClockSource.FileTime => "file time",
            _ => "typed levels",
        };
}
