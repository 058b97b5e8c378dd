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
            .. study.Overrides.Select(one => $"Overridden before run {one.BeforeRun}: {one.Check}: {one.Reason}"),
            .. study.Reruns.Select(one => $"Bracket {one.Bracket} (runs {string.Join(", ", one.Runs)}) was driven again from run {one.FirstRun} on: {one.Reason}"),
            .. ConflictWords.Of(study),
            .. Archive(study),
            .. Changed(limits),
        ];
        ReportBlock checks = study.Checks.Count == 0
            ? new Paragraph("No check was made with typed values beside calibration and weather.")
            : new ReportTable(["When, UTC", "Before run", "Check", "Answer", "Found"], [.. study.Checks.Select(Row)]);
        return new ReportSection("Checks", [checks, new Points(rest.Length == 0 ? ["Nothing warned, nothing was overridden, no limit was changed."] : rest)]);
    }

    private static IEnumerable<string> Archive(Study study) => study.Archive is { } archive
        ? [$"Before run 1 the plan took the repeatability of {archive.Days} earlier day{(archive.Days == 1 ? "" : "s")} from its archive: {string.Join(", ", archive.Lines.Select(line => line.Day).Distinct())}."]
        : [];

    private static IReadOnlyList<string> Row(CheckRecord check) =>
        [$"{check.Mark.At:yyyy-MM-dd HH:mm}", $"{check.Run + 1}", check.Name, Word(check.Answer), check.Words];

    private static string Word(CheckAnswer answer) => answer switch
    {
        CheckAnswer.Blocks => "stands against a run",
        CheckAnswer.Warns => "look out",
        _ => "recorded",
    };

    private static IEnumerable<string> Changed(Limits limits) =>
        from held in AllLimits.InOrder
        where held.IsChangedIn(limits) || limits.Reasons?.ContainsKey(held.Limit.Name) == true
        select $"Limit {held.Limit.Name} ({held.Limit.Words}) was set to {held.Of(limits):0.###} instead of {held.Limit.Default:0.###}: {Reason(limits, held.Limit.Name)}";

    private static string Reason(Limits limits, string name) => limits.Reasons?.GetValueOrDefault(name) ?? "no reason was written down";
}
