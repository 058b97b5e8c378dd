using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Merging;

/// <summary>
/// A conflict between two laptops is settled, with a reason. Neither side is dropped: both stay in the journal and in the report, and a
/// later decision can be another one. It is to be made blind, so it is refused once the key is open.
/// </summary>
/// <param name="Kind">What kind of conflict it is.</param>
/// <param name="First">The line told first.</param>
/// <param name="Second">The other line.</param>
/// <param name="Counts">Which side counts.</param>
/// <param name="Reason">Why, in the crew's words.</param>
public sealed record ConflictSettled(ConflictKind Kind, LineName First, LineName Second, ConflictSide Counts, string Reason) : Entry
{
    /// <inheritdoc/>
    public override bool OutlivesFreeze => true;

    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study switch
        {
            { ReadOnlyBecause: { } because } => new Objection(because, JournalWords.UseNewerProgram),
            { Opening: not null } => new Objection(MergingWords.TooLateToSettleBlind, JournalWords.AddNoteInstead),
            { RunOn: { } run } => new Objection(JournalWords.RunIsOn(run), MergingWords.SettleAtNextStop),
            _ when !study.Conflicts.Exists(IsMeant) => new Objection(MergingWords.ThereIsNoSuchConflict, MergingWords.ReviewListsConflicts),
            _ when Counts == ConflictSide.Both && Kind is ConflictKind.SamePrediction or ConflictKind.SamePlanPart => new Objection(
                MergingWords.OneSideHasToCount,
                MergingWords.SettleOneSideForm
            ),
            _ => null,
        };
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        Settlement settlement = new(Counts, Reason, mark);
        int at = study.Conflicts.FindIndex(IsMeant);
        return study with
        {
            Conflicts =
                at >= 0
                    ? study.Conflicts.SetItem(at, study.Conflicts[at] with { Settlement = settlement })
                    : study.Conflicts.Add(Past(mark) with { Settlement = settlement }),
            Undoables = [],
        };
    }

    // A line that a decision leaves out as a whole is never told beside the other one, so only the decision knows that there were two.
    private Conflict Past(LineMark mark) =>
        new(
            Kind,
            MarkOf(First, mark),
            MarkOf(Second, mark),
            Kind switch
            {
                ConflictKind.SamePlanPart => MergingWords.SamePlanPartOnBoth,
                ConflictKind.SamePrediction => MergingWords.SamePredictionOnBoth,
                ConflictKind.SameShift => MergingWords.SameShiftOnBoth,
                _ => MergingWords.BothCantBeMeant,
            }
        );

    private static LineMark MarkOf(LineName name, LineMark decided) => new(name.Line, decided.At) { Strand = name.Strand };

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        int at = after.Conflicts.FindIndex(IsMeant);
        string what = at < 0 ? "a conflict" : $"conflict {at + 1} ({after.Conflicts[at].Words})";
        int open = after.Unsettled.Count();
        return new Echo(
            $"settled: {what}: {InWords(Counts)}, because {Reason}{(open == 0 ? "; none is left open" : $"; {open} still open")}"
        );
    }

    /// <summary>A decision in words.</summary>
    public static string InWords(ConflictSide side) =>
        side switch
        {
            ConflictSide.First => MergingWords.FirstSideCounts,
            ConflictSide.Second => MergingWords.SecondSideCounts,
            _ => "both count",
        };

    private bool IsMeant(Conflict conflict) => conflict.IsAbout(Kind, First, Second);
}

/// <summary>Reads <c>settle 1 first because the other laptop was a try</c>: which side of a conflict counts, and why.</summary>
public static class SettleText
{
    private const string Form = MergingWords.SettleForm;

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !Typed.Is(words[0], "settle"))
        {
            return null;
        }

        return
            words is [_, var typed, var which, var because, _, ..]
            && Typed.Count(typed) is { } number
            && SideIn(which) is { } side
            && Typed.Is(because, "because")
            ? Settled(study, number, side, string.Join(' ', words.Skip(4)))
            : Parsed.No(MergingWords.DecisionNamesConflictSideReason, Form);
    }

    private static Parsed Settled(Study study, int number, ConflictSide side, string reason)
    {
        if (number > study.Conflicts.Count)
        {
            return Parsed.No(
                study.Conflicts.IsEmpty
                    ? MergingWords.NoLaptopsAreInConflict
                    : MergingWords.ThereIsNoConflict(number, study.Conflicts.Count),
                Form
            );
        }

        Conflict conflict = study.Conflicts[number - 1];
        return Parsed.As(new ConflictSettled(conflict.Kind, conflict.First.Name, conflict.Second.Name, side, reason));
    }

    private static ConflictSide? SideIn(string word) =>
        word.ToUpperInvariant() switch
        {
            "FIRST" or "1" => ConflictSide.First,
            "SECOND" or "2" => ConflictSide.Second,
            "BOTH" => ConflictSide.Both,
            _ => null,
        };
}
