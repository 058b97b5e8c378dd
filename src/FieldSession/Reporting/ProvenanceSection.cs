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
        return new ReportSection("Where this comes from",
        [
            new Points(
            [
                $"Journal: {provenance.LineCount} lines, head hash {provenance.HeadHash}.",
                $"Program: fieldsession {provenance.Version}.",
                .. study.Commitments.Select(commitment => $"Commitment: {commitment}."),
                "'fieldsession verify STUDY' checks every line of the journal; with '--head HASH' it proves that the line that bore a hash on paper still stands, and every line before it.",
            ]),
        ]);
    }
}
