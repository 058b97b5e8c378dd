namespace FieldSession.Terminal;

/// <summary>The keys of the stop screen.</summary>
internal static class StopKeys
{
    /// <summary>Every row.</summary>
    public static IEnumerable<KeyRow> Rows =>
    [
        new(ScreenName.Stop, ["Enter"], "run", "empty: starts the next run, protocol confirmed; figures correct or fill the marked row, a cause letter flags it, ; notes on it, words as anywhere", KeyDeed.Answer),
        new(ScreenName.Stop, ["CursorUp"], "mark", "marks the row before", KeyDeed.Previous),
        new(ScreenName.Stop, ["CursorDown"], "mark", "marks the row after", KeyDeed.Next),
        new(ScreenName.Stop, ["y"], "keep", "the marked doubtful reading is right as it was typed", KeyDeed.Confirm),
        new(ScreenName.Stop, ["<"], "shift", "from the marked one back to the next gap, all one segment back; once more: two segments; shown first, Enter takes it", KeyDeed.ShiftBack),
        new(ScreenName.Stop, [">"], "shift", "from the marked one on to the next gap, all one segment further on; once more: two segments; shown first, Enter takes it", KeyDeed.ShiftOn),
        new(ScreenName.Stop, ["Tab"], "", "completes the words begun in the box; on an empty one goes to what is due: marks the next doubt, or begins the line", KeyDeed.Due),
        new(ScreenName.Stop, ["Backspace"], "", "on an empty box: brings the line back that was not stored", KeyDeed.Recall),
        new(ScreenName.Stop, ["u", "/"], "undo", "takes the last act back; both stay in the journal", KeyDeed.Undo, "u"),
        new(ScreenName.Stop, ["Esc"], "drive", "empties the box; on an empty one goes back to drive", KeyDeed.Back),
        new(ScreenName.Stop, ["PageUp"], "", "a page up", KeyDeed.PageUp),
        new(ScreenName.Stop, ["PageDown"], "", "a page down", KeyDeed.PageDown),
        new(ScreenName.Stop, ["Home"], "", "to the first row", KeyDeed.Top),
        new(ScreenName.Stop, ["End"], "", "to the last row", KeyDeed.Bottom),
    ];
}
