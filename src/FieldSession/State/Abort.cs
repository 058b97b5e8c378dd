namespace FieldSession.State;

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
