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
            return new ReportSection("Predictions", [new Paragraph($"Hidden until all are locked; still open: {string.Join(", ", open)}.")]);
        }

        return new ReportSection("Predictions",
        [
            new ReportTable(
                ["Who", "Has the feature", "Sure", "Quieter", "Would pay", "From", "Outcome", "Words"],
                [.. study.Predictions.Select(p => Row(p, key))]),
            new Points([.. Scored(study, key)]),
            new Paragraph("A few people on one day are a description, not a test. A right guess from the sound is a finding; from something seen it is a leak."),
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
                ? "'Has the feature' is the spec that is not the control."
                : $"'Has the feature' is any of the {specs - 1} specs that are not the control: who points blindly is right in {specs - 1} of {specs}.";
        }

        if (study.Predictions.Any(p => p.Basis == PredictionBasis.Seen))
        {
            yield return "Somebody names something seen or overheard as the ground: look at the words whether the blind held.";
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
            return "key not open";
        }

        if (!key.NamesAllowed)
        {
            return "not sure: commitment or marks do not agree with the key";
        }

        return key.IsControl(prediction.Feature) switch
        {
            null => $"it was {spec}",
            true => $"wrong: it was {spec}, the control",
            false => $"right: it was {spec}",
        };
    }
}
