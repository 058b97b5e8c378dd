using FieldSession.Journal;
using LiteDB;

namespace FieldSession.Store.Journaling;

/// <summary>
/// A quick look at a large LiteDB file beside a sound text: its last line is the right one. A few thousand lines, more than
/// any day on the road, are always compared in full; beyond that opening would be slow, and the full comparison is left to
/// the check a person asks for.
/// </summary>
internal static class StoreGlance
{
    /// <summary>Up to so many lines everything is compared.</summary>
    public const int LinesComparedInFull = 10_000;

    /// <summary>What the file holds, judged by its last line; null: it has to be read in full.</summary>
    public static StoreCopy? IsEnough(IDisk disk, StudyPaths paths, TextCopy text)
    {
        if (text.Lines.Count <= LinesComparedInFull || !text.IsSound || !disk.Exists(paths.Study))
        {
            return null;
        }

        StoreCopy? glance = null;
        _ = Attempt.Of(() => glance = LastOf(disk, paths, text.Lines));
        return glance;
    }

    private static StoreCopy? LastOf(IDisk disk, StudyPaths paths, IReadOnlyList<Line?> known)
    {
        using IDiskFile file = disk.Look(paths.Study);
        byte[] head = new byte[StudyHeader.PageSize];
        if (StudyHeader.FaultIn(head.AsSpan(0, file.Read(head, 0))) is not null)
        {
            return null;
        }

        using SightStream pages = new(file);
        using Stream log = disk.Exists(paths.Log) ? new SightStream(disk.Look(paths.Log)) : new MemoryStream();
        BsonDocument? last = null;
        StoreCopy.ReadInOrder(pages, log, LiteStore.LastFirst(1), document =>
        {
            last = document;
            return false;
        });
        long place = last is null ? 0 : StoredLine.PlaceIn(last);
        return place >= 1 && place <= known.Count && known[(int)place - 1] is { } line && StoredLine.Holds(last!, line)
            ? new StoreCopy([.. known.Take((int)place).OfType<Line>()], null, 0, (int)place)
            : null;
    }
}
