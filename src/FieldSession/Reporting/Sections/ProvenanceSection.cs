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
        return new ReportSection(
            ReportPart.Provenance,
            ReportingWords.WhereThisComesFrom,
            [
                new Points([
                    ReportingWords.JournalWithHeadHash(provenance),
                    $"Program: fieldsession {provenance.Version}.",
                    .. study.Commitments.Select(commitment => $"Commitment: {commitment}."),
                    ReportingWords.HowJournalIsVerified,
                ]),
            ]
        );
    }
}

/// <summary>What was said and seen on the way.</summary>
public static class NotesSection
{
    /// <summary>The section.</summary>
    public static ReportSection Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return new ReportSection(
            ReportPart.Notes,
            "Notes",
            study.Notes.Count == 0 ? [new Paragraph("None.")] : [new Points([.. study.Notes.Select(n => Line(n, study))])]
        );
    }

    private static string Line(Note note, Study study)
    {
        string where =
            note is { Run: { } run, Segment: { } segment } ? $"Run {run}, {study.Plan!.Route[segment - 1].Name}"
            : note.Run is { } only ? $"Run {only}"
            : $"{note.Mark.At:yyyy-MM-dd} {note.Mark.At:t} UTC";
        return $"{where}: {note.Words}{(note.Who is { } who ? $" ({who})" : "")}{(note.AfterReveal ? " (written after the reveal)" : "")}";
    }
}
