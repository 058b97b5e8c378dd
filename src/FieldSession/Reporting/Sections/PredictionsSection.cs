using System.Globalization;
using FieldSession.Predicting;
using FieldSession.Revealing;
using FieldSession.Reviewing;
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
            return new ReportSection(
                ReportPart.Predictions,
                "Predictions",
                [new Paragraph(ReportingWords.PredictionsHidden(string.Join(", ", open)))]
            );
        }

        return new ReportSection(
            ReportPart.Predictions,
            "Predictions",
            [
                new ReportTable(
                    ["Who", ReportingWords.HasFeature, "Sure", "Quieter", "Would pay", "From", "Outcome", "Words"],
                    [.. study.Predictions.Select(p => Row(p, key))]
                ),
                new Points([.. Scored(study, key)]),
                new Paragraph(ReportingWords.FewPeopleAreNoTest),
            ]
        );
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
            yield return specs == 2 ? ReportingWords.FeatureIsNotTheControl : ReportingWords.FeatureIsAnyButControl(specs);
        }

        if (
            study.RingOpening is { } opening
            && study.Predictions.Where(p => p.Mark.Place > opening.Mark.Place).ToArray() is { Length: > 0 } after
        )
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
            prediction.WouldPay switch
            {
                true => "yes",
                false => "no",
                null => "",
            },
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

/// <summary>The score of predictions in plain words, with what it can say at all.</summary>
public static class ScoreWords
{
    /// <summary>A probability at or below which chance is called unlikely.</summary>
    public const double Unlikely = 0.05;

    /// <summary>The sentences.</summary>
    public static IEnumerable<string> Of(PredictionScores scores)
    {
        ArgumentNullException.ThrowIfNull(scores);
        yield return $"{scores.Hits} of {scores.Count} right. Blind guessing gives {Number(scores.ExpectedHits)} on average, and so "
            + $"many or more with probability {Figures.Probability(scores.PAtLeast)} (exact, as if each had guessed alone).";
        yield return CanBeUnlikely(scores)
            ? scores.PAtLeast <= Unlikely
                ? "Guessing alone would seldom come to this."
                : "Guessing alone would often come to this."
            : "So few predictions can't tell knowledge from luck, whatever they say: even if all were right, guessing would explain it.";
        yield return $"Brier score {Number(scores.Brier)} (0 best, 1 worst); stating the chance throughout would have scored "
            + $"{Number(scores.BrierOfChance)}.";
    }

    /// <summary>What one study brings to a common score.</summary>
    /// <param name="name">The study's name.</param>
    /// <param name="study">Which study it is.</param>
    /// <param name="predictions">Its predictions.</param>
    /// <param name="copies">Other files that were named and are copies or earlier states of it.</param>
    public static string OfStudy(string name, StudyIdentity study, IReadOnlyCollection<ScoredPrediction> predictions, int copies)
    {
        ArgumentNullException.ThrowIfNull(predictions);
        string once =
            copies == 0
                ? ""
                : $"; counted once, {copies} of the files "
                    + $"{(copies == 1 ? "is a copy or an earlier state" : "are copies or earlier states")} of it";
        return $"{name} ({study.ShortHash}): {predictions.Count(one => one.Hit)} of {predictions.Count} right{once}";
    }

    /// <summary>Why a study is not scored: its key.</summary>
    public static string KeyIsNotOpen(string path) =>
        $"{path}: the key is not open, or does not name the control; open it with 'reveal' first";

    /// <summary>Why a study is not scored: its copies.</summary>
    public static string WentOnDifferently(IReadOnlyList<string> paths) =>
        $"{string.Join(", ", paths)}: copies of one study that went on differently; not scored. Merge one into the other "
        + $"first: fieldsession merge {paths[0]} {paths[1]}";

    // The most that these predictions could have shown: every one right.
    private static bool CanBeUnlikely(PredictionScores scores) => scores.PAllRight <= Unlikely;

    private static string Number(double number) => number.ToString("0.##", CultureInfo.CurrentCulture);
}
