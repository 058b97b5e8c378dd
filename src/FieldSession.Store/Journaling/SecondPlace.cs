using System.Text;
using FieldSession.Journal;

namespace FieldSession.Store.Journaling;

/// <summary>
/// A file in another place that keeps the acts which the study's disk would not take, as lines that 'enter' takes. It is written whole each time, and goes when
/// nothing is left to keep.
/// </summary>
/// <param name="folder">The folder, such as a stick's; it is made where it is missing.</param>
/// <param name="study">Path of the study.</param>
/// <param name="strand">The strand of this laptop, 16 hex digits, which tells studies of one name apart.</param>
public sealed class SecondPlace(string folder, string study, string strand)
{
    private const int DigitsOfStrand = 8;

    /// <summary>Full path of the file.</summary>
    public string File { get; } = Path.Combine(
        Path.GetFullPath(folder), $"{Path.GetFileNameWithoutExtension(study)}-{strand[..DigitsOfStrand]}.unsaved");

    /// <summary>Whether it holds acts of an earlier sitting.</summary>
    public bool IsThere => System.IO.File.Exists(File);

    /// <summary>Keeps some acts; when this returns, they are on that place's disk.</summary>
    /// <param name="earlier">What the file held when the study was opened.</param>
    /// <param name="acts">The acts; none: the file goes, if it held nothing earlier.</param>
    /// <exception cref="IOException">They can't be kept there.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written to.</exception>
    public void Keep(string earlier, IReadOnlyList<UnsavedAct> acts)
    {
        if (acts.Count == 0 && earlier.Length == 0)
        {
            System.IO.File.Delete(File);
            return;
        }

        Directory.CreateDirectory(Path.GetDirectoryName(File)!);
        StringBuilder text = new(earlier);
        foreach (UnsavedAct act in acts)
        {
            text.Append(FileOnDiskWords.RemarkOnUnsaved(act)).Append('\n').Append(act.Typed).Append('\n');
        }

        WholeFile.Write(new Disk(), File, Encoding.UTF8.GetBytes(text.ToString()));
    }

    /// <summary>What the file holds now; empty: nothing.</summary>
    /// <exception cref="IOException">It can't be read.</exception>
    public string Held() => IsThere ? SmallText.Read(File) : "";
}
