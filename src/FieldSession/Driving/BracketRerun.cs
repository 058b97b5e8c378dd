using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>
/// A whole bracket is driven again, next, for a reason that is written down. Never a single run or reading: whoever repeats
/// only what looks odd makes the day look as he expects it. Both drives are kept; which counts, the plan said beforehand.
/// </summary>
/// <param name="Bracket">Number of the bracket among those driven, from 1.</param>
/// <param name="Reason">Why, in the crew's words.</param>
public sealed record BracketRerun(int Bracket, string Reason) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) =>
        StopGate.ObjectionIn(study) ?? ObjectionToSharing(study) ?? ObjectionToBracket(study);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        // what would be driven next is told by one laptop's order alone; with several, both drives count
        if (study.IsShared || Brackets.Of(study).ElementAtOrDefault(Bracket - 1) is not { } bracket)
        {
            return study;
        }

        int driven = study.NextTurn();
        Rerun rerun = new(Bracket, [.. bracket.Runs.Select(run => run.Number)], study.Runs.Count + 1, Reason, mark) { FirstTurn = driven };
        int[] steps = [.. study.Steps ?? [.. Enumerable.Range(0, study.Plan!.Order.Count)]];
        int[] again = [.. bracket.Runs.Select(run => steps[run.Turn])];
        return (study with { Reruns = study.Reruns.Add(rerun), Steps = [.. steps[..driven], .. again, .. steps[driven..]] }).Undoably(
            study,
            mark,
            $"rerun bracket {Bracket}"
        );
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        if (after.Reruns.IsEmpty || after.Reruns[^1].Bracket != Bracket)
        {
            return new Echo(DrivingWords.SharedBracketIsDrivenAgain(Bracket, Reason));
        }

        Rerun rerun = after.Reruns[^1];
        return new Echo(
            DrivingWords.BracketIsDrivenAgain(Bracket, string.Join(", ", rerun.Runs), rerun, Reason, Words(after.Plan?.RerunRule))
        );
    }

    /// <summary>What the rule says, in words.</summary>
    public static string Words(RerunRule? rule) =>
        rule switch
        {
            RerunRule.First => DrivingWords.FirstDriveCounts,
            RerunRule.Both => "both count",
            _ => "the re-run counts",
        };

    private static Objection? ObjectionToSharing(Study study) =>
        study.IsShared ? new Objection(DrivingWords.LaptopsShareNextRuns, DrivingWords.DriveRunsAgainByHand) : null;

    private Objection? ObjectionToBracket(Study study)
    {
        const string Form = DrivingWords.RerunForm;
        IReadOnlyList<Bracket> brackets = Brackets.Of(study);
        return study switch
        {
            _ when Bracket > brackets.Count => new Objection(
                brackets.Count == 0 ? DrivingWords.NoBracketIsDrivenYet : DrivingWords.ThereIsNoBracket(Bracket, brackets.Count),
                Form
            ),
            _ when brackets[Bracket - 1].Closing.Turn >= (study.Steps?.Count ?? study.Plan!.Order.Count) => new Objection(
                DrivingWords.BracketIsBeyondOrder(Bracket),
                DrivingWords.DriveBracketAgainByHand
            ),
            _ when Aborts.OfferedAgain(study) is { } aborted => new Objection(
                DrivingWords.RunIsAborted(aborted),
                DrivingWords.DriveItsPlaceFirst
            ),
            _ when study.Reruns.Any(rerun => !rerun.IsDriven(study)) => new Objection(
                DrivingWords.BracketIsBeingRerun,
                DrivingWords.FinishRerunFirst
            ),
            _ => null,
        };
    }
}

/// <summary>Reads <c>rerun bracket 2 WHY</c>.</summary>
public static class RerunText
{
    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text)
    {
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !Typed.Is(words[0], "rerun"))
        {
            return null;
        }

        bool isGood = words.Length >= 4 && Typed.Is(words[1], "bracket");
        return isGood && Typed.Count(words[2]) is { } bracket
            ? Parsed.As(new BracketRerun(bracket, string.Join(' ', words.Skip(3))))
            : Parsed.No(DrivingWords.OnlyWholeBracketIsRerun, DrivingWords.RerunForm);
    }
}
