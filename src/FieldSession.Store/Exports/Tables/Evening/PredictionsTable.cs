using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>The predictions, hidden until all are locked.</summary>
internal static class PredictionsTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<Prediction>(
            "predictions",
            "What each of the crew said before the key was opened: one row a person.",
            [
                Column.Text<Prediction>("person", "who says it", p => p.Person).Always,
                Column.Text<Prediction>("feature", "code held to have the hidden feature", p => p.Feature.Digits).Always,
                Column.Count<Prediction>("sure", "how sure, 1 (a guess) to 5 (certain)", p => p.Sure).Always,
                Column.Count<Prediction>(
                    "sure_percent",
                    "how sure as it was said in per cent, 1..100; empty: it was said in steps",
                    p => p.SurePercent
                ),
                Column.Text<Prediction>("quieter", "code held to be quieter; empty: no opinion", p => p.Quieter?.Digits),
                Column.YesNo<Prediction>("would_pay", "whether they would pay for the feature; empty: no opinion", p => p.WouldPay),
                Column
                    .Text<Prediction>(
                        "basis",
                        "what it rests on: sound, seen (something seen or overheard) or guess",
                        p => BasisWord(p.Basis)
                    )
                    .Always.OneOf("sound", "seen", "guess"),
                Column.Text<Prediction>("words", "more in their own words", p => p.Words),
                Column.Count<Prediction>("line", "journal line", p => p.Mark.Place).Always,
                Column.Time<Prediction>("at", "when it was locked", p => p.Mark.At).Always,
            ],
            source => source.Study.Predictions
        )
        {
            Key = ["person"],
            Links = [new("feature", "codes", "code"), new("quieter", "codes", "code")],
            Hidden = source => source.PredictionsHiddenBecause,
        };

    private static string BasisWord(PredictionBasis basis) =>
        basis switch
        {
            PredictionBasis.Sound => "sound",
            PredictionBasis.Seen => "seen",
            _ => "guess",
        };
}
