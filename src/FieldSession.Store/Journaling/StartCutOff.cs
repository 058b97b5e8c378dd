namespace FieldSession.Store.Journaling;

/// <summary>
/// What a power cut or a failing disk leaves of a study that was being made: no whole line of text, and no line in the LiteDB file. Nothing of it was acknowledged,
/// so the study can be made again in its place.
/// </summary>
internal sealed class StartCutOff(IDisk disk, StudyPaths paths)
{
    // a LiteDB file without a text beside it may be another program's as soon as there is more in it than its head
    private const int FreshStoreBytes = StudyHeader.PageSize;

    private const string HexDigits = "0123456789abcdef";

    /// <summary>Whether such remains lie under the study's names, and nothing else.</summary>
    public bool IsHere => new[] { paths.Journal, paths.Study, paths.Log }.Any(disk.Exists) && IsTextWithoutLine() && IsStoreWithoutLine();

    // the first digits of a line, or the zeros that a file system shows where bytes never came; behind such a gap the end of the line may have come
    private bool IsTextWithoutLine()
    {
        byte[] bytes = disk.Exists(paths.Journal) ? disk.ReadAll(paths.Journal) : [];
        TextCopy text = TextCopy.Read(bytes);
        bool isGap = IsZeros(bytes) || bytes[0] == 0;
        return !text.Valid.Any() && (isGap || (text.Lines.Count == 0 && HexDigits.Contains((char)bytes[0], StringComparison.Ordinal)));
    }

    private bool IsStoreWithoutLine()
    {
        byte[] pages = disk.Exists(paths.Study) ? disk.ReadAll(paths.Study) : [];
        bool isOurs = IsZeros(pages) || (StudyHeader.FaultIn(pages) is null && (disk.Exists(paths.Journal) || pages.Length <= FreshStoreBytes));
        if (!isOurs)
        {
            return false;
        }

        StoreCopy store = StoreCopy.Read(disk, paths, []);
        return store.Lines.Count == 0 && store.HighestPlace <= 1;
    }

    private static bool IsZeros(ReadOnlySpan<byte> bytes) => !bytes.ContainsAnyExcept((byte)0);
}
