namespace FieldSession.State;

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
