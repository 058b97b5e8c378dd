using FieldSession.Comparing;
using FieldSession.Revealing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>Contents of the report, in the order it is read. Codes only, until the key is open and its checks hold.</summary>
public static class DayReport
{
    /// <summary>The report of a study.</summary>
    /// <param name="study">The study.</param>
    /// <param name="key">The opened key; null: the report stays blind.</param>
    /// <param name="provenance">What pins the report to its journal.</param>
    public static Report Of(Study study, OpenedKey? key, Provenance provenance)
    {
        ArgumentNullException.ThrowIfNull(study);
        SpecNames names = new(key);
        MeasuredDay day = SpecsMerged.Of(StudyReadings.Of(study), key);
        ComparisonTerms terms = StudyTerms.Of(study) with { Reference = names.ReferenceIn(study)?.Digits };
        ReportDay reported = new(study, names, day, BlindComparison.InFull(day, terms), EarFindings.Of(study, terms))
        {
            Ring = RingFinding.Of(study, terms.Reference, merged => SpecsMerged.Of(merged, key)),
            ChosenAfter = StudyTerms.ChosenAfter(study) is { } chosen
                ? BlindComparison.Of(day, chosen with { Reference = terms.Reference })
                : null,
        };
        return new Report(
            Title(study, key),
            [
                AnswerSection.Of(reported),
                VerdictSection.Of(reported),
                HowToReadSection.Of(study.Plan),
                QuestionSection.Of(study),
                CodesSection.Of(study, key),
                ResultSection.Of(reported),
                MapSection.Of(reported),
                ReadingsSection.Of(reported),
                LimitsSection.Of(study),
                ExploredSection.Of(reported),
                .. RingSection.Of(reported) is { } ring ? [ring] : Array.Empty<ReportSection>(),
                EarSection.Of(reported),
                .. EnergySection.Of(reported) is { } energy ? [energy] : Array.Empty<ReportSection>(),
                FactsSection.Of(study),
                ConditionsSection.Of(study),
                ChecksSection.Of(study),
                PredictionsSection.Of(study, key),
                NotesSection.Of(study),
                ProvenanceSection.Of(study, provenance),
            ]
        );
    }

    /// <summary>The report on one page, to hand over: the answer, how to read it, what was left out and what the day can't say.</summary>
    public static Report OnePage(Report report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return report with { Sections = [.. report.Sections.Select(Short).OfType<ReportSection>()] };
    }

    // the counts of what was left out without the list of every reading
    private static ReportSection? Short(ReportSection section) =>
        section.Part switch
        {
            ReportPart.Answer or ReportPart.HowToRead or ReportPart.Limits => section,
            ReportPart.Provenance => section with
            {
                Blocks = [new Points([.. section.Blocks.OfType<Points>().SelectMany(points => points.Items).Take(MostLinesOfProvenance)])],
            },
            ReportPart.LeftOut => section with { Blocks = [.. section.Blocks.OfType<ReportTable>().Take(1)] },
            _ => null,
        };

    // the journal with its hash, and the program
    private const int MostLinesOfProvenance = 2;

    private static string Title(Study study, OpenedKey? key)
    {
        string name = study.Plan?.StudyName ?? "study";
        return ReportingWords.ReportTitle(name, study, key is null ? ReportingWords.TitleKeyNotOpened : "");
    }
}
