using FieldSession.State;

namespace FieldSession.Revealing;

/// <summary>Why names are withheld: which check failed, and for which codes.</summary>
public static class WithheldWords
{
    /// <summary>The failed checks, each in words; empty: none failed.</summary>
    /// <param name="marks">How the marks compare with the key.</param>
    /// <param name="commitmentHolds">Whether the key gives the published commitment; null: there was none.</param>
    public static IEnumerable<string> Of(MarkCheck marks, bool? commitmentHolds)
    {
        ArgumentNullException.ThrowIfNull(marks);
        return
        [
            .. commitmentHolds == false ? ["the key does NOT give the published commitment"] : Array.Empty<string>(),
            .. marks.Differ.IsEmpty ? Array.Empty<string>() : [MarksDiffer(marks.Differ)],
            .. marks.NotRead.IsEmpty ? Array.Empty<string>() : [$"nobody read the mark of {string.Join(" and ", marks.NotRead)}"],
            .. marks.ReadByTwo ? Array.Empty<string>() : ["the marks were not read by two different people"],
        ];
    }

    /// <summary>Which codes' marks are not those in the key.</summary>
    public static string MarksDiffer(IEnumerable<SpecCode> codes) => $"the mark read on {string.Join(" and ", codes)} is NOT the one in the key";
}
