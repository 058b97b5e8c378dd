using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>
/// A study on disk, open for writing: every line twice, as plain text and in a LiteDB file. A line is acknowledged when
/// its text is on the disk; the LiteDB file follows on its own. Either file alone brings the other one back.
/// <para>
/// The text is <c>NAME.journal</c>: per line 64 hex digits, a space, the JSON they are the SHA-256 of. While it is open
/// nobody else can open the study. The members may be called from any thread; lines are appended one at a time.
/// </para>
/// </summary>
public sealed class StudyFile : IJournal
{
    private readonly IDisk _disk;
    private readonly StudyPaths _paths;
    private readonly TextFile _text;
    private readonly StoreWriter _store;
    private readonly Chains _chains = new();
    private readonly Lock _writing = new();
    private readonly Lock _copying = new();
    private readonly string? _recordFolder;
    private AcknowledgedLines? _acknowledged;
    private bool _isClosed;

    internal StudyFile(
        IDisk disk,
        StudyPaths paths,
        TextFile text,
        StoreWriter store,
        IReadOnlyList<Line> lines,
        IReadOnlyList<string> repaired,
        string? recordFolder = null
    )
    {
        _recordFolder = recordFolder;
        _acknowledged = AcknowledgedLines.Open(recordFolder, paths.Study, lines);
        _disk = disk;
        _paths = paths;
        _text = text;
        _store = store;
        Lines = lines;
        Repaired = repaired;
        foreach (Line line in lines)
        {
            _ = _chains.Takes(line);
        }
    }

    /// <summary>Full path of the study's LiteDB file.</summary>
    public string Path => _paths.Study;

    /// <inheritdoc/>
    public IReadOnlyList<Line> Lines { get; }

    /// <summary>What was wrong with the files at opening and was put right, a sentence each; empty: nothing.</summary>
    public IReadOnlyList<string> Repaired { get; }

    /// <summary>
    /// Whether the LiteDB file could not follow the text. Nothing is lost by it; it is tried again with every line and at the
    /// next opening.
    /// </summary>
    public bool IsStoreBehind => WhyStoreIsBehind is not null;

    /// <summary>Why the LiteDB file is behind, in words; null: it is not.</summary>
    public string? WhyStoreIsBehind => _store.Fault is { } fault ? $"{_paths.Study}: {fault.Message}" : null;

    /// <summary>Makes an empty study.</summary>
    /// <param name="path">Where; any extension but .journal. The folder has to be there.</param>
    /// <param name="clock">The time, for the names of what is kept aside.</param>
    /// <exception cref="StudyExistsException">A file of the study lies there already.</exception>
    /// <exception cref="StudyNameException">The name is that of a journal.</exception>
    /// <exception cref="StudyMissingException">There is no such folder.</exception>
    /// <exception cref="StudyUnwritableException">The folder may not be written to.</exception>
    /// <param name="terms">How it is opened; null: nothing special.</param>
    public static StudyFile Create(string path, TimeProvider clock, OpeningTerms? terms = null) =>
        new StudyOpening(new Disk(), StudyPaths.Of(path), clock, terms).Create();

    /// <summary>Opens a study, and repairs one copy by the other if it has to be.</summary>
    /// <param name="path">The study's LiteDB file; it may be missing if its journal is there.</param>
    /// <param name="clock">The time, for the names of what is kept aside.</param>
    /// <exception cref="StudyMissingException">Neither of the files is there.</exception>
    /// <exception cref="StudyInUseException">It is open already.</exception>
    /// <exception cref="StudyUnwritableException">The files or their folder may not be written to.</exception>
    /// <exception cref="StudyDamagedException">It is no study, or lines are lost in both copies.</exception>
    /// <exception cref="TwoHistoriesException">The copies contradict each other.</exception>
    /// <exception cref="StudyNameException">The name is that of a journal.</exception>
    /// <exception cref="StudyTooLargeException">Its text is longer than <see cref="StudyLimits.LongestTextBytes"/>.</exception>
    /// <param name="terms">How it is opened; null: nothing special.</param>
    public static StudyFile Open(string path, TimeProvider clock, OpeningTerms? terms = null) =>
        new StudyOpening(new Disk(), StudyPaths.Of(path), clock, terms).Open();

