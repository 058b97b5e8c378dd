using FieldSession.Comparing;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>What was checked with which values, what warned, what was overridden and why, and which limits the plan had changed.</summary>
public static class ChecksSection
{
    /// <summary>The section.</summary>
    public static ReportSection Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        Limits limits = study.Plan?.Limits ?? new Limits();
        string[] warnings = [.. BracketCheck.Of(study).SelectMany(check => check.Warnings(limits)), .. SpoiltBalance.Warnings(study)];
        string[] rest =
        [
            .. warnings,
            .. study.Overrides.Select(one => ReportingWords.OverriddenBeforeRun(one)),
            .. study.Reruns.Select(one => ReportingWords.BracketDrivenAgain(one, string.Join(", ", one.Runs))),
            .. ConflictWords.Of(study),
            .. Archive(study),
            .. Changed(limits),
        ];
        ReportBlock checks = study.Checks.Count == 0
            ? new Paragraph(ReportingWords.NoCheckWithTypedValues)
            : new ReportTable(["When, UTC", "Before run", "Check", "Answer", "Found"], [.. study.Checks.Select(Row)]);
        return new ReportSection(ReportPart.Checks, "Checks", [checks, new Points(rest.Length == 0 ? [ReportingWords.NothingWarnedOrOverridden] : rest)]);
    }

    private static IEnumerable<string> Archive(Study study) => study.Archive is { } archive
        ? [ReportingWords.RepeatabilityTakenFromArchive(archive, archive.Days == 1 ? "" : "s", string.Join(", ", archive.Lines.Select(line => line.Day).Distinct()))]
        : [];

    private static IReadOnlyList<string> Row(CheckRecord check) =>
        [$"{check.Mark.At:yyyy-MM-dd} {check.Mark.At:t}", $"{check.Run + 1}", check.Name, Word(check.Answer), check.Words];

    private static string Word(CheckAnswer answer) => answer switch
    {
        CheckAnswer.Blocks => ReportingWords.SpeaksAgainstRun,
        CheckAnswer.Warns => "look out",
        _ => "recorded",
    };

    private static IEnumerable<string> Changed(Limits limits) =>
        from held in AllLimits.InOrder
        where held.IsChangedIn(limits) || limits.Reasons?.ContainsKey(held.Limit.Name) == true
        select ReportingWords.LimitWasChanged(held.Limit.Name, held.Limit.Words, held.Of(limits), held.Limit.Default, Reason(limits, held.Limit.Name));

    private static string Reason(Limits limits, string name) => limits.Reasons?.GetValueOrDefault(name) ?? ReportingWords.NoReasonWasWrittenDown;
}
