using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Planning;

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
