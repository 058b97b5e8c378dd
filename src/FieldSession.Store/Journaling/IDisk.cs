namespace FieldSession.Store.Journaling;

/// <summary>What the journal asks of a disk. The port through which tests cut the power and fill the disk.</summary>
internal interface IDisk
{
    /// <summary>Whether a file lies at a path.</summary>
    bool Exists(string path);

    /// <summary>The whole of a file, read beside whoever has it open and without locking it.</summary>
    byte[] ReadAll(string path);

    /// <summary>Opens a file for reading beside whoever has it open, without locking it.</summary>
    IDiskFile Look(string path);

    /// <summary>The same, past what the system remembers of the file: what is read is on the disk. Null: this system offers no such way.</summary>
    IDiskFile? LookPastMemory(string path);

    /// <summary>Opens a file for reading and writing, for this process alone.</summary>
    IDiskFile Open(string path, FileMode mode);

    /// <summary>Renames a file, in the place of another one if there is one.</summary>
    void Move(string from, string to);

    /// <summary>Removes a file; nothing happens where there is none.</summary>
    void Delete(string path);

    /// <summary>Makes the names in the folder of a file durable: a new file is safe only when its name is.</summary>
    /// <exception cref="IOException">The disk said no.</exception>
    void SyncFolderOf(string path);
}
