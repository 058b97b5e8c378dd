using System.Collections.Immutable;
using FieldSession.Measures;

namespace FieldSession.Sealing;

/// <summary>
/// Draws what is written under the tape: four letters that say nothing, so that a glimpse of a mark tells nothing. Vowels are left
/// out, because they would make words, and letters that look like a figure or like each other in a hurried hand (own method).
/// </summary>
public static class MarkLot
{
    /// <summary>Letters of a mark.</summary>
    public const int Letters = 4;

    private const string Alphabet = "CDFHJKMPRTWX";

    /// <summary>A mark for each spec; any two differ in at least two letters, so that one letter misread is no other spec's mark.</summary>
    public static ImmutableDictionary<string, string> Draw(IEnumerable<string> specs, ILot lot)
    {
        ArgumentNullException.ThrowIfNull(specs);
        ArgumentNullException.ThrowIfNull(lot);
        ImmutableDictionary<string, string>.Builder marks = ImmutableDictionary.CreateBuilder<string, string>();
        foreach (string spec in specs)
        {
            string mark;
            do
            {
                mark = string.Concat(Enumerable.Range(0, Letters).Select(_ => Alphabet[lot.Below(Alphabet.Length)]));
            } while (marks.Values.Any(other => !Differ(mark, other)));
            marks.Add(spec, mark);
        }

        return marks.ToImmutable();
    }

    /// <summary>Whether a text is a mark as the lot draws them.</summary>
    public static bool IsMark(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length == Letters && text.All(Alphabet.Contains);
    }

    private static bool Differ(string one, string other) => one.Zip(other).Count(pair => pair.First != pair.Second) >= 2;
}
