using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>What a check of one of a study's two copies says.</summary>
/// <param name="File">The copy's file.</param>
/// <param name="IsThere">Whether the file is there.</param>
/// <param name="LinesHolding">How many lines are valid and linked to the beginning of their strand.</param>
/// <param name="FirstFailing">Number of the first line of the file that fails, from 1; null: none does.</param>
/// <param name="Why">Why it fails; null: none does.</param>
/// <param name="Heads">Where the verified chain of each strand ends.</param>
public sealed record CopyCheck(
    string File, bool IsThere, int LinesHolding, int? FirstFailing, string? Why, IReadOnlyList<StrandHead> Heads)
{
    /// <summary>Whether the file is there and all of it holds.</summary>
    public bool Holds => IsThere && FirstFailing is null;

    internal static CopyCheck OfText(string file, bool isThere, TextCopy text) =>
        Of(file, isThere, text.Lines, HealingWords.LineIsBroken, int.MaxValue);

    internal static CopyCheck OfStore(string file, bool isThere, StoreCopy store) =>
        Of(file, isThere, store.Lines, store.Fault ?? "", store.Fault is null ? int.MaxValue : Math.Max(store.FaultAt, 1));

    // the fault of a LiteDB file is known by its place beforehand; the lines beyond it are counted all the same
    private static CopyCheck Of(string file, bool isThere, IReadOnlyList<Line?> lines, string invalid, int faultAt)
    {
        Chains chains = new();
        int holding = 0;
        int? failing = faultAt == int.MaxValue ? null : faultAt;
        string? why = failing is null ? null : invalid;
        for (int i = 0; i < lines.Count; i++)
        {
            if (lines[i] is { } line && chains.Takes(line))
            {
                holding++;
            }
            else if (failing is null || i + 1 < failing)
            {
                failing = i + 1;
                why = WhyNot(lines[i], invalid, chains);
            }
        }

        return new CopyCheck(file, isThere, holding, failing, why, [.. chains.Heads.Select(head => new StrandHead(head.Strand, head.Number, head.Hash))]);
    }

    private static string WhyNot(Line? line, string invalid, Chains chains) => line is null ? invalid : Unlinked(line, chains);

    private static string Unlinked(Line line, Chains chains) => chains.HeadOf(line.Strand) is { } head
        ? HealingWords.LineDoesNotFollow(line, head)
        : HealingWords.LineDoesNotBeginStrand(line);
}
