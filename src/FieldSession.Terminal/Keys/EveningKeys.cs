namespace FieldSession.Terminal;

/// <summary>The keys of the screens that are used when parked.</summary>
internal static class EveningKeys
{
    /// <summary>Every row, screen by screen.</summary>
    public static IEnumerable<KeyRow> Rows =>
        [
            new(
                ScreenName.Review,
                ["Enter"],
                "segment",
                "shows the readings and notes of the chosen segment, or of the one whose number is typed; a line in the box is "
                    + "written, such as a late flag 'flag 2.5 t words'",
                KeyDeed.Answer
            ),
            new(ScreenName.Review, ["CursorLeft"], "choose", "chooses the segment before", KeyDeed.Previous),
            new(ScreenName.Review, ["CursorRight"], "choose", "chooses the segment after", KeyDeed.Next),
            new(ScreenName.Review, ["Esc"], "back", "empties the box; on an empty one goes back to the summary", KeyDeed.Back),
            .. Scrolling(ScreenName.Review),
            new(ScreenName.Predict, ["Enter"], "answer", "takes the answer in the box; at the end locks the prediction", KeyDeed.Answer),
            new(ScreenName.Predict, ["Esc"], "back", "empties the box; on an empty one goes back a question", KeyDeed.Back),
            .. Scrolling(ScreenName.Predict),
            new(ScreenName.Reveal, ["Enter"], "answer", "takes the answer in the box; at the end opens the key", KeyDeed.Answer),
            new(ScreenName.Reveal, ["Esc"], "back", "empties the box; on an empty one begins again", KeyDeed.Back),
            .. Scrolling(ScreenName.Reveal),
            new(ScreenName.Report, ["w"], "write", "writes the report and says where", KeyDeed.Save),
            new(ScreenName.Report, ["Enter"], "", "writes a line typed in the box, such as a note '; words'", KeyDeed.Answer),
            new(ScreenName.Report, ["Esc"], "", "empties the box", KeyDeed.Back),
            .. Scrolling(ScreenName.Report),
        ];

    private static IEnumerable<KeyRow> Scrolling(string screen) =>
        [
            new(screen, ["PageUp"], "page", "a page up", KeyDeed.PageUp),
            new(screen, ["PageDown"], "page", "a page down", KeyDeed.PageDown),
            new(screen, ["CursorUp"], "", "a row up", KeyDeed.Up),
            new(screen, ["CursorDown"], "", "a row down", KeyDeed.Down),
            new(screen, ["Home"], "", "to the first row", KeyDeed.Top),
            new(screen, ["End"], "", "to the last row", KeyDeed.Bottom),
        ];
}

/// <summary>The keys of the screen that comes before any study.</summary>
internal static class StartKeys
{
    /// <summary>Every row.</summary>
    public static IEnumerable<KeyRow> Rows =>
        [
            new(
                ScreenName.Start,
                ["Enter"],
                "open",
                "opens the marked study, or what is typed: a number, the path of a study, of a plan folder, or 'demo'",
                KeyDeed.Answer
            ),
            new(ScreenName.Start, ["CursorUp"], "mark", "marks the one before", KeyDeed.Previous),
            new(ScreenName.Start, ["CursorDown"], "mark", "marks the one after", KeyDeed.Next),
            new(ScreenName.Start, ["Esc"], "", "empties the box", KeyDeed.Back),
        ];
}
