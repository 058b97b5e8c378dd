using System.Globalization;
using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>A copy of a study and the file it was found in.</summary>
/// <param name="File">Full path of the file.</param>
/// <param name="Lines">The valid lines in it.</param>
internal sealed record FoundCopy(string File, IReadOnlyList<Line> Lines);

/// <summary>
/// Whether copies that lie under one name are of one study. They are where they begin with the same line, or where one lost its beginning
/// and shares a line with the other. Two beginnings without a common line are two studies, and nothing brings them together.
/// </summary>
internal static class Kinship
{
    /// <summary>Refuses copies of two studies.</summary>
    /// <exception cref="OtherStudyException">Two of them are of two studies; both files are named.</exception>
    public static void RefuseStrangers(IEnumerable<FoundCopy> copies)
    {
        List<FoundCopy> known = [];
        foreach (FoundCopy copy in copies.Where(copy => copy.Lines.Any(Begins)))
        {
            HashSet<string> hashes = [.. copy.Lines.Select(line => line.Hash)];
            if (known.Find(other => !other.Lines.Any(line => hashes.Contains(line.Hash))) is { } stranger)
            {
                throw new OtherStudyException(
                    HealingWords.FilesAreOfTwoStudies(stranger.File, NameOf(stranger.Lines), copy.File, NameOf(copy.Lines))
                );
            }

            known.Add(copy);
        }
    }

    /// <summary>Whether one copy is the beginning of the other: the older state of the same study.</summary>
    public static bool Begins(IReadOnlyList<Line> older, IReadOnlyList<Line> newer) =>
        older.Count <= newer.Count && older.Zip(newer).All(pair => pair.First == pair.Second);

    // the first line of a later laptop's strand takes note of the others: it begins no study
    private static bool Begins(Line line) => line is { Number: 1, Kind: not EntryKinds.Joined };

    // the name, the day and the first digits of the identity: two studies of one name are told apart by them
    private static string NameOf(IReadOnlyList<Line> lines)
    {
        Line first = lines.First(Begins);
        string? name = null;
        _ = Attempt.Of(() => name = Logbook.Fold([first]).Plan?.StudyName);
        return string.Create(CultureInfo.InvariantCulture, $"'{name ?? "?"}' begun {first.At:yyyy-MM-dd HH:mm} UTC ({first.Hash[..8]})");
    }
}
