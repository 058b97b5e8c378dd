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
                ["Who", "Has the feature", "Sure, 1-5", "Quieter", "Would pay", "From", "Outcome", "Words"],
                [.. study.Predictions.Select(p => Row(p, key))]),
            new Paragraph("A few people on one day are a description, not a test. A right guess from the sound is a finding; from something seen it is a leak."),
        ]);
    }

    private static IReadOnlyList<string> Row(Prediction prediction, OpenedKey? key) =>
    [
        prediction.Person,
        prediction.Feature.Digits,
        $"{prediction.Sure}",
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

        return key.Control is null ? $"it was {spec}" : spec == key.Control ? $"wrong: it was {spec}, the control" : $"right: it was {spec}";
    }
}
