using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Planning;

/// <summary>
/// A part of the plan is changed after it was written down. Before run 1 that is a change of plan; afterwards it is an
/// amendment that the report shows beside what was planned. Once a prediction is locked the plan is fixed.
/// </summary>
/// <param name="What">The part, a word of <see cref="PlanParts"/>.</param>
/// <param name="From">What it was.</param>
/// <param name="To">What it becomes, as typed.</param>
/// <param name="Reason">Why, in the crew's words.</param>
public sealed record PlanAmended(string What, string From, string To, string Reason) : Entry
{
    /// <inheritdoc/>
    public override bool MayBeOnPaper => false;

    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (Gate.WhileDataAreOpen(study) is { } shut)
        {
            return shut;
        }

        return study.RunOn is { } run
            ? new Objection(JournalWords.RunIsOn(run), PlanningWords.AmendPlanAtNextStop)
            : PlanParts.Change(study.Plan!, What, To, study.Runs.Count > 0).Objection;
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.Plan is not { } plan || PlanParts.Change(plan, What, To, isAppendOnly: false).Plan is not { } changed)
        {
            return study;
        }

        Amendment amendment = new(What, From, To, Reason, study.Runs.Count, study.OrderDriven, study.CanBeCompared, mark);
        return study with
        {
            Plan = changed,
            FrozenPlan = study.FrozenPlan ?? (study.CanBeCompared ? plan : null),
            Amendments = study.Amendments.Add(amendment),
            Undoables = [],
        };
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(before);
        string kind = before.Runs.Count == 0 ? PlanningWords.PlanChangedBeforeFirstRun : PlanningWords.PlanAmendedAfterRun(before);
        return new Echo(PlanningWords.AmendmentIsInReport(kind, What, From, To, Reason));
    }
}

/// <summary>Reads <c>amend margin_db=1.5 because the owner asks for less</c>.</summary>
public static class AmendText
{
    private const string Form = PlanningWords.AmendmentForm;
    private const string Because = " because ";

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Study study)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(study);
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !Typed.Is(words[0], "amend"))
        {
            return null;
        }

        string said = string.Join(' ', words.Skip(1));
        int equals = said.IndexOf('=', StringComparison.Ordinal);
        // the last one: a question may hold the word too
        int because = said.LastIndexOf(Because, StringComparison.OrdinalIgnoreCase);
        if (equals <= 0 || because <= equals)
        {
            return Parsed.No(PlanningWords.AmendmentNamesPartValueReason, Form);
        }

        string what = said[..equals].Trim().ToLowerInvariant();
        string to = said[(equals + 1)..because].Trim();
        string reason = said[(because + Because.Length)..].Trim();
        return study.Plan is { } plan && PlanParts.Now(plan, what) is null
            ? Parsed.No(PlanningWords.PartCantBeAmended(what), PlanningWords.AmendablePartsAre(string.Join(", ", PlanParts.Words)))
            : Parsed.As(new PlanAmended(what, study.Plan is { } known ? PlanParts.Now(known, what) ?? "" : "", to, reason));
    }
}
