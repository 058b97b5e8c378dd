using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>What pins the report to its journal.</summary>
public static class ProvenanceSection
{
    /// <summary>The section.</summary>
    public static ReportSection Of(Study study, Provenance provenance)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(provenance);
        return new ReportSection(ReportPart.Provenance, ReportingWords.WhereThisComesFrom,
        [
            new Points(
            [
                ReportingWords.JournalWithHeadHash(provenance),
                $"Program: fieldsession {provenance.Version}.",
                .. study.Commitments.Select(commitment => $"Commitment: {commitment}."),
                ReportingWords.HowJournalIsVerified,
            ]),
        ]);
    }
}
