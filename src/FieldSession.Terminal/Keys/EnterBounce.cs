namespace FieldSession.Terminal;

/// <summary>Tells a second Enter that comes too soon from one that is meant: a bouncing key, or a bump in the road.</summary>
/// <param name="clock">Where the time comes from.</param>
internal sealed class EnterBounce(TimeProvider clock)
{
    /// <summary>A second Enter within this time is none.</summary>
    public static readonly TimeSpan Within = TimeSpan.FromMilliseconds(300);

    private DateTimeOffset _last = DateTimeOffset.MinValue;

    /// <summary>Takes notice of an Enter.</summary>
    /// <returns>Whether it came too soon after the one before.</returns>
    public bool IsBounce()
    {
        TimeSpan since = clock.GetUtcNow() - _last;
        _last += since;

        // A clock that was set back must not make the key dead until it has caught up.
        return since >= TimeSpan.Zero && since < Within;
    }
}

/// <summary>Pasted text as one line, because a box has one.</summary>
internal static class PastedText
{
    /// <summary>The lines joined by blanks; Terminal.Gui alone keeps the first and drops the others without a word.</summary>
    public static string InOneLine(string text) =>
        string.Join(' ', text.Split(['\r', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
}
