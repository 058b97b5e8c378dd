namespace FieldSession.Terminal;

/// <summary>The keys of the screen that comes before any study.</summary>
internal static class StartKeys
{
    /// <summary>Every row.</summary>
    public static IEnumerable<KeyRow> Rows =>
    [
        new(ScreenName.Start, ["Enter"], "open", "opens the marked study, or what is typed: a number, the path of a study, of a plan folder, or 'demo'", KeyDeed.Answer),
        new(ScreenName.Start, ["CursorUp"], "mark", "marks the one before", KeyDeed.Previous),
        new(ScreenName.Start, ["CursorDown"], "mark", "marks the one after", KeyDeed.Next),
        new(ScreenName.Start, ["Esc"], "", "empties the box", KeyDeed.Back),
    ];
}
