using System.Globalization;
using FieldSession.Aligning;
using FieldSession.State;
using FieldSession.Store.MeterLogs;

namespace FieldSession.Terminal.Commands;

/// <summary>What the command 'log' says: by run and segment, never by code.</summary>
internal static class LogWords
{
    public const string NoStart = "the log counts from its start; give --start with date and time of the first line";

    public static string DatesAre(string text) => $"--dates {Store.Readings.FileProblem.Shown(text)}: give dmy or mdy";

    /// <summary>The answer.</summary>
    public static IEnumerable<string> Of(MeterLog log, LogComparison compared, Study study)
    {
        yield return $"{log.Lines.Length} lines, columns {log.Columns}, one each {log.StepS.ToString("0.###", CultureInfo.InvariantCulture)} s";
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"meter's clock {compared.OffsetS:+0.0;-0.0;0.0} s from the laptop's, by {RecordingWords.Source(compared.ClockBy)} within {compared.HalfRangeS:0.0} s");
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"{compared.Readings.Count(one => one.Fit != EntryFit.NotHeard)} of {compared.Readings.Count} readings compared, typed {compared.MedianDb:+0.0;-0.0;0.0} dB from the log at the median");
        foreach ((Run run, Reading reading, LoggedReading found) in compared.DoubtsIn(study))
        {
            yield return string.Create(
                CultureInfo.InvariantCulture, $"! {Place(run, reading, study)}: {Fit(found.Fit)}, {found.ResidualDb:+0.0;-0.0} dB; 'correct {run.PlaceOf(reading)} LOW-HIGH' where it is wrong");
        }

        foreach ((Run run, Reading reading, LoggedReading _) in compared.TrafficIn(study))
        {
            yield return $"traffic proposed: {Place(run, reading, study)}; 'flag {run.PlaceOf(reading)} t' flags it late, where you saw some";
        }

        if (compared.IsLikeSlow == true)
        {
            yield return "! meter on slow? typed ranges are as narrow as those of time weighting S";
        }

        foreach (string remark in log.Remarks)
        {
            yield return $"! {remark}";
        }
    }

    private static string Place(Run run, Reading reading, Study study) => $"run {run.Number}, {reading.Segment} {study.Plan!.Route[reading.Segment - 1].Name}";

    private static string Fit(EntryFit fit) => fit switch
    {
        EntryFit.TenOff => "ten off",
        EntryFit.DigitsSwapped => "digits swapped",
        _ => "does not fit",
    };
}
