using FieldSession.Revealing;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>The codes, what was published of the key, and how its checks came out.</summary>
public static class CodesSection
{
    /// <summary>The section.</summary>
    public static ReportSection Of(Study study, OpenedKey? key)
    {
        ArgumentNullException.ThrowIfNull(study);
        List<string> points =
        [
            .. study.Fittings.Select(Published),
            .. key is null ? BlindWords.Remarks(study) : OpenedRemarks(study),
            .. study.Overrides.Select(o => $"Check '{o.Check}' was overridden before run {o.BeforeRun}: {o.Reason}"),
        ];
        if (study.Opening is not { } opening || key is null)
        {
            return new ReportSection("Codes and key", [new Points([.. points, "The key is not open."])]);
        }

        points.AddRange(Opened(study, opening));
        points.AddRange(key.NotesThatName(study).Select(n => $"A note of line {n.Mark.Place}, written before the reveal, names a spec: look whether the blind leaked."));
        ReportTable table = new(
            ["Code", "Spec by the key", "Mark read on the tyres", "Control"],
            [.. key.Key.Select(k => (IReadOnlyList<string>)[k.Code.Digits, k.Spec, MarksOf(key, k.Code), key.IsControl(k.Code) == true ? "control" : ""])]);
        return new ReportSection("Codes and key", [new Points(points), table]);
    }

    // After the reveal the keys tell which codes belong together.
    private static IEnumerable<string> OpenedRemarks(Study study) => BlindWords.Remarks(study).Take(1);

    private static IEnumerable<string> Opened(Study study, Opening opening)
    {
        yield return $"Key opened at {opening.Mark.At:yyyy-MM-dd HH:mm} UTC, after all predictions were locked.";
        yield return opening.CommitmentHolds switch
        {
            true when study.Commitments.Count() > 1 => "The keys give the published commitments.",
            true => "The key gives the published commitment.",
            false => "A key does NOT give its published commitment.",
            null => "There was no commitment to check: the key is a paper key, typed in at the reveal, and nothing proves that it was not chosen afterwards.",
        };
        string marks = opening.MarksAgree ? "they agree with the key" : "they do NOT agree with the key, or were not read by two people";
        yield return $"Marks read on the tyres by {string.Join(" and ", opening.Readers)}: {marks}.";
    }

    private static string Published(Fitting fitting)
    {
        string commitment = fitting.Commitment is { } hash ? $"commitment {hash}" : "no commitment: a paper key";
        return $"Codes {string.Join(", ", fitting.Codes.Order(Comparer<SpecCode>.Create((a, b) => string.CompareOrdinal(a.Digits, b.Digits))))}, sealed {fitting.Mark.At:yyyy-MM-dd HH:mm} UTC; {commitment}.";
    }

    private static string MarksOf(OpenedKey key, SpecCode code)
    {
        string[] marks = [.. key.Marks.Where(m => m.Code == code).Select(m => m.Spec).Distinct()];
        return marks.Length == 0 ? "not read" : string.Join(" / ", marks);
    }
}
