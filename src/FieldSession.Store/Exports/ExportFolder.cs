using FieldSession.Store.Journaling;

namespace FieldSession.Store.Exports;

/// <summary>What an export came to.</summary>
/// <param name="Written">Paths of the files written, in order.</param>
/// <param name="LeftOut">Files that are left out, and why, a sentence each.</param>
public sealed record ExportOutcome(IReadOnlyList<string> Written, IReadOnlyList<string> LeftOut);

/// <summary>
/// Writes an export into a folder. Every file is written beside its place and renamed only when all of them are on the disk, so that
/// a full disk or a stop in between leaves the folder as it was. Files of an earlier export are replaced, and removed where the study
/// has them no longer; files of somebody else are left alone, and one that is in the way refuses the export.
/// </summary>
public sealed class ExportFolder
{
    private const string Unfinished = ".unfinished";
    private readonly IDisk _disk;
    private readonly string _folder;

    internal ExportFolder(IDisk disk, string folder)
    {
        _disk = disk;
        _folder = folder;
    }

    /// <summary>Writes an export.</summary>
    /// <param name="folder">The folder; it is made where it is missing.</param>
    /// <param name="source">What to write.</param>
    /// <param name="stop">Stops the export; nothing is changed then.</param>
    /// <exception cref="ExportRefusedException">The folder is a file, a file of somebody else is in the way, or the disk takes no more.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ExportOutcome Write(string folder, ExportSource source, CancellationToken stop)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        ArgumentNullException.ThrowIfNull(source);
        if (File.Exists(folder))
        {
            throw new ExportRefusedException($"{folder}: this is a file. Nothing was changed. Give a folder to write into.");
        }

        try
        {
            Directory.CreateDirectory(folder);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw Refused(folder, fault);
        }

        return new ExportFolder(new Disk(), folder).Write(source, stop);
    }

    internal ExportOutcome Write(ExportSource source, CancellationToken stop)
    {
        string[] leftOut = [.. Exports.All.Where(file => file.IsIn(source))
            .Select(file => file.HiddenBecause(source) is { } because ? $"{file.Name}, because {because}" : null).OfType<string>()];
        ExportedFile[] files = [.. Exports.All.Where(file => file.IsIn(source) && file.HiddenBecause(source) is null)
            .Select(file => new ExportedFile(file, file.BytesOf(source)))];

        // the descriptor first: it tells the next export which files are not somebody else's
        (string Name, byte[] Bytes)[] all =
            [(DataPackageJson.FileName, DataPackageJson.BytesOf(source, files, leftOut)), .. files.Select(file => (file.File.Name, file.Bytes))];
        IReadOnlySet<string> earlier = EarlierExport.In(_disk, _folder);
        RefuseForeign(all.Select(file => file.Name), earlier);
        WriteBeside(all, stop);
        Rename(all.Select(file => file.Name));
        foreach (string stale in earlier.Except(all.Select(file => file.Name)))
        {
            _disk.Delete(PathOf(stale));
        }

        return new ExportOutcome([.. all.Select(file => PathOf(file.Name))], leftOut);
    }

    private void RefuseForeign(IEnumerable<string> names, IReadOnlySet<string> earlier)
    {
        if (names.FirstOrDefault(name => !earlier.Contains(name) && _disk.Exists(PathOf(name))) is { } foreign)
        {
            throw new ExportRefusedException(
                $"{PathOf(foreign)}: a file that no earlier export wrote lies there. Nothing was changed. Move it away, or give another folder.");
        }
    }

    private void WriteBeside(IReadOnlyList<(string Name, byte[] Bytes)> files, CancellationToken stop)
    {
        string at = _folder;
        try
        {
            foreach ((string name, byte[] bytes) in files)
            {
                stop.ThrowIfCancellationRequested();
                at = PathOf(name);
                using IDiskFile file = _disk.Open(at + Unfinished, FileMode.Create);
                file.Write(bytes, 0);
                file.Sync();
            }

            stop.ThrowIfCancellationRequested();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or OperationCanceledException)
        {
            Discard(files.Select(file => file.Name));
            throw fault is OperationCanceledException ? fault : Refused(at, fault);
        }
    }

    private void Rename(IEnumerable<string> names)
    {
        foreach (string name in names)
        {
            _disk.Move(PathOf(name) + Unfinished, PathOf(name));
        }

        _disk.SyncFolderOf(PathOf(DataPackageJson.FileName));
    }

    private void Discard(IEnumerable<string> names)
    {
        foreach (string name in names)
        {
            _ = Attempt.Of(() => _disk.Delete(PathOf(name) + Unfinished));
        }
    }

    private string PathOf(string name) => Path.Combine(_folder, name);

    private static ExportRefusedException Refused(string path, Exception fault) => new(
        $"{path}: can't be written ({fault.Message}). Nothing was overwritten. Make room, or give a folder that may be written to.", fault);
}
