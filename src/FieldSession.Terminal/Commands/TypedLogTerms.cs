using FieldSession.Journal;
using FieldSession.Store.MeterLogs;

namespace FieldSession.Terminal.Commands;

/// <summary>What was typed behind 'log' about the file; null: not given.</summary>
/// <param name="Time">Header of the column with the time.</param>
/// <param name="Date">Header of the column with the date.</param>
/// <param name="Level">Header of the column with the level.</param>
/// <param name="Dates">Order of slashed dates.</param>
/// <param name="Zone">Zone of the meter's clock.</param>
/// <param name="Start">Date and time of the first line.</param>
/// <param name="Offset">By how much the meter's clock was ahead.</param>
internal sealed record TypedLogTerms(string? Time, string? Date, string? Level, string? Dates, string? Zone, string? Start, string? Offset)
{
    private const double LargestOffsetS = 1e6;

    /// <summary>The terms; where something is wrong the objections say what.</summary>
    /// <param name="zone">The laptop's zone.</param>
    /// <param name="objections">What is wrong.</param>
    /// <param name="offsetS">The meter's clock minus the laptop's, s; null: not given.</param>
    public MeterLogTerms Read(TimeZoneInfo zone, List<string> objections, out double? offsetS)
    {
        offsetS = Offset is { } text ? Typed.Number(text) : null;
        if (Offset is not null && !(Math.Abs(offsetS ?? double.NaN) <= LargestOffsetS))
        {
            objections.Add(ListenWords.NumberIs("--offset", Offset, -LargestOffsetS, LargestOffsetS));
        }

        if (Dates is not (null or "dmy" or "mdy"))
        {
            objections.Add(LogWords.DatesAre(Dates));
        }

        return new(
            Time,
            Date,
            Level,
            Dates switch { "dmy" => true, "mdy" => false, _ => null },
            TypedTimes.Zone(Zone, objections),
            TypedTimes.Local("--start", Start, zone, objections));
    }
}
