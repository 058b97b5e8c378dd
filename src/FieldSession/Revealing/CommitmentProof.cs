using System.Collections.Immutable;
using FieldSession.Sealing;
using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>Whether an opened key gives the commitments that were published at sealing, computed again from what was opened.</summary>
public static class CommitmentProof
{
    /// <summary>True: every commitment is given; false: one is not, or a key is missing for it; null: none was published.</summary>
    /// <remarks>A fitting none of whose codes was driven needs no key.</remarks>
    public static bool? Of(Study study, KeyOpened opened)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(opened);
        HashSet<SpecCode> driven = [.. study.DrivenCodes];
        bool[] given = [.. study.Fittings.Index()
            .Where(one => one.Item.Commitment is not null && one.Item.Codes.Any(driven.Contains))
            .Select(one => Gives(study, one.Item, opened, NonceOf(opened, one.Index)))];
        return given.Length == 0 ? null : given.All(gives => gives);
    }

    private static string? NonceOf(KeyOpened opened, int fitting) =>
        fitting == 0 ? opened.Nonce : opened.LaterNonces?.ElementAtOrDefault(fitting - 1);

    private static bool Gives(Study study, Fitting fitting, KeyOpened opened, string? nonce)
    {
        ImmutableList<CodedSpec> lines = [.. opened.Key.Where(line => fitting.Codes.Contains(line.Code))];
        if (nonce is null || lines.Count != fitting.Codes.Count)
        {
            return false;
        }

        try
        {
            KeySheet sheet = new(study.Plan!.StudyName, lines.Select(line => new KeyLine(line.Code, line.Spec, line.Mark)), lines[0].Spec, nonce);
            return Commitment.Of(sheet) == fitting.Commitment;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }
}
