using System.Collections.Immutable;

namespace FieldSession.Terminal;

/// <summary>The names of keys: as they are on the key, and as Terminal.Gui calls them.</summary>
internal static class KeyNames
{
    private static readonly ImmutableArray<(string Known, string Shown)> Differing =
    [
        ("CursorUp", "Up"), ("CursorDown", "Down"), ("CursorLeft", "Left"), ("CursorRight", "Right"), ("PageUp", "PgUp"), ("PageDown", "PgDn"),
    ];

    /// <summary>The name as it is on the key.</summary>
    public static string Shown(string known) => Differing.FirstOrDefault(name => name.Known == known).Shown ?? known;

    /// <summary>The name as Terminal.Gui knows it.</summary>
    public static string Known(string shown) =>
        Differing.FirstOrDefault(name => string.Equals(name.Shown, shown, StringComparison.OrdinalIgnoreCase)).Known ?? shown;
}
