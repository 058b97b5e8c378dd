namespace FieldSession.Store.Journaling;

/// <summary>
/// What a power cut leaves of a study that was being made: a text without a whole line, and no line in the LiteDB file. Nothing of it was acknowledged,
/// so the study can be made again in its place.
/// </summary>
internal sealed class StartCutOff(IDisk disk, StudyPaths paths)
{
    private const string HexDigits = "0123456789abcdef";

    /// <summary>Whether such remains lie under the study's names, and nothing else.</summary>
    public bool IsHere => disk.Exists(paths.Journal) && IsTextWithoutLine() && IsStoreWithoutLine();

    // the first digits of a line, or the zeros that a file system shows where bytes never came
    private bool IsTextWithoutLine()
    {
        TextCopy text = TextCopy.Read(disk.ReadAll(paths.Journal));
        ReadOnlySpan<byte> tail = text.Tail.Span;
        return text.Lines.Count == 0 && !text.Valid.Any() && (IsZeros(tail) || HexDigits.Contains((char)tail[0], StringComparison.Ordinal));
    }

    private bool IsStoreWithoutLine()
    {
        byte[] pages = disk.Exists(paths.Study) ? disk.ReadAll(paths.Study) : [];
        if (!IsZeros(pages) && StudyHeader.FaultIn(pages) is not null)
        {
            return false;
        }

        StoreCopy store = StoreCopy.Read(disk, paths, []);
        return store.Lines.Count == 0 && store.HighestPlace <= 1;
    }

    private static bool IsZeros(ReadOnlySpan<byte> bytes) => !bytes.ContainsAnyExcept((byte)0);
}
