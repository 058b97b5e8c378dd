using System.Text;

namespace FieldSession.Store.Planning;

/// <summary>Reads one file of a plan folder as text.</summary>
internal static class PlanFile
{
    /// <summary>Name of the plan's file.</summary>
    public const string Plan = "plan.toml";

    /// <summary>Name of the route's file.</summary>
    public const string Route = "route.csv";

    private const int MostBytes = 5 * 1024 * 1024;

    /// <summary>The text without byte order mark; null with a trouble where there is none.</summary>
    public static string? Read(string folder, string name, Troubles troubles)
    {
        string path = Path.Combine(folder, name);
        try
        {
            using FileStream file = File.OpenRead(path);
            byte[] bytes = new byte[Math.Min(file.Length, MostBytes) + 1];
            int length = file.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            if (length > MostBytes)
            {
                troubles.Refuse(name, null, null, "the file is larger than 5 MB", "a plan has some lines of text");
                return null;
            }

            return Decode(bytes.AsSpan(0, length), name, troubles);
        }
        catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException)
        {
            troubles.Refuse(name, null, null, $"there is no file {path}", $"a plan folder holds {Plan} and {Route}");
        }
        catch (Exception denied) when (denied is IOException or UnauthorizedAccessException)
        {
            troubles.Refuse(name, null, null, $"{path} can't be read", "look whether it is a file, and whether you may read it");
        }

        return null;
    }

    private static string? Decode(ReadOnlySpan<byte> bytes, string name, Troubles troubles)
    {
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException broken)
        {
            int line = bytes[..Math.Max(0, broken.Index)].Count((byte)'\n') + 1;
            troubles.Refuse(name, line, null, "the text is not UTF-8", "save the file as UTF-8");
            return null;
        }
    }
}
