using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>Completes a line of words that has been begun in the box.</summary>
internal static class WordsBegun
{
    private const int LettersOfWord = 2;

    /// <summary>
    /// The box's text with its first word completed to one that can be written now; the same text where none fits. Once more, it is
    /// the next word that begins with the same two letters.
    /// </summary>
    public static string Completed(string text, Study study)
    {
        string begun = Typing.LineOf(text);
        ImmutableArray<string> lines = Lines(study);
        int whole = begun.Length == 0 ? -1 : lines.IndexOf(lines.FirstOrDefault(line => Same(line.Trim(), begun), ""));
        string? next = whole < 0
            ? lines.FirstOrDefault(line => line.StartsWith(begun, StringComparison.OrdinalIgnoreCase))
            : lines[(whole + 1)..].Concat(lines[..whole]).FirstOrDefault(line => line.StartsWith(begun[..Math.Min(LettersOfWord, begun.Length)], StringComparison.OrdinalIgnoreCase));
        return next is null || (whole < 0 && begun.Contains(' ', StringComparison.Ordinal)) ? text : $":{next}";
    }

    // What is due is first, so that an empty box, or one letter, is completed to that; then every word that can be of use now.
    private static ImmutableArray<string> Lines(Study study)
    {
        string run = study.CodeAsked is { } code ? $"run {code}" : "run ";
        string[] due = study switch
        {
            { RunOn: not null } => ["seg ", "end", "flag "],
            { SessionOn: null } => ["calibration before ", "weather ", run, "override ", "flag "],
            { OrderDriven: true } => ["calibration after ", run, "flag ", "weather "],
            { Weather.Count: 0 } => ["weather ", run, "calibration before ", "override "],
            _ => [run, "weather ", "calibration after ", "flag ", "override "],
        };
        string[] said = [.. due.Select(line => line.Split(' ')[0])];
        return [.. due, .. VerbTable.UsableIn(study).Where(verb => !said.Contains(verb.Word)).Select(verb => verb.Begun)];
    }

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
