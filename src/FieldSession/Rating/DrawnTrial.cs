using System.Collections.Immutable;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>One trial from recordings as the lot drew it.</summary>
/// <param name="Heard">What the journal keeps of it, once somebody has chosen.</param>
/// <param name="Clips">The clip of each place.</param>
public sealed record DrawnTrial(ClipsHeard Heard, ImmutableArray<Clip> Clips)
{
    /// <summary>
    /// Draws order, segment and runs, each alike likely and apart from every other trial: so a guess is right with the chance of the exact test whatever
    /// habit or memory it follows, and nothing that could be read before is anywhere.
    /// </summary>
    /// <param name="pool">What can be played.</param>
    /// <param name="terms">Pair and kind.</param>
    /// <param name="lot">Where chance comes from.</param>
    public static DrawnTrial Of(ClipPool pool, ChoiceTerms terms, ILot lot)
    {
        ArgumentNullException.ThrowIfNull(pool);
        ArgumentNullException.ThrowIfNull(terms);
        ArgumentNullException.ThrowIfNull(lot);
        ImmutableArray<string> orders = Counterbalance.Orders(terms.Places);
        string order = orders[lot.Below(orders.Length)];
        SegmentClips segment = pool.Segments[lot.Below(pool.Segments.Length)];
        List<Clip> drawn = [];
        foreach (char code in order)
        {
            Clip[] left = [.. (code == 'A' ? segment.First : segment.Second).Where(clip => !drawn.Exists(other => other.Run == clip.Run))];
            drawn.Add(left[lot.Below(left.Length)]);
        }

        return new(new ClipsHeard(order, segment.Segment, [.. drawn.Select(clip => clip.Run)]), [.. drawn]);
    }
}
