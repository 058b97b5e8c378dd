using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>What a study's files were found to hold when it was opened. Nothing has been changed by looking.</summary>
/// <param name="Text">What the text holds.</param>
/// <param name="Store">What the LiteDB file holds.</param>
/// <param name="Lines">The study's lines, from whichever copy has them.</param>
/// <param name="Loose">Valid lines that no verified chain reaches: lines before them are lost in every copy.</param>
internal sealed record FoundStudy(TextCopy Text, StoreCopy Store, IReadOnlyList<Line> Lines, IReadOnlyList<Line> Loose)
{
    /// <summary>Whether the text's lines are the study's first ones, as far as they go.</summary>
    public bool IsTextLeading => Text.IsSound && Leads(Text.Lines!);

    /// <summary>Whether the text holds everything. The tail of a line that was never acknowledged does not count.</summary>
    public bool IsTextWhole => IsTextLeading && Text.Lines.Count == Lines.Count;

    /// <summary>Whether the LiteDB file's lines are the study's first ones, as far as they go.</summary>
    public bool IsStoreLeading => Store.Fault is null && Leads(Store.Lines);

    /// <summary>Whether the text holds everything and the LiteDB file nothing else.</summary>
    public bool IsWhole => IsTextWhole && IsStoreLeading;

    /// <summary>Reads the copies and puts them together.</summary>
    /// <param name="disk">Where the files are.</param>
    /// <param name="paths">Their names.</param>
    /// <param name="textBytes">The text's bytes.</param>
    /// <exception cref="TwoHistoriesException">The copies contradict each other.</exception>
    /// <exception cref="OtherStudyException">The copies are of two studies.</exception>
    public static FoundStudy Of(IDisk disk, StudyPaths paths, byte[]? textBytes)
    {
        TextCopy text = TextCopy.Read(textBytes ?? []);
        TextCopy rescue = TextCopy.Read(disk.Exists(paths.Rescue) ? disk.ReadAll(paths.Rescue) : []);
        StoreCopy store = StoreGlance.IsEnough(disk, paths, text) ?? StoreCopy.Read(disk, paths, text.Lines);
        FoundCopy[] copies = [new(paths.Journal, [.. text.Valid]), new(paths.Study, store.Lines), new(paths.Rescue, [.. rescue.Valid])];
        Reunion reunion = Reunion.Of(paths.Study, copies);
        return new FoundStudy(text, store, reunion.Lines, reunion.Loose);
    }

    private bool Leads(IReadOnlyList<Line> copy) => Kinship.Begins(copy, Lines);
}

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
