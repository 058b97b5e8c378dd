namespace FieldSession.Tests.Faults;

/// <summary>
/// What the real program did to the disk, and the states in which a power cut may leave it. A change of a file that no flush has
/// reached is there, is not, or is there in some of its sectors of 512 bytes, each change for itself. The names of a folder are as they
/// were after some number of its changes, at least those before its last flush: a flush of a file makes none of its names safe
/// (POSIX; Linux man page fsync(2)).
/// </summary>
internal sealed class RecordedDisk
{
    private readonly RecordedFolder _root;
    private int _place;

    /// <param name="files">The files at the beginning: path and bytes.</param>
    public RecordedDisk(IEnumerable<(string Path, byte[] Bytes)> files) =>
        _root = Laid([.. files.Select(file => (Parts(file.Path), file.Bytes))]);

    /// <summary>Takes the next call.</summary>
    public void Take(CallMade call)
    {
        _place++;
        if (call.Name == "fsync")
        {
            Flush(call);
        }
        else if (call.Result >= 0 && call.IsChange)
        {
            Change(call);
        }
    }

    /// <summary>The files that a power cut leaves now, drawn by lot.</summary>
    public Dictionary<string, byte[]> After(Random chance)
    {
        int kind = chance.Next(4);
        int upTo = chance.Next(_place + 1);
        int seed = chance.Next();
        return Files(_root, "", NamesOf, place => Fate(kind, upTo, place, seed)).ToDictionary();

        Dictionary<string, object> NamesOf(RecordedFolder folder) =>
            folder.After(
                kind switch
                {
                    0 => folder.Safe,
                    1 => folder.Changes,
                    _ => chance.Next(folder.Safe, folder.Changes + 1),
                }
            );
    }

    /// <summary>The files with every change.</summary>
    public Dictionary<string, byte[]> Whole() => Files(_root, "", folder => folder.Now, _ => 1).ToDictionary();

    private static IEnumerable<KeyValuePair<string, byte[]>> Files(
        RecordedFolder folder,
        string path,
        Func<RecordedFolder, Dictionary<string, object>> namesOf,
        Func<int, int> fate
    )
    {
        foreach ((string name, object node) in namesOf(folder))
        {
            string at = $"{path}/{name}";
            IEnumerable<KeyValuePair<string, byte[]>> below = node is RecordedFolder inner
                ? Files(inner, at, namesOf, fate)
                : [new(at, ((RecordedFile)node).After(fate))];
            foreach (KeyValuePair<string, byte[]> file in below)
            {
                yield return file;
            }
        }
    }

    // nothing, all, a beginning of which the last change is torn, or each change for itself
    private static int Fate(int kind, int upTo, int place, int seed) =>
        kind switch
        {
            0 => 0,
            1 => 1,
            2 => place < upTo ? 1
            : place == upTo ? 2 + seed % 1000
            : 0,
            _ => new Random(seed ^ place).Next(4) is var fate && fate < 2 ? fate : 2 + (seed ^ place) % 1000 & int.MaxValue,
        };

    private static string[] Parts(string path) => path.Split('/', StringSplitOptions.RemoveEmptyEntries);

    private static RecordedFolder Laid((string[] Parts, byte[] Bytes)[] files) =>
        new(
            files
                .GroupBy(file => file.Parts[0])
                .ToDictionary(
                    named => named.Key,
                    named =>
                        named.First().Parts.Length == 1
                            ? new RecordedFile(named.First().Bytes)
                            : (object)Laid([.. named.Select(file => (file.Parts[1..], file.Bytes))])
                )
        );

    private object? NodeAt(string path)
    {
        object? node = _root;
        foreach (string part in Parts(path))
        {
            node = (node as RecordedFolder)?.Now.GetValueOrDefault(part);
        }

        return node;
    }

    // a folder that nothing is known of was empty
    private RecordedFolder FolderOf(string path)
    {
        RecordedFolder folder = _root;
        foreach (string part in Parts(path)[..^1])
        {
            if (folder.Now.GetValueOrDefault(part) is not RecordedFolder inner)
            {
                folder.Change((part, inner = new RecordedFolder()));
                folder.Flush();
            }

            folder = inner;
        }

        return folder;
    }

    private void Flush(CallMade call)
    {
        if (NodeAt(call.Path) is RecordedFile file)
        {
            file.Flush(call.Result >= 0);
        }
        else if (call.Result >= 0 && NodeAt(call.Path) is RecordedFolder folder)
        {
            folder.Flush();
        }
    }

    private void Change(CallMade call)
    {
        RecordedFolder folder = FolderOf(call.Path);
        string name = Parts(call.Path)[^1];
        switch (call.Name)
        {
            case "create" or "trunc" when !folder.Now.ContainsKey(name):
                folder.Change((name, new RecordedFile([])));
                break;
            case "write" or "ftruncate" or "trunc":
                (folder.Now.GetValueOrDefault(name) as RecordedFile)?.Change(call, _place);
                break;
            case "mkdir":
                folder.Change((name, new RecordedFolder()));
                break;
            case "unlink":
                folder.Change((name, null));
                break;
            case "rename" or "exchange" or "link":
                Rename(call, folder, name);
                break;
        }
    }

    private void Rename(CallMade call, RecordedFolder folder, string name)
    {
        RecordedFolder toFolder = FolderOf(call.To);
        string to = Parts(call.To)[^1];
        object? node = folder.Now.GetValueOrDefault(name);
        object? other =
            call.Name == "exchange" ? toFolder.Now.GetValueOrDefault(to)
            : call.Name == "link" ? node
            : null;
        if (folder == toFolder)
        {
            folder.Change((name, other), (to, node));
        }
        else
        {
            toFolder.Change((to, node));
            folder.Change((name, other));
        }
    }
}
