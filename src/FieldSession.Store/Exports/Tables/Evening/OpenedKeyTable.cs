using FieldSession.Revealing;

namespace FieldSession.Store.Exports.Tables;

/// <summary>A code with what the opened key and the marks on the tyres say of it.</summary>
/// <param name="Coded">The code and its spec.</param>
/// <param name="IsControl">Whether the spec is the control; null: not told.</param>
/// <param name="Mark">The mark that was read on the tyres, last; null: not read.</param>
/// <param name="EarlierMark">What was read before and was not the same; null: nothing.</param>
/// <param name="NamesAllowed">Whether commitment and marks let the names be believed.</param>
internal sealed record RevealedCode(CodedSpec Coded, bool? IsControl, string? Mark, string? EarlierMark, bool NamesAllowed);

/// <summary>Who is who, once the key is open; before, the table does not exist.</summary>
internal static class OpenedKeyTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<RevealedCode>(
            "key",
            "Which spec each code was, as the opened key says: one row a code.",
            [
                Column.Text<RevealedCode>("code", "the code", c => c.Coded.Code.Digits).Always,
                Column.Text<RevealedCode>("spec", "the custodian's name of the spec", c => c.Coded.Spec).Always,
                Column.YesNo<RevealedCode>("control", "whether it is the control; empty: not given", c => c.IsControl),
                Column.Text<RevealedCode>("mark", "mark that two people read on the tyres, last; empty: not read", c => c.Mark),
                Column
                    .YesNo<RevealedCode>(
                        "verified",
                        "whether the key gave the published commitment, where there was one, and agrees with all marks",
                        c => c.NamesAllowed
                    )
                    .Always,
                Column.Text<RevealedCode>("mark_wanted", "mark that is in the key", c => c.Coded.UnderTape).Always,
                Column.Text<RevealedCode>(
                    "earlier_mark",
                    "mark that was read before and was not the same; empty: none",
                    c => c.EarlierMark
                ),
            ],
            source => source.Key is { } key ? key.Key.Select(coded => Row(coded, key)) : []
        )
        {
            Key = ["code"],
            Links = [new("code", "codes", "code")],
            Is = source => source.Key is not null,
        };

    private static RevealedCode Row(CodedSpec coded, OpenedKey key)
    {
        string mark = key.MarkOf(coded.Code);
        string earlier = key.EarlierMarkOf(coded.Code);
        return new RevealedCode(
            coded,
            key.IsControl(coded.Code),
            mark.Length == 0 ? null : mark,
            earlier.Length == 0 ? null : earlier,
            key.NamesAllowed
        );
    }
}
