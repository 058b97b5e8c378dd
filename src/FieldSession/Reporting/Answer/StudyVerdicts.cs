using FieldSession.Comparing;
using FieldSession.Revealing;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>
/// The verdicts of a study as data: a line each for meter, ring where there are recordings, ear and worth, for every code against the
/// reference.
/// </summary>
public static class StudyVerdicts
{
    /// <summary>The lines of a study.</summary>
    /// <param name="study">The study.</param>
    /// <param name="comparison">The comparison of its readings.</param>
    /// <param name="ear">What the ear says.</param>
    /// <param name="key">The opened key; null: not open.</param>
    /// <param name="ring">What the recordings say; null: nothing yet.</param>
    public static IReadOnlyList<VerdictLine> Of(
        Study study,
        Comparison comparison,
        EarFindings ear,
        OpenedKey? key,
        RingFinding? ring = null
    )
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(comparison);
        ArgumentNullException.ThrowIfNull(ear);
        return study.Asked is not { } plan
            ? []
            :
            [
                .. comparison
                    .Comparisons.Concat(comparison.AskedPairs)
                    .SelectMany(pair =>
                        OfPair(pair, plan, comparison, ear, PairVerdict.IsAgainstControl(pair, key), RingWord.Line(study, ring, pair))
                            .Select(line => WithChecks(line, study, pair, key))
                    ),
            ];
    }

    /// <summary>
    /// The meter's lines of readings without a study: on the steady segments, or on the impacts where there are no others.
    /// </summary>
    public static IReadOnlyList<VerdictLine> OfReadings(Comparison comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        return
        [
            .. comparison.Comparisons.Select(pair =>
                OfMeter(
                    pair,
                    pair.Classes.Steady ?? pair.Classes.Impact,
                    pair.Classes.Steady is null ? comparison.ImpactMarginDb : comparison.MarginDb
                )
            ),
        ];
    }

    private static IEnumerable<VerdictLine> OfPair(
        CodeComparison pair,
        Plan plan,
        Comparison comparison,
        EarFindings ear,
        bool isAgainstControl,
        VerdictLine? ring
    )
    {
        PairVerdict found = PairVerdict.Of(pair, plan, comparison, ear);
        (ClassComparison? main, ChoiceFinding? choice) = found;
        VerdictLine meter = OfMeter(pair, main, plan.MainMeasure == MainMeasure.Impact ? comparison.ImpactMarginDb : comparison.MarginDb);
        (WorthVerdict worth, string why) = WorthWord.Verdict(main, found.Meter, found.Ear, plan, isAgainstControl);
        return
        [
            meter,
            .. ring is null ? [] : new[] { ring },
            meter.As(
                VerdictLineKind.Ear,
                ChoiceWords.Word(found.Ear),
                choice is null ? VerdictReportWords.NoForcedChoicesPlanned : ChoiceWords.Sentence(choice)
            ),
            meter.As(VerdictLineKind.Worth, WorthWord.Word(worth), why),
        ];
    }

    private static VerdictLine OfMeter(CodeComparison pair, ClassComparison? main, double marginDb) =>
        new(
            pair.Code,
            pair.Reference,
            VerdictLineKind.Meter,
            MeterWord.Word(MeterWord.Of(main), marginDb),
            MeterWord.Reason(main),
            HangsOnWords.Sentence(main?.Sensitivity),
            main?.Basis?.Lengthened ?? 0,
            main?.Overall,
            main?.Basis
        );

    private static VerdictLine WithChecks(VerdictLine line, Study study, CodeComparison pair, OpenedKey? key) =>
        line with
        {
            LeftOut = study
                .Runs.Where(run => run.Code.Digits == pair.Code || run.Code.Digits == pair.Reference)
                .Sum(run => run.Readings.Count(reading => reading.LeftOut)),
            Key =
                key is null ? KeyCheckResult.NotOpen
                : key.NamesAllowed ? KeyCheckResult.Holds
                : KeyCheckResult.Failed,
        };
}
