using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Reviewing;

/// <summary>What an amended question would say, beside the verdict that stays with the question before.</summary>
public static class ChosenAfterWords
{
    /// <summary>The lines for a study; empty where nothing was amended after a comparison could be seen.</summary>
    public static IEnumerable<string> Of(Study study, MeasuredDay day)
    {
        string[] sentences = [.. Sentences(study, day)];
        return sentences.Length == 0 ? [] : ["", .. PlainLines.Wrapped("", sentences[0]), .. sentences[1..].SelectMany(line => PlainLines.Wrapped("  ", line))];
    }

    /// <summary>The same, not yet wrapped: what it is, then a sentence for every candidate; empty where nothing was amended so.</summary>
    public static IEnumerable<string> Sentences(Study study, MeasuredDay day)
    {
        ArgumentNullException.ThrowIfNull(study);
        return StudyTerms.ChosenAfter(study) is { } terms ? Sentences(BlindComparison.Of(day, terms), terms) : [];
    }

    private static IEnumerable<string> Sentences(Comparison chosen, ComparisonTerms terms)
    {
        MainMeasure measure = terms.MainMeasure ?? MainMeasure.Steady;
        MeasureClass? main = ComparisonTerms.MainClassOf(measure);
        string on = $"{MainMeasureWords.Of(measure, terms.MainSegments)}, margin {Figures.MarginDb(terms.MarginOfDb(main))} dB";
        return
        [
            ReviewingWords.ChosenAfterTheData,
            .. chosen.Main.Select(pair =>
                $"{pair.Code} against {pair.Reference}, on {on}: {Figures.Difference(pair.Classes.Of(main)?.Overall)} dB, {pair.Classes.Of(main)?.Verdict ?? Figures.Unknown}"),
        ];
    }
}
