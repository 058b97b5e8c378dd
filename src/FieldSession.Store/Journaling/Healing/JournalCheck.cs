using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>
/// A check of both copies of a study. It reads, locks nothing and changes nothing, so it may be made while the study is
/// open (on Windows the system lets nobody read it then). It finds edited, added and removed lines; a cut end, or a
/// study rewritten as a whole, is found only by comparing <see cref="CopyCheck.Heads"/> with what was written down before.
/// </summary>
/// <param name="Text">The plain text.</param>
/// <param name="Store">The LiteDB file with its log.</param>
/// <param name="FirstDifference">The first line in which both copies hold a line but not the same; null: none.</param>
/// <param name="UnfinishedBytes">Length of a line at the end of the text that is being written or was torn; it was never
/// acknowledged.</param>
public sealed record JournalCheck(CopyCheck Text, CopyCheck Store, int? FirstDifference, int UnfinishedBytes)
{
    /// <summary>The lines that hold up to the first that fails, from the text, or from the LiteDB file where there is no text.</summary>
    public IReadOnlyList<Line> LinesToFirstFailing { get; init; } = [];

    /// <summary>Whether both copies are there, hold, and tell the same. A LiteDB file that is merely behind holds.</summary>
    public bool Holds => Text.Holds && Store.Holds && FirstDifference is null && Store.LinesHolding <= Text.LinesHolding;

    /// <summary>How many lines the LiteDB file is behind the text; negative: the text is short.</summary>
    public int StoreBehindLines => Text.LinesHolding - Store.LinesHolding;

    /// <summary>Checks a study.</summary>
    /// <param name="path">The study's LiteDB file; either copy may be missing, and the check says so.</param>
    /// <exception cref="StudyMissingException">Both copies are missing.</exception>
    /// <exception cref="StudyInUseException">On Windows: the study is open.</exception>
    /// <exception cref="StudyUnwritableException">The files may not be read.</exception>
    /// <exception cref="StudyNameException">The name is that of a journal.</exception>
    public static JournalCheck Of(string path) => Of(new Disk(), StudyPaths.Of(path));

    internal static JournalCheck Of(IDisk disk, StudyPaths paths) =>
        Refusal.Of(
            paths.Study,
            () =>
            {
                if (!disk.Exists(paths.Study) && !disk.Exists(paths.Journal))
                {
                    throw new StudyMissingException(StudyFileWords.NoStudyHere(paths));
                }

                JournalCheck check = Look(disk, paths);
                // a file read while it is written can look broken once
                return check.Store.Holds ? check : Look(disk, paths);
            }
        );

    private static JournalCheck Look(IDisk disk, StudyPaths paths)
    {
        bool isTextThere = disk.Exists(paths.Journal);
        // the store first: the text, which is always ahead, then holds at least as much
        StoreCopy store = StoreCopy.Read(disk, paths, []);
        TextCopy text = TextCopy.Read(isTextThere ? disk.ReadAll(paths.Journal) : []);
        CopyCheck ofText = CopyCheck.OfText(paths.Journal, isTextThere, text);
        CopyCheck ofStore = CopyCheck.OfStore(paths.Study, disk.Exists(paths.Study), store);
        return new JournalCheck(ofText, ofStore, DifferenceOf(text.Lines, store), text.Tail.Length)
        {
            LinesToFirstFailing = isTextThere ? Holding(text.Lines, ofText) : Holding(store.Lines, ofStore),
        };
    }

    private static IReadOnlyList<Line> Holding(IEnumerable<Line?> lines, CopyCheck check) =>
        [.. lines.Take((check.FirstFailing ?? int.MaxValue) - 1).OfType<Line>()];

    private static int? DifferenceOf(IReadOnlyList<Line?> text, StoreCopy store)
    {
        int comparable = store.Fault is null ? store.Lines.Count : Math.Max(store.FaultAt - 1, 0);
        int first = text.Zip(store.Lines.Take(comparable))
            .TakeWhile(pair => pair.First is null || pair.First.Hash == pair.Second.Hash)
            .Count();
        return first < Math.Min(text.Count, comparable) ? first + 1 : null;
    }
}

/// <summary>What a check of one of a study's two copies says.</summary>
/// <param name="File">The copy's file.</param>
/// <param name="IsThere">Whether the file is there.</param>
/// <param name="LinesHolding">How many lines are valid and linked to the beginning of their strand.</param>
/// <param name="FirstFailing">Number of the first line of the file that fails, from 1; null: none does.</param>
/// <param name="Why">Why it fails; null: none does.</param>
/// <param name="Heads">Where the verified chain of each strand ends.</param>
public sealed record CopyCheck(string File, bool IsThere, int LinesHolding, int? FirstFailing, string? Why, IReadOnlyList<StrandHead> Heads)
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

        return new CopyCheck(
            file,
            isThere,
            holding,
            failing,
            why,
            [.. chains.Heads.Select(head => new StrandHead(head.Strand, head.Number, head.Hash))]
        );
    }

    private static string WhyNot(Line? line, string invalid, Chains chains) => line is null ? invalid : Unlinked(line, chains);

    private static string Unlinked(Line line, Chains chains) =>
        chains.HeadOf(line.Strand) is { } head ? HealingWords.LineDoesNotFollow(line, head) : HealingWords.LineDoesNotBeginStrand(line);
}
