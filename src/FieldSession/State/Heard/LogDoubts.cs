using FieldSession.Aligning;

namespace FieldSession.State;

/// <summary>What a meter's own log makes doubtful in the study's typed readings.</summary>
public static class LogDoubts
{
    /// <summary>The readings that don't fit, with their runs.</summary>
    public static IEnumerable<(Run Run, Reading Reading, LoggedReading Found)> DoubtsIn(this LogComparison log, Study study) =>
        Found(log, study).Where(found => found.Found.Fit is EntryFit.TenOff or EntryFit.DigitsSwapped or EntryFit.DoesNotFit);

    /// <summary>The readings during which somebody seems to have passed by and that are not flagged.</summary>
    public static IEnumerable<(Run Run, Reading Reading, LoggedReading Found)> TrafficIn(this LogComparison log, Study study) =>
        Found(log, study).Where(found => found.Found.HasTraffic && found.Reading.Spoilt is null);

    private static IEnumerable<(Run Run, Reading Reading, LoggedReading Found)> Found(LogComparison log, Study study)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(study);
        return from found in log.Readings
            where found.Run <= study.Runs.Count
            let run = study.Runs[found.Run - 1]
            let reading = run.Readings.FirstOrDefault(reading => reading.Mark.Number == found.Line)
            where reading is not null
            select (run, reading, found);
    }
}
