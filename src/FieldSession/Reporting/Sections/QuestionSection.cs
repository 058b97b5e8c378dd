using FieldSession.Comparing;
using FieldSession.Revealing;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>What the day was to answer, as it was before the first run.</summary>
public static class QuestionSection
{
    /// <summary>The section.</summary>
    public static ReportSection Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.Plan is not { } plan)
        {
            return new ReportSection(ReportPart.Question, "The question", [new Paragraph(ReportingWords.ThereWasNoPlan)]);
        }

        string frozen = study.Runs.Count > 0 ? ReportingWords.FrozenBeforeFirstRun(study) : ReportingWords.NoRunYet;
        return new ReportSection(
            ReportPart.Question,
            "The question",
            [
                new Paragraph(plan.Question.Length > 0 ? plan.Question : ReportingWords.NoQuestionWasWrittenDown),
                new Points([
                    $"Plan: {frozen}.",
                    ReportingWords.MainMeasureOfPlan(plan),
                    ReportingWords.MarginsOfPlan(plan),
                    ReportingWords.OrderPlannedAndDriven(plan, string.Join(' ', study.Runs.Select(r => r.Code))),
                    $"Crew: {string.Join(", ", plan.Crew.Select(m => $"{m.Name} ({m.Seat})"))}. Custodian: "
                        + $"{plan.Custodian ?? "not named"}.",
                    $"Protocol: {plan.Protocol}.",
                    ReportingWords.TyresOfPlan(plan.TyreSize is { } size ? $"{size}, " : ReportingWords.SizeNotWrittenDown),
                    .. PlanDoubts.Of(plan).Select(doubt => ReportingWords.WeakInPlan(doubt)),
                    .. study.Amendments.Select(Amended),
                ]),
            ]
        );
    }

    private static string Amended(Amendment amendment)
    {
        string when = $"{amendment.Mark.At:yyyy-MM-dd} {amendment.Mark.At:t} UTC";
        string kind =
            amendment.AfterRun == 0 ? ReportingWords.ChangedBeforeFirstRun(when) : ReportingWords.AmendedAfterRun(amendment, when);
        return ReportingWords.AmendmentWithReason(kind, amendment);
    }
}

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
            .. study.Overrides.Select(o => ReportingWords.CheckWasOverridden(o)),
        ];
        if (study.Opening is not { } opening || key is null)
        {
            return new ReportSection(ReportPart.Codes, ReportingWords.CodesAndKey, [new Points([.. points, ReportingWords.KeyIsNotOpen])]);
        }

        points.AddRange(Opened(study, opening));
        points.AddRange(ReadAgain(opening, key));
        points.AddRange(key.NotesThatName(study).Select(n => ReportingWords.NoteNamesSpec(n)));
        ReportTable table = key.Key.Exists(k => k.Mark is not null)
            ? new(
                ["Code", ReportingWords.SpecByKey, ReportingWords.MarkInKey, ReportingWords.MarkReadOnTyres, "Control"],
                [
                    .. key.Key.Select(k =>
                        (IReadOnlyList<string>)[k.Code.Digits, k.Spec, k.UnderTape, MarksOf(key, k.Code), ControlWord(key, k.Code)]
                    ),
                ]
            )
            : new(
                ["Code", ReportingWords.SpecByKey, ReportingWords.MarkReadOnTyres, "Control"],
                [.. key.Key.Select(k => (IReadOnlyList<string>)[k.Code.Digits, k.Spec, MarksOf(key, k.Code), ControlWord(key, k.Code)])]
            );
        return new ReportSection(ReportPart.Codes, ReportingWords.CodesAndKey, [new Points(points), table]);
    }

    // After the reveal the keys tell which codes belong together.
    private static IEnumerable<string> OpenedRemarks(Study study) => BlindWords.Remarks(study).Take(1);

    private static IEnumerable<string> Opened(Study study, Opening opening)
    {
        yield return ReportingWords.KeyOpenedAt(opening);
        yield return opening.CommitmentHolds switch
        {
            true when study.Commitments.Count() > 1 => ReportingWords.KeysGivePublishedCommitments,
            true => ReportingWords.KeyGivesPublishedCommitment,
            false => ReportingWords.CommitmentDoesNotHold,
            null => ReportingWords.NoCommitmentToCheck,
        };
        string marks = opening.MarksAgree ? ReportingWords.MarksAgreeWithKey : string.Join("; ", WithheldWords.Of(opening.Marks, null));
        yield return ReportingWords.MarksReadOnTyresBy(string.Join(" and ", opening.Readers), marks);
    }

    private static string Published(Fitting fitting)
    {
        string commitment = fitting.Commitment is { } hash ? $"commitment {hash}" : ReportingWords.PaperKeyWithoutCommitment;
        return ReportingWords.CodesSealed(
            string.Join(", ", fitting.Codes.Order(Comparer<SpecCode>.Create((a, b) => string.CompareOrdinal(a.Digits, b.Digits)))),
            fitting,
            commitment
        );
    }

    private static IEnumerable<string> ReadAgain(Opening opening, OpenedKey key)
    {
        if (!opening.ReadAgain.IsEmpty)
        {
            yield return ReportingWords.MarksWereReadAgain(
                string.Join(", ", opening.ReadAgain.Select(mark => $"{mark.At:yyyy-MM-dd} {mark.At:t}"))
            );
        }

        foreach (SpecCode code in key.DrivenKey.Select(line => line.Code).Where(code => key.EarlierMarkOf(code).Length > 0))
        {
            yield return ReportingWords.EarlierMark(code, key.EarlierMarkOf(code), key.MarkOf(code));
        }
    }

    private static string ControlWord(OpenedKey key, SpecCode code) => key.IsControl(code) == true ? "control" : "";

    private static string MarksOf(OpenedKey key, SpecCode code) => key.MarkOf(code) is { Length: > 0 } marks ? marks : "not read";
}
