using FieldSession.Journal;

namespace FieldSession;

/// <summary>
/// Which study it is, whatever its file and the study itself are called: the hash of its first line, which is drawn from the plan, the time and
/// the laptop and never changes. Copies and earlier states of a study have the same one; two studies of one name have two.
/// </summary>
public readonly record struct StudyIdentity
{
    private const int ShortDigits = 8;

    private StudyIdentity(string hash) => Hash = hash;

    /// <summary>Hash of the first line, 64 hex digits.</summary>
    public string Hash { get; }

    /// <summary>Its first 8 digits, enough to tell studies apart on a screen.</summary>
    public string ShortHash => Hash[..ShortDigits];

    /// <summary>The identity of the study that some lines tell; null: there are none.</summary>
    /// <param name="lines">Lines of whole strands, those of each strand in order, from the first.</param>
    public static StudyIdentity? Of(IReadOnlyList<Line> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        // the one strand that takes note of no other begins the study
        return StrandOrder.Of(lines) is [{ } first, ..] ? new StudyIdentity(first.Hash) : null;
    }

    /// <inheritdoc/>
    public override string ToString() => Hash;
}
