using System.Text;
using FieldSession.Store.Disks;

namespace FieldSession.Store;

/// <summary>
/// Reads a text that a person wrote: a plan, a route, a list of specs, a template, their own keys. It is read to a limit and no further,
/// whatever lies under its name, and as UTF-8 or not at all, so that nothing of it is lost when it is written back.
/// </summary>
public static class SmallText
{
    /// <summary>The largest text that is read, bytes: far above any that a person writes.</summary>
    public const int MostBytes = 5 * 1024 * 1024;

    /// <summary>The text without byte order mark.</summary>
    /// <exception cref="TextRefusedException">It is larger than <see cref="MostBytes"/>, or not UTF-8.</exception>
    /// <exception cref="IOException">It can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static string Read(string path)
    {
        using FileStream file = Patience.With(() =>
            new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete)
        );
        // a pipe and a device have no length that says anything
        long told = file.CanSeek ? file.Length : 0;
        byte[] bytes = new byte[(told == 0 ? MostBytes : Math.Min(told, MostBytes)) + 1];
        int length = file.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        if (length > MostBytes)
        {
            throw new TextRefusedException(path, null, SmallTextWords.FileIsTooLarge(MostBytes >> 20), SmallTextWords.NameShortText);
        }

        return Of(path, bytes.AsSpan(0, length));
    }

    /// <summary>The text's lines.</summary>
    /// <inheritdoc cref="Read"/>
    public static IReadOnlyList<string> Lines(string path) => [.. Read(path).ReplaceLineEndings("\n").TrimEnd('\n').Split('\n')];

    /// <summary>The text of the bytes that lie in a file, without byte order mark.</summary>
    /// <exception cref="TextRefusedException">They are not UTF-8.</exception>
    internal static string Of(string path, ReadOnlySpan<byte> bytes)
    {
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException broken)
        {
            int line = bytes[..Math.Max(0, broken.Index)].Count((byte)'\n') + 1;
            throw new TextRefusedException(path, line, SmallTextWords.NoUtf8, SmallTextWords.SaveAsUtf8);
        }
    }
}

/// <summary>A text is not taken as it is.</summary>
public sealed class TextRefusedException : IOException
{
    /// <summary>A refusal.</summary>
    /// <param name="path">The file.</param>
    /// <param name="line">The line where it goes wrong, from 1; null: the whole.</param>
    /// <param name="what">What is wrong.</param>
    /// <param name="remedy">What to do.</param>
    public TextRefusedException(string path, int? line, string what, string remedy)
        : base($"{path}{(line is null ? "" : $", line {line}")}: {what}; {remedy}")
    {
        Line = line;
        What = what;
        Remedy = remedy;
    }

    /// <summary>The line where it goes wrong, from 1; null: the whole.</summary>
    public int? Line { get; }

    /// <summary>What is wrong.</summary>
    public string What { get; }

    /// <summary>What to do.</summary>
    public string Remedy { get; }
}

/// <summary>Why a text that a person wrote is not taken.</summary>
internal static class SmallTextWords
{
    public static string FileIsTooLarge(int mostMebibytes) => $"the file is larger than {mostMebibytes} MiB";

    public const string NameShortText = "name a text of some lines";
    public const string NoUtf8 = "the text is not UTF-8";
    public const string SaveAsUtf8 = "save the file as UTF-8";
}
