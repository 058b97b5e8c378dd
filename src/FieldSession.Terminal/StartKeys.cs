namespace FieldSession.Terminal;

/// <summary>The keys of the screen that comes before any study.</summary>
internal static class StartKeys
{
    /// <summary>Every row.</summary>
    public static IEnumerable<KeyRow> Rows =>
    [
        new(KeyTable.Start, ["Enter"], "open", "opens the marked study, or what is typed: a number, the path of a study, of a plan folder, or 'demo'", KeyDeed.Answer),
        new(KeyTable.Start, ["CursorUp"], "mark", "marks the one before", KeyDeed.Previous),
        new(KeyTable.Start, ["CursorDown"], "mark", "marks the one after", KeyDeed.Next),
        new(KeyTable.Start, ["Esc"], "", "empties the box", KeyDeed.Back),
    ];
}
