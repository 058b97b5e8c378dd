namespace FieldSession.Terminal;

/// <summary>The keys of the stop screen.</summary>
internal static class StopKeys
{
    /// <summary>Every row.</summary>
    public static IEnumerable<KeyRow> Rows =>
    [
        new(KeyTable.Stop, ["Enter"], "run", "empty: starts the next run, protocol confirmed; figures correct the marked reading, a cause letter flags it, words are written as anywhere", KeyDeed.Answer),
        new(KeyTable.Stop, ["CursorUp"], "mark", "marks the reading before", KeyDeed.Previous),
        new(KeyTable.Stop, ["CursorDown"], "mark", "marks the reading after", KeyDeed.Next),
        new(KeyTable.Stop, ["y"], "stands", "the marked doubtful reading stands as it was typed", KeyDeed.Confirm),
        new(KeyTable.Stop, ["<"], "shift", "from the marked one on, all one segment back, as one recorded act", KeyDeed.ShiftBack),
        new(KeyTable.Stop, [">"], "shift", "from the marked one on, all one segment further on, as one recorded act", KeyDeed.ShiftOn),
        new(KeyTable.Stop, ["u", "/"], "undo", "takes the last act back; both stay in the journal", KeyDeed.Undo, "u"),
        new(KeyTable.Stop, ["Esc"], "drive", "empties the box; on an empty one goes back to drive", KeyDeed.Back),
        new(KeyTable.Stop, ["PageUp"], "", "a page up", KeyDeed.PageUp),
        new(KeyTable.Stop, ["PageDown"], "", "a page down", KeyDeed.PageDown),
        new(KeyTable.Stop, ["Home"], "", "to the first row", KeyDeed.Top),
        new(KeyTable.Stop, ["End"], "", "to the last row", KeyDeed.Bottom),
    ];
}
