using System.Collections.Immutable;

namespace FieldSession.Terminal;

/// <summary>The keys of the plan screen.</summary>
internal static class PlanKeys
{
    /// <summary>The key that proposes orders of runs.</summary>
    public const string Orders = "Ctrl+O";

    /// <summary>The key that goes through what is to be repaired or to be looked at.</summary>
    public const string Look = "Ctrl+W";

    /// <summary>The rows.</summary>
    public static ImmutableArray<KeyRow> Rows =>
        [
            Sheet(["Enter"], "set", "sets the cell to what is in the box and goes on; a lone - empties it", "store"),
            Sheet(["Ctrl+S"], "write", "writes plan.toml and route.csv", "save"),
            Sheet([Look], "fix", "goes to the next thing to fix or to look at", "look"),
            Sheet([Orders], "orders", "proposes orders of runs; a number and Enter takes one", "orders"),
            Sheet(["Ctrl+N"], "new", "adds a segment after this one", "add"),
            Sheet(["Ctrl+K"], "copy", "copies the segment", "copy"),
            Sheet(["Ctrl+D"], "delete", "deletes the segment", "delete"),
            Sheet(["Ctrl+U", "Alt+CursorUp"], "move", "moves the segment up", "raise"),
            Sheet(["Ctrl+L", "Alt+CursorDown"], "move", "moves the segment down", "lower"),
            Sheet(["Tab"], "edit", "brings the cell's text into the box", "edit"),
            Sheet(["Ctrl+T"], "part", "to the next part: words, route, limits", "part"),
            Sheet(["CursorUp"], "", "one row up", "up"),
            Sheet(["CursorDown"], "", "one row down", "down"),
            Sheet(["CursorLeft"], "", "one cell to the left, while the box is empty", "left"),
            Sheet(["CursorRight"], "", "one cell to the right, while the box is empty", "right"),
            Sheet(["PageUp"], "", "a page up", "pageup"),
            Sheet(["PageDown"], "", "a page down", "pagedown"),
            Sheet(["Home"], "", "the first row, while the box is empty", "home"),
            Sheet(["End"], "", "the last row, while the box is empty", "end"),
            Sheet(["Esc"], "", "empties the box, leaves the orders, or closes the help", "clear"),
        ];

    private static KeyRow Sheet(ImmutableArray<string> keys, string label, string words, string act) =>
        new(ScreenName.Plan, keys, label, words, KeyDeed.Plan, act);
}
