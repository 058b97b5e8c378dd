using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Merging;

/// <summary>Where a strand ended when another laptop took note of it.</summary>
/// <param name="Strand">The strand, 16 hex digits.</param>
/// <param name="Line">Number of its last line.</param>
/// <param name="Hash">Hash of that line: the joining line pins all of it.</param>
public sealed record StrandEnd(string Strand, int Line, string Hash);

/// <summary>
/// A laptop takes note of the other laptops' lines: with the first line of its own strand, and with its first line after a merge that
/// brought something new. It is written by itself, before the act that is typed, and says what that act could know.
/// </summary>
/// <param name="Ends">Of each other strand in the file the last line.</param>
public sealed record StrandJoined(ImmutableList<StrandEnd> Ends) : Entry
{
    /// <inheritdoc/>
    public override bool OutlivesFreeze => true;

    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => new(MergingWords.LaptopJoinsByItself, MergingWords.TypeActInstead);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        ImmutableDictionary<string, int> known = Ends.Where(end => end.Strand != OnDisk(mark, study))
            .GroupBy(end => end.Strand == study.FirstStrand ? "" : end.Strand)
            .ToImmutableDictionary(ends => ends.Key, ends => ends.Max(end => end.Line));
        bool isNew = mark.Strand is not null && !study.Hand.HasBegun;
        return study with
        {
            Hand = study.Hand with { Known = known, Began = isNew ? known : study.Hand.Began, HasBegun = true },
            Undoables = [],
        };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after) =>
        new(MergingWords.LaptopTakesNote(Ends.Sum(end => end.Line), Ends.Count));

    private static string? OnDisk(LineMark mark, Study study) => mark.Strand ?? study.FirstStrand;
}
