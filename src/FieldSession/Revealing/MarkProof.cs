using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>Compares the marks read on the tyres with the opened key. Letter case and outer blanks do not count.</summary>
public static class MarkProof
{
    private const int ReadersNeeded = 2;

    /// <summary>How they compare.</summary>
    /// <param name="key">The key's lines for the codes that were driven.</param>
    /// <param name="marks">What was read.</param>
    /// <param name="readers">Who read it.</param>
    public static MarkCheck Of(IEnumerable<CodedSpec> key, IReadOnlyCollection<MarkRead> marks, IEnumerable<string> readers)
    {
        ArgumentNullException.ThrowIfNull(key);
        CodedSpec[] lines = [.. key];
        return new MarkCheck(
            [.. lines.Where(line => marks.Any(mark => mark.Code == line.Code && !CrewMember.SamePerson(mark.Spec, line.UnderTape))).Select(line => line.Code)],
            [.. lines.Where(line => marks.All(mark => mark.Code != line.Code)).Select(line => line.Code)],
            AreTwo(readers));
    }

    /// <summary>Whether names are those of at least two people.</summary>
    public static bool AreTwo(IEnumerable<string> readers) =>
        readers.Select(reader => reader.Trim().ToUpperInvariant()).Where(reader => reader.Length > 0).Distinct().Count() >= ReadersNeeded;
}
