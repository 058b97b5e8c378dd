using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>A code with the fitting that drew it.</summary>
/// <param name="Code">The code.</param>
/// <param name="FittingNumber">Number of the fitting, from 1; null: driven without sealing.</param>
/// <param name="Fitting">The fitting; null: driven without sealing.</param>
internal sealed record FittedCode(SpecCode Code, int? FittingNumber, Fitting? Fitting);

/// <summary>The codes. Nothing here tells what a code is.</summary>
internal static class CodesTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<FittedCode>(
            "codes",
            "The blind codes: one row a code. Which spec a code is, this table does not say.",
            [
                Column.Text<FittedCode>("code", "three digits", c => c.Code.Digits).Always,
                Column.Count<FittedCode>(
                    "fitting",
                    "number of the fitting that drew it; empty: driven without sealing",
                    c => c.FittingNumber
                ),
                Column.Text<FittedCode>(
                    "place",
                    "place in the order: R (the reference), 1, 2, ...",
                    c => c.Fitting is { } f ? new Place(f.Codes.IndexOf(c.Code)).ToString() : null
                ),
                Column.Text<FittedCode>(
                    "commitment",
                    "SHA-256 of the key's canonical line; empty: a paper key",
                    c => c.Fitting?.Commitment
                ),
                Column.Count<FittedCode>("line", "journal line of the sealing", c => c.Fitting?.Mark.Place),
                Column.Time<FittedCode>("at", "when it was sealed", c => c.Fitting?.Mark.At),
            ],
            Rows
        )
        {
            Key = ["code"],
        };

    private static IEnumerable<FittedCode> Rows(ExportSource source)
    {
        foreach (SpecCode code in source.Study.Codes)
        {
            int fitting = source.Study.Fittings.FindIndex(f => f.Codes.Contains(code));
            yield return fitting < 0 ? new FittedCode(code, null, null) : new FittedCode(code, fitting + 1, source.Study.Fittings[fitting]);
        }
    }
}
