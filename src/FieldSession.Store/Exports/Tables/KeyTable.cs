using FieldSession.Revealing;

namespace FieldSession.Store.Exports.Tables;

/// <summary>A code with what the opened key and the marks on the tyres say of it.</summary>
/// <param name="Coded">The code and its spec.</param>
/// <param name="IsControl">Whether the spec is the control; null: not told.</param>
/// <param name="Mark">The spec that was read on the tyres; null: not read.</param>
/// <param name="NamesAllowed">Whether commitment and marks let the names be believed.</param>
internal sealed record RevealedCode(CodedSpec Coded, bool? IsControl, string? Mark, bool NamesAllowed);

/// <summary>Who is who, once the key is open; before, the table does not exist.</summary>
internal static class KeyTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } = new ExportTable<RevealedCode>(
        "key",
        "What the codes stood for, as the opened key says: one row a code.",
        [
            Column.Text<RevealedCode>("code", "the code", c => c.Coded.Code.Digits).Always,
            Column.Text<RevealedCode>("spec", "the custodian's name of the spec", c => c.Coded.Spec).Always,
            Column.YesNo<RevealedCode>("control", "whether it is the control; empty: not told", c => c.IsControl),
            Column.Text<RevealedCode>("mark", "spec that two people read on the tyres; empty: not read", c => c.Mark),
            Column.YesNo<RevealedCode>("verified", "whether the key gave the published commitment, where there was one, and agrees with all marks", c => c.NamesAllowed).Always,
        ],
        source => source.Key is { } key ? key.Key.Select(coded => Row(coded, key)) : [])
    {
        Key = ["code"],
        Links = [new("code", "codes", "code")],
        Is = source => source.Key is not null,
    };

    private static RevealedCode Row(CodedSpec coded, OpenedKey key)
    {
        string[] marks = [.. key.Marks.Where(mark => mark.Code == coded.Code).Select(mark => mark.Spec).Distinct()];
        return new RevealedCode(
            coded,
            key.IsControl(coded.Code),
            marks.Length == 0 ? null : string.Join(" / ", marks),
            key.NamesAllowed);
    }
}
