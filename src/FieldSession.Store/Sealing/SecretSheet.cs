namespace FieldSession.Store.Sealing;

/// <summary>A sheet that names the specs, for the custodian alone.</summary>
public static class SecretSheet
{
    /// <summary>Writes it whole or not at all, for its owner alone (on Unix), never over another file.</summary>
    /// <exception cref="IOException">It could not be written, or a file of that name is there; nothing was left behind.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written to.</exception>
    public static void Write(string path, byte[] bytes) => PrivateFile.Write(path, bytes);
}
