using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>The lines of a study, put together from every copy there is.</summary>
/// <param name="Lines">Of each strand, the longest verified chain found in any copy, in order of arrival.</param>
/// <param name="Loose">Valid lines that no verified chain reaches: lines before them are lost in every copy.</param>
internal sealed record Reunion(IReadOnlyList<Line> Lines, IReadOnlyList<Line> Loose)
{
    /// <summary>
    /// Puts the copies together. The order is that of the first copy that holds every line; where none does, by time,
    /// which is the order in which a study of several strands is told anyway.
    /// </summary>
    /// <exception cref="TwoHistoriesException">Two different lines follow the same line.</exception>
    /// <exception cref="OtherStudyException">The copies are of two studies.</exception>
    public static Reunion Of(string study, IReadOnlyList<FoundCopy> found)
    {
        IReadOnlyList<Line>[] copies = [.. found.Select(copy => copy.Lines)];
        if (InOrder(copies[0]) && copies.Skip(1).All(copy => Kinship.Begins(copy, copies[0])))
        {
            return new Reunion(copies[0], []);
        }

        Kinship.RefuseStrangers(found);
        Dictionary<(string Strand, string Previous), Line> next = [];
        foreach (Line line in copies.SelectMany(copy => copy))
        {
            if (!next.TryAdd((line.Strand, line.PreviousHash), line) && next[(line.Strand, line.PreviousHash)].Hash != line.Hash)
            {
                throw TwoHistories(study, line);
            }
        }

        Dictionary<string, List<Line>> chains = next.Keys.Select(key => key.Strand).Distinct().ToDictionary(s => s, s => ChainOf(s, next));
        HashSet<string> reached = [.. chains.Values.SelectMany(chain => chain).Select(line => line.Hash)];
        IReadOnlyList<Line>? whole = copies
            .Select(copy => Reached(copy, reached))
            .FirstOrDefault(lines => lines.Count == reached.Count && InOrder(lines));
        return new Reunion(whole ?? ByTime(chains), [.. next.Values.Where(line => !reached.Contains(line.Hash))]);
    }

    private static List<Line> ChainOf(string strand, Dictionary<(string Strand, string Previous), Line> next)
    {
        List<Line> chain = [];
        Line? last = null;
        while (next.TryGetValue((strand, last?.Hash ?? Line.NoHash), out Line? line) && line.Follows(last))
        {
            chain.Add(line);
            last = line;
        }

        return chain;
    }

    private static List<Line> Reached(IEnumerable<Line> copy, HashSet<string> reached) =>
        [.. copy.Where(line => reached.Contains(line.Hash)).DistinctBy(line => line.Hash)];

    private static bool InOrder(IReadOnlyList<Line> lines)
    {
        Chains chains = new();
        return lines.All(chains.Takes);
    }

    private static List<Line> ByTime(Dictionary<string, List<Line>> chains)
    {
        PriorityQueue<(List<Line> Chain, int At), (DateTimeOffset, string)> waiting = new();
        foreach (List<Line> chain in chains.Values.Where(chain => chain.Count > 0))
        {
            waiting.Enqueue((chain, 0), (chain[0].At, chain[0].Strand));
        }

        List<Line> lines = [];
        while (waiting.TryDequeue(out (List<Line> Chain, int At) first, out _))
        {
            lines.Add(first.Chain[first.At]);
            if (first.At + 1 < first.Chain.Count)
            {
                Line following = first.Chain[first.At + 1];
                waiting.Enqueue((first.Chain, first.At + 1), (following.At, following.Strand));
            }
        }

        return lines;
    }

    private static TwoHistoriesException TwoHistories(string study, Line line) => new(HealingWords.CopiesHaveTwoHistories(study, line));
}
