using FieldSession.Journal;
using LiteDB;
using LiteDB.Engine;

namespace FieldSession.Store.Journaling;

/// <summary>What the LiteDB file and its log hold.</summary>
/// <param name="Lines">The valid lines, in order of their places.</param>
/// <param name="Fault">The first thing that is wrong; null: nothing.</param>
/// <param name="FaultAt">The place of that fault, from 1; 0: no fault, or the whole file can't be read.</param>
/// <param name="HighestPlace">The highest place that held a line, as far as can be seen; 0: none.</param>
internal sealed record StoreCopy(IReadOnlyList<Line> Lines, string? Fault, int FaultAt, int HighestPlace)
{
    private const long GrowthWhileReadBytes = 1 << 20;

    /// <summary>There is no file.</summary>
    public static StoreCopy Missing { get; } = new([], null, 0, 0);

    /// <summary>Reads everything without touching the files: LiteDB gets copies in memory.</summary>
    /// <param name="disk">Where the files are.</param>
    /// <param name="paths">Their names.</param>
    /// <param name="known">The text's line for each place, null where it has none: what is equal needs no second hashing.</param>
    public static StoreCopy Read(IDisk disk, StudyPaths paths, IReadOnlyList<Line?> known)
    {
        if (new[] { paths.Study, paths.Log }.Any(path => IsTooLong(disk, path)))
        {
            return Missing with { Fault = SecondCopyWords.StoreLeadsFarBeyond };
        }

        byte[] log = disk.Exists(paths.Log) ? disk.ReadAll(paths.Log) : [];
        byte[] pages = disk.Exists(paths.Study) ? disk.ReadAll(paths.Study) : [];
        if (pages.Length == 0)
        {
            return log.Length == 0 ? Missing : Missing with { Fault = SecondCopyWords.StoreIsGoneOrEmpty };
        }

        if (StudyHeader.FaultIn(pages) is { } foreign)
        {
            return Missing with { Fault = foreign };
        }

        StoreReading reading = new(known);
        if (Attempt.Of(() => ReadFromBothEnds(pages, log, reading)) is { } fault)
        {
            // what lies beyond the damaged page is met from the other end
            reading.Break(fault.Message);
            _ = Attempt.Of(() => ReadInOrder(pages, log, LiteStore.LastFirst(int.MaxValue), reading.TakeFromTheEnd));
        }

        return reading.Result();
    }

    /// <summary>Whether a data file whose log was merged holds exactly some lines, read from both ends without changing it.</summary>
    /// <returns>What is wrong; null: nothing.</returns>
    public static string? FaultInMerged(IDisk disk, StudyPaths paths, IReadOnlyList<Line> lines)
    {
        StoreReading reading = new(lines);
        Exception? broken = Attempt.Of(() =>
        {
            Look(new Query(), reading.Take);
            Look(LiteStore.LastFirst(1), reading.CompareEnd);
        });
        StoreCopy copy = reading.Result();
        return broken?.Message ?? copy.Fault ?? (copy.Lines.SequenceEqual(lines) ? null : SecondCopyWords.StoreHoldsOtherLines);

        void Look(Query query, Func<BsonDocument, bool> take)
        {
            using SightStream pages = new(disk.Look(paths.Study));
            using MemoryStream noLog = new();
            ReadInOrder(pages, noLog, query, take);
        }
    }

    private static void ReadFromBothEnds(byte[] pages, byte[] log, StoreReading reading)
    {
        ReadInOrder(pages, log, new Query(), reading.Take);
        // a damaged log can leave LiteDB's chain of documents short in one direction and whole in the other
        ReadInOrder(pages, log, LiteStore.LastFirst(1), reading.CompareEnd);
    }

    /// <summary>Lets LiteDB read a data file and its log until told to stop.</summary>
    internal static void ReadInOrder(Stream pages, Stream log, Query query, Func<BsonDocument, bool> take)
    {
        using LiteEngine engine = LiteStore.EngineOver(pages, log);
        using IBsonDataReader reader = engine.Query(StoredLine.Collection, query);
        while (reader.Read() && take(reader.Current.AsDocument)) { }
    }

    private static void ReadInOrder(byte[] pages, byte[] log, Query query, Func<BsonDocument, bool> take)
    {
        // a page is in the file or in the log, so no sound file grows by more than its log while it is read
        long mostBytes = pages.LongLength + log.LongLength + GrowthWhileReadBytes;
        using CopyInMemory pagesInMemory = new(pages, mostBytes);
        using CopyInMemory logInMemory = new(log, mostBytes);
        ReadInOrder(pagesInMemory, logInMemory, query, take);
        if (pagesInMemory.WasToGrowTooFar || logInMemory.WasToGrowTooFar)
        {
            throw new InvalidDataException(SecondCopyWords.StoreLeadsFarBeyond);
        }
    }

    private static bool IsTooLong(IDisk disk, string path)
    {
        using IDiskFile? file = disk.Exists(path) ? disk.Look(path) : null;
        return file?.Length > StudyLimits.LongestFileBytes;
    }
}

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
        StoreCopy.ReadInOrder(
            pages,
            log,
            LiteStore.LastFirst(1),
            document =>
            {
                last = document;
                return false;
            }
        );
        long place = last is null ? 0 : StoredLine.PlaceIn(last);
        return place >= 1 && place <= known.Count && known[(int)place - 1] is { } line && StoredLine.Holds(last!, line)
            ? new StoreCopy([.. known.Take((int)place).OfType<Line>()], null, 0, (int)place)
            : null;
    }
}
