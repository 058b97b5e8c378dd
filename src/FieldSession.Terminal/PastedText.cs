namespace FieldSession.Terminal;

/// <summary>Pasted text as one line, because a box has one.</summary>
internal static class PastedText
{
    /// <summary>The lines joined by blanks; Terminal.Gui alone keeps the first and drops the others without a word.</summary>
    public static string InOneLine(string text) =>
        string.Join(' ', text.Split(['\r', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
}
