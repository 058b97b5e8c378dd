using System.Text.Json;
using FieldSession.Store.Journaling;

namespace FieldSession.Store.Exports;

/// <summary>What an export came to.</summary>
/// <param name="Written">Paths of the files written, in order.</param>
/// <param name="LeftOut">Files that are left out, and why, a sentence each.</param>
public sealed record ExportOutcome(IReadOnlyList<string> Written, IReadOnlyList<string> LeftOut);

/// <summary>
/// Writes an export into a folder, all of its files or none (<see cref="FilesTogether"/>). Files of an earlier export are replaced, and
/// removed where the study has them no longer; files of somebody else are left alone, and one that is in the way refuses the export.
/// </summary>
public sealed class ExportFolder
{
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
    /// <exception cref="ExportRefusedException">The folder is a file, a file of somebody else is in the way, or the disk takes no
    /// more.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ExportOutcome Write(string folder, ExportSource source, CancellationToken stop)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        ArgumentNullException.ThrowIfNull(source);
        return new ExportFolder(new Disk(), folder).Write(source, (files, earlier) => FilesTogether.Write(folder, files, earlier, stop));
    }

    internal ExportOutcome Write(ExportSource source, CancellationToken stop) =>
        Write(source, (files, earlier) => FilesTogether.Write(_disk, _folder, files, earlier, stop));

    private ExportOutcome Write(ExportSource source, Action<IReadOnlyList<(string Name, byte[] Bytes)>, IReadOnlySet<string>> write) =>
        NumberForm.OfFiles(() => WriteInForm(source, write));

    private ExportOutcome WriteInForm(ExportSource source, Action<IReadOnlyList<(string Name, byte[] Bytes)>, IReadOnlySet<string>> write)
    {
        string[] leftOut =
        [
            .. Exports
                .All.Where(file => file.IsIn(source))
                .Select(file => file.HiddenBecause(source) is { } because ? $"{file.Name}, because {because}" : null)
                .OfType<string>(),
        ];
        ExportedFile[] files =
        [
            .. Exports
                .All.Where(file => file.IsIn(source) && file.HiddenBecause(source) is null)
                .Select(file => new ExportedFile(file, file.BytesOf(source))),
        ];

        // the descriptor first: it tells the next export which files are not somebody else's
        (string Name, byte[] Bytes)[] all =
        [
            (DataPackageJson.FileName, DataPackageJson.BytesOf(source, files, leftOut)),
            .. files.Select(file => (file.File.Name, file.Bytes)),
        ];
        IReadOnlySet<string> earlier = EarlierExport.In(_disk, _folder);
        RefuseForeign(all.Select(file => file.Name), earlier);
        write(all, earlier);
        return new ExportOutcome([.. all.Select(file => PathOf(file.Name))], leftOut);
    }

    private void RefuseForeign(IEnumerable<string> names, IReadOnlySet<string> earlier)
    {
        if (names.FirstOrDefault(name => !earlier.Contains(name) && _disk.Exists(PathOf(name))) is { } foreign)
        {
            throw new ExportRefusedException(ExportWords.ForeignFileIsInTheWay(PathOf(foreign)));
        }
    }

    private string PathOf(string name) => Path.Combine(_folder, name);
}

/// <summary>What an earlier export left in a folder: only files that its descriptor lists, everything else is somebody else's.</summary>
internal static class EarlierExport
{
    /// <summary>
    /// The names of the files that an earlier export of this program wrote there, its descriptor included; empty: there was none.
    /// </summary>
    public static IReadOnlySet<string> In(IDisk disk, string folder)
    {
        string descriptor = Path.Combine(folder, DataPackageJson.FileName);
        if (!disk.Exists(descriptor))
        {
            return new HashSet<string>();
        }

        try
        {
            using JsonDocument document = JsonDocument.Parse(disk.ReadAll(descriptor));
            return Listed(document.RootElement);
        }
        catch (Exception foreign) when (foreign is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return new HashSet<string>();
        }
    }

    private static HashSet<string> Listed(JsonElement root)
    {
        if (root.GetProperty(DataPackageJson.MakerProperty).GetString() != DataPackageJson.Maker)
        {
            return [];
        }

        // a name that is none of ours could lead out of the folder
        IEnumerable<string> listed = root.GetProperty("resources")
            .EnumerateArray()
            .Select(resource => resource.GetProperty("path").GetString() ?? "")
            .Where(name => Exports.All.Any(file => file.Name == name));
        return [DataPackageJson.FileName, .. listed];
    }
}
