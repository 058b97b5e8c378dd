namespace FieldSession.Store.Journaling;

/// <summary>The way from names to an open study: lock, look, repair, carry on.</summary>
/// <param name="disk">Where the files are.</param>
/// <param name="paths">Their names.</param>
/// <param name="clock">The time, for the names of what is kept aside.</param>
/// <param name="terms">Patience with the lock, and where the acknowledged lines are written down.</param>
internal sealed class StudyOpening(IDisk disk, StudyPaths paths, TimeProvider clock, OpeningTerms? terms = null)
{
    private static readonly TimeSpan BetweenTries = TimeSpan.FromMilliseconds(100);

    private readonly OpeningTerms _terms = terms ?? new OpeningTerms();

    /// <summary>Makes a new study where no file lies yet, or where making one was cut off before its first line was safe.</summary>
    /// <exception cref="StudyFileException">It can't be made there; nothing was changed.</exception>
    public StudyFile Create() =>
        Refusal.Of(
            paths.Study,
            () =>
            {
                if (new StartCutOff(disk, paths).IsHere)
                {
                    // whoever is making it right now holds it
                    Locked(FileMode.OpenOrCreate).Dispose();
                    new Repair(disk, paths, clock).ClearStart();
                }

                return new[] { paths.Study, paths.Journal, paths.Log }.FirstOrDefault(disk.Exists) is { } taken
                    ? throw new StudyExistsException(StudyFileWords.NameIsTaken(taken))
                    : OpenLocked(FileMode.CreateNew);
            }
        );

    /// <summary>Opens the study and repairs what can be repaired without losing a line.</summary>
    /// <exception cref="StudyFileException">It can't be opened; nothing was changed.</exception>
    public StudyFile Open() =>
        Refusal.Of(
            paths.Study,
            () =>
            {
                if (!new[] { paths.Journal, paths.Study, paths.Rescue }.Any(disk.Exists))
                {
                    throw new StudyMissingException(StudyFileWords.NoStudyToOpen(paths));
                }

                return OpenLocked(disk.Exists(paths.Journal) ? FileMode.Open : FileMode.OpenOrCreate);
            }
        );

    // a program whose terminal vanished may take a moment to close its study
    private IDiskFile Locked(FileMode mode)
    {
        for (int tries = 1; ; tries++)
        {
            try
            {
                return disk.Open(paths.Journal, mode);
            }
            catch (IOException held) when (Refusal.IsLock(held) && tries < _terms.TriesForLock)
            {
                Thread.Sleep(BetweenTries);
            }
        }
    }

    private StudyFile OpenLocked(FileMode mode)
    {
        IDiskFile file = Locked(mode);
        try
        {
            return OpenWith(file, mode == FileMode.OpenOrCreate ? null : BytesOf(file));
        }
        catch
        {
            bool isStray = mode != FileMode.Open && file.Length == 0;
            file.Dispose();
            if (isStray)
            {
                disk.Delete(paths.Journal);
            }

            throw;
        }
    }

    private StudyFile OpenWith(IDiskFile file, byte[]? bytes)
    {
        FoundStudy found = FoundStudy.Of(disk, paths, bytes);
        if (Loss.In(paths, found, bytes) is { } loss)
        {
            throw loss;
        }

        Repair repair = new(disk, paths, clock);
        TextFile text = repair.RepairText(file, bytes ?? [], found);
        disk.SyncFolderOf(paths.Journal);
        repair.ClearStore(found);
        repair.NoteGrowth(found);
        IReadOnlyList<StrandHead> missing = [];
        _ = Attempt.Of(() => missing = AcknowledgedLines.MissingIn(_terms.RecordFolder, paths.Study, found.Lines));
        string[] lost = [.. missing.Select(head => StudyFileWords.AcknowledgedLinesAreMissing(paths.Study, head, found.Lines))];
        StoreWriter store = StoreFrom(found, repair);
        return new StudyFile(disk, paths, text, store, found.Lines, [.. repair.Done, .. lost], _terms.RecordFolder);
    }

    private StoreWriter StoreFrom(FoundStudy found, Repair repair)
    {
        StoreWriter store = new(disk, paths, repair.ClearStore);
        store.Enqueue(found.Lines);
        store.CatchUp();
        if (store.Fault is { } fault && IsForAPerson(fault))
        {
            store.Dispose();
            throw fault;
        }

        store.Start();
        return store;
    }

    // a full disk or a broken page leaves the text to work with; a lock or a missing right would never heal by itself
    private static bool IsForAPerson(Exception fault) => Refusal.InWords("", fault) is not null;

    private byte[] BytesOf(IDiskFile file)
    {
        StudyLimits.Refuse(paths.Journal, file.Length, StudyLimits.LongestTextBytes);
        byte[] bytes = new byte[file.Length];
        return bytes[..file.Read(bytes, 0)];
    }
}

/// <summary>How a study is opened.</summary>
/// <param name="TriesForLock">How often to try a study that another program holds, a tenth of a second apart.</param>
/// <param name="RecordFolder">The user's folder in which it is written down which lines were acknowledged; null: it is not.</param>
public sealed record OpeningTerms(int TriesForLock = 1, string? RecordFolder = null);
