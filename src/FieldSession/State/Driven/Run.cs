using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>One trip over the route on one code.</summary>
/// <param name="Number">Number of the run, from 1, in driven order.</param>
/// <param name="Code">The code that is driven.</param>
/// <param name="Session">The session it belongs to, from 1.</param>
/// <param name="Started">Where its start is in the journal.</param>
public sealed record Run(int Number, SpecCode Code, int Session, LineMark Started)
{
    /// <summary>Who drives; null: not noted.</summary>
    public string? Driver { get; init; }

    /// <summary>The car that is driven; null: there is one car.</summary>
    public string? Car { get; init; }

    /// <summary>Its place in the plan's order, from 0; null: beyond the order.</summary>
    public int? Step { get; init; }

    /// <summary>Its turn among the runs to be driven, from 0; a run that repeats an aborted one takes its turn again.</summary>
    public int Turn { get; init; }

    /// <summary>That it was ended before its last segment; null: driven to its end, or still on.</summary>
    public Abort? Aborted { get; init; }

    /// <summary>
    /// Whether its car was named although the order's next run was another car's: this laptop drives along with that car.
    /// </summary>
    public bool IsCarChosen { get; init; }

    /// <summary>Why the run's code is doubtful; null: the order asks for it.</summary>
    public string? Doubt { get; init; }

    /// <summary>What was passed so far, in the order it was typed.</summary>
    public ImmutableList<Passage> Passages { get; init; } = [];

    /// <summary>The shifts of its passages that repaired an off-by-one, in order.</summary>
    public ImmutableList<LineMark> Shifts { get; init; } = [];

    /// <summary>Number of the segment that the next reading belongs to; one beyond the last when the run is over.</summary>
    public int NextSegment { get; init; } = 1;

    /// <summary>Where the run's end is in the journal; null: it is still on.</summary>
    public LineMark? Ended { get; init; }

    /// <summary>Whether the car is on this run now.</summary>
    public bool IsOn => Ended is null;

    /// <summary>The readings, in the order they were typed.</summary>
    public IEnumerable<Reading> Readings => Passages.OfType<Reading>();

    /// <summary>The last reading typed; null: none yet.</summary>
    public Reading? LastReading
    {
        get
        {
            for (int i = Passages.Count - 1; i >= 0; i--)
            {
                if (Passages[i] is Reading reading)
                {
                    return reading;
                }
            }

            return null;
        }
    }

    /// <summary>Highest number of a segment passed so far; 0: none.</summary>
    public int Furthest { get; init; }

    /// <summary>The readings of a segment, in the order they were typed.</summary>
    public Reading[] ReadingsOn(int segment) => [.. Readings.Where(reading => reading.Segment == segment)];

    /// <summary>The place of one of its readings as it is typed: "2.5", or "2.5.1" for the first of several on the segment.</summary>
    public string PlaceOf(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        Reading[] takes = ReadingsOn(reading.Segment);
        return takes.Length > 1 ? $"{Number}.{reading.Segment}.{Array.IndexOf(takes, reading) + 1}" : $"{Number}.{reading.Segment}";
    }

    /// <summary>Whether a segment has been passed in this run.</summary>
    public bool Passed(int segment) => segment <= Furthest && Passages.Any(p => p.Segment == segment);
}

/// <summary>That a run was ended before its last segment.</summary>
/// <param name="Cause">Why, in the crew's words; null: not said yet.</param>
public sealed record Abort(string? Cause);

/// <summary>Which readings of an aborted run count; fixed in the plan, so that no result can decide it.</summary>
public enum AbortRule
{
    /// <summary>They count until its place is driven to the end; then that run counts alone.</summary>
    Repeat,

    /// <summary>They count beside the run that repeats it.</summary>
    Both,

    /// <summary>They never count.</summary>
    Neither,
}
