using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>Completes a line of words that has been begun in the box.</summary>
internal static class WordsBegun
{
    /// <summary>The box's text with its first word completed to one that can be written now; the same text where none fits.</summary>
    public static string Completed(string text, Study study)
    {
        string begun = Typing.LineOf(text);
        string? whole = Lines(study).FirstOrDefault(line => line.StartsWith(begun, StringComparison.OrdinalIgnoreCase));
        return whole is null || begun.Contains(' ', StringComparison.Ordinal) ? text : $":{whole}";
    }

    // In the order of the day, so that what is due stands first; an empty box is completed to what is due.
    private static ImmutableArray<string> Lines(Study study)
    {
        string run = study.CodeAsked is { } code ? $"run {code}" : "run ";
        string[] lines = study switch
        {
            { RunOn: not null } => ["seg ", "end", "flag "],
            { SessionOn: null } => ["calibration before ", "weather ", run, "override ", "flag "],
            { OrderDriven: true } => ["calibration after ", run, "flag ", "weather "],
            { Weather.Count: 0 } => ["weather ", run, "calibration before ", "override "],
            _ => [run, "weather ", "calibration after ", "flag ", "override "],
        };
        return [.. lines];
    }
}
