using FieldSession.Predicting;
using FieldSession.Revealing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>What the crew said before the key was opened, and how it came out.</summary>
public static class PredictionsSection
{
    /// <summary>The section. Predictions stay hidden until every member of the crew has locked one.</summary>
    public static ReportSection Of(Study study, OpenedKey? key)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] open = [.. study.StillToPredict.Select(m => m.Name)];
        if (open.Length > 0)
        {
            return new ReportSection(ReportPart.Predictions, "Predictions", [new Paragraph(ReportingWords.PredictionsHidden(string.Join(", ", open)))]);
        }

        return new ReportSection(ReportPart.Predictions, "Predictions",
        [
            new ReportTable(
                ["Who", ReportingWords.HasFeature, "Sure", "Quieter", "Would pay", "From", "Outcome", "Words"],
                [.. study.Predictions.Select(p => Row(p, key))]),
            new Points([.. Scored(study, key)]),
            new Paragraph(ReportingWords.FewPeopleAreNoTest),
        ]);
    }

    private static IEnumerable<string> Scored(Study study, OpenedKey? key)
    {
        if (PredictionScores.Of(PredictionScores.In(study, key)) is { } scores)
        {
            foreach (string line in ScoreWords.Of(scores))
            {
                yield return line;
            }

            int specs = study.Plan!.SpecCount;
            yield return specs == 2
                ? ReportingWords.FeatureIsNotTheControl
                : ReportingWords.FeatureIsAnyButControl(specs);
        }

        if (study.RingOpening is { } opening && study.Predictions.Where(p => p.Mark.Place > opening.Mark.Place).ToArray() is { Length: > 0 } after)
        {
            yield return ReportingWords.PredictedAfterRing(string.Join(" and ", after.Select(p => p.Person)), opening.Why);
        }

        if (study.Predictions.Any(p => p.Basis == PredictionBasis.Seen))
        {
            yield return ReportingWords.SomebodyWentByWhatWasSeen;
        }
    }

    private static IReadOnlyList<string> Row(Prediction prediction, OpenedKey? key) =>
    [
        prediction.Person,
        prediction.Feature.Digits,
        PredictionScale.InWords(prediction),
        prediction.Quieter?.Digits ?? "",
        prediction.WouldPay switch { true => "yes", false => "no", null => "" },
        prediction.Basis.ToString().ToLowerInvariant(),
        Outcome(prediction, key),
        prediction.Words ?? "",
    ];

    private static string Outcome(Prediction prediction, OpenedKey? key)
    {
        if (key?.SpecOf(prediction.Feature) is not { } spec)
        {
            return ReportingWords.OutcomeKeyNotOpen;
        }

        if (!key.NamesAllowed)
        {
            return ReportingWords.OutcomeNotSure;
        }

        return key.IsControl(prediction.Feature) switch
        {
            null => $"it was {spec}",
            true => ReportingWords.WrongItWasControl(spec),
            false => ReportingWords.RightItWasSpec(spec),
        };
    }
}
