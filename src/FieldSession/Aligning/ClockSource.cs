namespace FieldSession.Aligning;

/// <summary>What an offset between two clocks is known by, best first.</summary>
public enum ClockSource
{
    /// <summary>Knocks and a key.</summary>
    Marks,

    /// <summary>The time in the file, or the file's own times.</summary>
    FileTime,

    /// <summary>Somebody gave it.</summary>
    Given,

    /// <summary>Typed levels held against the levels of the recording; nearly blind towards too early.</summary>
    TypedLevels,
}