    /// <summary>
    /// What this laptop acknowledged of a study and its file does not hold, a sentence each; empty: nothing is missing, as far as it was
    /// written down.
    /// </summary>
    /// <param name="path">The study's LiteDB file.</param>
    /// <param name="lines">The lines that hold in it.</param>
    /// <param name="recordFolder">The user's folder in which it was written down; null: it was not.</param>
    /// <exception cref="IOException">What was written down can't be read.</exception>
    public static IReadOnlyList<string> AcknowledgedAndMissing(string path, IReadOnlyList<Line> lines, string? recordFolder)
    {
        string study = StudyPaths.Of(path).Study;
        return
        [
            .. AcknowledgedLines
                .MissingIn(recordFolder, study, lines)
                .Select(head => StudyFileWords.AcknowledgedLinesAreMissing(study, head, lines))
                .Select(sentence => $"{sentence} {StudyFileWords.RemoveRecord(AcknowledgedLines.NameOf(recordFolder!, study, lines)!)}"),
        ];
    }

    /// <summary>Adds one line. When this returns, the line is on the disk.</summary>
    /// <exception cref="LineNotSafeException">It is not, and does not count. The next call works again as soon as the disk
    /// does.</exception>
    /// <exception cref="ArgumentException">The line is not the next one of its strand.</exception>
    public void Append(Line line)
    {
        ArgumentNullException.ThrowIfNull(line);
        lock (_writing)
        {
            ObjectDisposedException.ThrowIf(_isClosed, this);
            if (!line.Follows(_chains.HeadOf(line.Strand)))
            {
                throw new ArgumentException($"Line {line.Number} is not the next line of strand {line.Strand}.", nameof(line));
            }

            _text.Append(line);
            _ = _chains.Takes(line);
            Acknowledge(line);
            _store.Enqueue(line);
        }
    }

    /// <summary>
    /// Adds lines of other strands, in an order in which each follows the one before it of its strand. When this returns, all are on the
    /// disk; a power cut meanwhile leaves the first ones of them, and the same lines can be added again.
    /// </summary>
    /// <exception cref="LineNotSafeException">They are not, and do not count.</exception>
    /// <exception cref="ArgumentException">A line is not the next one of its strand; nothing was added.</exception>
    public void AppendAll(IReadOnlyList<Line> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        lock (_writing)
        {
            ObjectDisposedException.ThrowIf(_isClosed, this);
            Chains chains = new();
            foreach (Line head in _chains.Heads)
            {
                chains.Continue(head);
            }

            if (lines.FirstOrDefault(line => !chains.Takes(line)) is { } stray)
            {
                throw new ArgumentException($"Line {stray.Number} is not the next line of strand {stray.Strand}.", nameof(lines));
            }

            if (lines.Count > 0)
            {
                _text.Append(lines);
                foreach (Line line in lines)
                {
                    _ = _chains.Takes(line);
                }

                Acknowledge([.. lines]);
                _store.Enqueue(lines);
            }
        }
    }

    /// <summary>
    /// Copies the study into a folder, both files, whole and on the disk when it returns. An older copy of the same study
    /// there is replaced. Where the LiteDB file is behind, the text alone is copied, which is the whole study too. Lines can be
    /// appended meanwhile; they are in the next copy.
    /// </summary>
    /// <param name="directory">The folder.</param>
    /// <exception cref="StudyExistsException">A file of the same name there is no older copy of this study.</exception>
    /// <exception cref="StudyMissingException">There is no such folder.</exception>
    /// <exception cref="StudyUnwritableException">The folder may not be written to.</exception>
    public void CopyTo(string directory)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(directory);
        lock (_copying)
        {
            ObjectDisposedException.ThrowIf(_isClosed, this);
            // in this order the text never holds less
            byte[]? pages = _store.WholeDataFile();
            byte[] text = TextNow();
            string target = System.IO.Path.Combine(directory, System.IO.Path.GetFileName(_paths.Study));
            new StudyBackup(_disk, StudyPaths.Of(target)).Write(text, pages);
        }
    }

    /// <summary>Brings the LiteDB file up to the text, merges its log and gives up the lock.</summary>
    public void Dispose()
    {
        lock (_copying)
            lock (_writing)
            {
                if (_isClosed)
                {
                    return;
                }

                _isClosed = true;
                _store.Dispose();
                _text.Dispose();
                _acknowledged?.Dispose();
            }
    }

    // the record of a new study begins with its first line, which makes it this study and no other
    private void Acknowledge(params Line[] lines)
    {
        _acknowledged ??= AcknowledgedLines.Open(_recordFolder, _paths.Study, lines);
        _acknowledged?.Note(lines);
    }

    private byte[] TextNow()
    {
        lock (_writing)
        {
            return _text.Bytes();
        }
    }
}
