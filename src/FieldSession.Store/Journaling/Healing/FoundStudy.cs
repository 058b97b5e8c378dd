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
