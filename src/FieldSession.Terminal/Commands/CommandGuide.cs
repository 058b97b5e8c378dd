namespace FieldSession.Terminal.Commands;

/// <summary>What a command's help adds to its words: a line that can be typed, and what usually comes next.</summary>
/// <param name="Name">The command.</param>
/// <param name="Example">A whole line.</param>
/// <param name="Next">The command that usually follows; null: the study itself says what is due.</param>
internal sealed record CommandGuide(string Name, string Example, string? Next = null)
{
    /// <summary>The row of a command; null: it is no command of the program, but the program itself.</summary>
    public static CommandGuide? Of(string name) => GuideWords.Rows.FirstOrDefault(guide => guide.Name == name);
}
