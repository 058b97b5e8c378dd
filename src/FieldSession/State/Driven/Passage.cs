using FieldSession.Measures;

namespace FieldSession.State;

/// <summary>The car's passing of one segment in one run, as far as the crew got hold of it.</summary>
/// <param name="Segment">Number of the segment.</param>
/// <param name="Mark">Where it is in the journal.</param>
public abstract record Passage(int Segment, LineMark Mark);

/// <summary>A segment on which nothing was read.</summary>
/// <param name="Segment">Number of the segment.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record Missed(int Segment, LineMark Mark) : Passage(Segment, Mark);

/// <summary>What the meter showed on a segment.</summary>
/// <param name="Segment">Number of the segment.</param>
/// <param name="Levels">Low-high range, or one value.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record Reading(int Segment, LevelRange Levels, LineMark Mark) : Passage(Segment, Mark)
{
    /// <summary>Why the reading is left out of the clean result; null: it is clean.</summary>
    public Spoiling? Spoilt { get; init; }

    /// <summary>The cause of a flag that was set and taken back by a second key; null: none was.</summary>
    public SpoiltCause? FlagTakenBack { get; init; }

    /// <summary>Why the reading will be asked about at the next stop; null: nothing is doubtful.</summary>
    public string? Doubt { get; init; }

    /// <summary>What was stored before it was corrected at a stop; null: never corrected.</summary>
    public LevelRange? CorrectedFrom { get; init; }

    /// <summary>Whether nothing had been stored on the segment while driving, and it was filled in at a stop.</summary>
    public bool FilledAtStop { get; init; }

    /// <summary>Whether the crew was asked at a stop and keeps it.</summary>
    public bool Confirmed { get; init; }

    /// <summary>Whether the crew still has to be asked about it.</summary>
    public bool IsToBeAsked => Doubt is not null && !Confirmed;

    /// <summary>Levels beside dB(A) and the name of a recording; null: none.</summary>
    public Extras? Extras { get; init; }

    /// <summary>Whether the range was typed high first.</summary>
    public bool Swapped { get; init; }

    /// <summary>Whether the clean result leaves the reading out: flagged, and not too late.</summary>
    public bool LeftOut => Spoilt is { Late: false };
}

/// <summary>A flag on a reading that something spoilt.</summary>
/// <param name="Cause">What spoilt it.</param>
/// <param name="Words">More in the crew's words; null: none.</param>
/// <param name="Late">Whether the flag came after the next segment had begun: kept, and used in the sensitivity result only.</param>
public sealed record Spoiling(SpoiltCause Cause, string? Words, bool Late);

/// <summary>What the ear calls for beside dB(A) on one reading. It is compared as findings of its own, never mixed into dB(A).</summary>
public sealed record Extras
{
    /// <summary>C-weighted level, dB(C); null: not read.</summary>
    public double? CDb { get; init; }

    /// <summary>One-third-octave level at 200 Hz, dB; null: not read.</summary>
    public double? Band200Db { get; init; }

    /// <summary>One-third-octave level at 250 Hz, dB; null: not read.</summary>
    public double? Band250Db { get; init; }

    /// <summary>Name of a recording; null: none.</summary>
    public string? Recording { get; init; }
}
