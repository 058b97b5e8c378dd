using System.Text;
using System.Text.RegularExpressions;

namespace FieldSession.Tests.Making;

/// <summary>Looks for a secret in files and words, in every disguise that a program might give it by accident.</summary>
internal static class Leak
{
    /// <summary>The files below a folder that hold one of the names.</summary>
    public static IEnumerable<string> FilesWith(string folder, IEnumerable<string> names)
    {
        byte[][] disguises = [.. names.SelectMany(Disguises)];
        return from file in Directory.GetFiles(folder, "*", SearchOption.AllDirectories)
            let bytes = File.ReadAllBytes(file)
            where disguises.Any(disguise => bytes.AsSpan().IndexOf(disguise) >= 0)
            select file;
    }

    /// <summary>
    /// The files below a folder that hold one of the drawn marks as a word of its own; four letters alone turn up by chance.
    /// </summary>
    public static IEnumerable<string> FilesWithMark(string folder, IEnumerable<string> marks)
    {
        Regex[] words = [.. marks.Select(mark => new Regex($"(?<![A-Za-z0-9+/]){mark}(?![A-Za-z0-9+/])"))];
        return from file in Directory.GetFiles(folder, "*", SearchOption.AllDirectories)
            let bytes = File.ReadAllBytes(file)
            from text in new[] { Encoding.Latin1.GetString(bytes), Encoding.Unicode.GetString(bytes) }
            where words.Any(word => word.IsMatch(text))
            select file;
    }

    /// <summary>
    /// As it is, in small letters, backwards; in UTF-8 and UTF-16; each also as base64 at any of the three places of a group.
    /// </summary>
    public static IEnumerable<byte[]> Disguises(string name)
    {
        string[] words = [name, name.ToLowerInvariant(), string.Concat(name.Reverse())];
        foreach (
            byte[] plain in words.SelectMany(word =>
                new[] { Encoding.UTF8.GetBytes(word), Encoding.Unicode.GetBytes(word), Encoding.BigEndianUnicode.GetBytes(word) }
            )
        )
        {
            yield return plain;
            for (int before = 0; before < 3; before++)
            {
                string text = Convert.ToBase64String([.. new byte[before], .. plain, 0, 0]);
                // what is beside the name changes the first and the last characters
                yield return Encoding.ASCII.GetBytes(text[(before == 0 ? 0 : before + 1)..((((before + plain.Length) * 8) / 6) - 1)]);
            }
        }
    }
}
