namespace FieldSession.Store.Journaling;

/// <summary>The way from names to an open study: lock, look, mend, carry on.</summary>
internal sealed class StudyOpening(IDisk disk, StudyPaths paths, TimeProvider clock)
{
    /// <summary>Makes a new study where no file lies yet.</summary>
    /// <exception cref="StudyFileException">It can't be made there; nothing was changed.</exception>
    public StudyFile Create() => Refusal.Of(paths.Study, () =>
    {
        if (new[] { paths.Study, paths.Journal, paths.Log }.FirstOrDefault(disk.Exists) is { } taken)
        {
            throw new StudyExistsException(StudyFileWords.NameIsTaken(taken));
        }

        return OpenLocked(FileMode.CreateNew);
    });

    /// <summary>Opens the study and mends what can be mended without losing a line.</summary>
    /// <exception cref="StudyFileException">It can't be opened; nothing was changed.</exception>
    public StudyFile Open() => Refusal.Of(paths.Study, () =>
    {
        if (!new[] { paths.Journal, paths.Study, paths.Rescue }.Any(disk.Exists))
        {
            throw new StudyMissingException(
                StudyFileWords.NoStudyToOpen(paths));
        }

        return OpenLocked(disk.Exists(paths.Journal) ? FileMode.Open : FileMode.OpenOrCreate);
    });

    private StudyFile OpenLocked(FileMode mode)
    {
        IDiskFile file = disk.Open(paths.Journal, mode);
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
        Finding finding = Finding.Of(disk, paths, bytes);
        if (Loss.In(paths, finding, bytes) is { } loss)
        {
            throw loss;
        }

        Mending mending = new(disk, paths, clock);
        TextFile text = mending.MendText(file, bytes ?? [], finding);
        disk.SyncFolderOf(paths.Journal);
        mending.ClearStore(finding);
        mending.NoteGrowth(finding);
        StoreWriter store = StoreFrom(finding, mending);
        return new StudyFile(disk, paths, text, store, finding.Lines, [.. mending.Done]);
    }

    private StoreWriter StoreFrom(Finding finding, Mending mending)
    {
        StoreWriter store = new(disk, paths, mending.ClearStore);
        store.Enqueue(finding.Lines);
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
