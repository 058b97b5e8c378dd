namespace FieldSession.Terminal;

/// <summary>The keys of the stop screen.</summary>
internal static class StopKeys
{
    /// <summary>Every row.</summary>
    public static IEnumerable<KeyRow> Rows =>
    [
        new(KeyTable.Stop, ["Enter"], "run", "empty: starts the next run, protocol confirmed; figures correct or fill the marked row, a cause letter flags it, ; notes on it, words as anywhere", KeyDeed.Answer),
        new(KeyTable.Stop, ["CursorUp"], "mark", "marks the row before", KeyDeed.Previous),
        new(KeyTable.Stop, ["CursorDown"], "mark", "marks the row after", KeyDeed.Next),
        new(KeyTable.Stop, ["y"], "keep", "the marked doubtful reading is right as it was typed", KeyDeed.Confirm),
        new(KeyTable.Stop, ["<"], "shift", "from the marked one back to the next gap, all one segment back; once more: two segments; shown first, Enter takes it", KeyDeed.ShiftBack),
        new(KeyTable.Stop, [">"], "shift", "from the marked one on to the next gap, all one segment further on; once more: two segments; shown first, Enter takes it", KeyDeed.ShiftOn),
        new(KeyTable.Stop, ["Tab"], "", "completes the words begun in the box; on an empty one goes to what is due: marks the next doubt, or begins the line", KeyDeed.Due),
        new(KeyTable.Stop, ["Backspace"], "", "on an empty box: brings the line back that was not stored", KeyDeed.Recall),
        new(KeyTable.Stop, ["u", "/"], "undo", "takes the last act back; both stay in the journal", KeyDeed.Undo, "u"),
        new(KeyTable.Stop, ["Esc"], "drive", "empties the box; on an empty one goes back to drive", KeyDeed.Back),
        new(KeyTable.Stop, ["PageUp"], "", "a page up", KeyDeed.PageUp),
        new(KeyTable.Stop, ["PageDown"], "", "a page down", KeyDeed.PageDown),
        new(KeyTable.Stop, ["Home"], "", "to the first row", KeyDeed.Top),
        new(KeyTable.Stop, ["End"], "", "to the last row", KeyDeed.Bottom),
    ];
}
