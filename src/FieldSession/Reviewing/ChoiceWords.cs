using System.Globalization;
using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Reviewing;

/// <summary>A set of forced choices in words.</summary>
public static class ChoiceWords
{
    /// <summary>"HEARD BLIND", "NOT HEARD" or "NOT TESTED ENOUGH".</summary>
    public static string Word(EarVerdict verdict) => verdict switch
    {
        EarVerdict.HeardBlind => "HEARD BLIND",
        EarVerdict.NotHeard => "NOT HEARD",
        _ => "NOT TESTED ENOUGH",
    };

    /// <summary>The word of a set; a further set on a pair carries none.</summary>
    public static string Word(ChoiceFinding choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        return choice.IsRepeat ? "explored, this pair was asked before" : Word(choice.Verdict);
    }

    /// <summary>The word with what it rests on.</summary>
    public static string Sentence(ChoiceFinding choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        return $"{Word(choice)}: {Question(choice)}: {Counts(choice)}; {WhatItCanShow(choice)}{Why(choice)}";
    }

    /// <summary>"'which is louder', Sallowheath lane, 862 or 417, two-sided".</summary>
    public static string Question(ChoiceFinding choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        ChoiceTerms terms = choice.Terms;
        string where = choice.Segment is null ? "" : $", {choice.Segment}";
        return $"'{terms.Question}'{where}, {terms.First} or {terms.Second}, {terms.Side}";
    }

    /// <summary>"862 chosen 9 of 10, p 0.021 (95 % of 0.55 to 1.00)", or that it is covered.</summary>
    public static string Counts(ChoiceFinding choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        if (choice.Counts is not { } counts)
        {
            return choice.Made == 0 ? $"none of {choice.Planned} trials made" : $"{choice.Made} of {choice.Planned} trials made, covered until the planned end";
        }

        string what = counts.RightCode is { } code ? $"{code} chosen" : "the odd one found";
        string stopped = choice.IsComplete ? "" : $", stopped before the {choice.Planned} planned";
        return $"{what} {counts.Right} of {counts.Made}{stopped}, {(choice.Terms is { Kind: ChoiceKind.Paired, Expected: null } ? "two-sided" : "one-sided")} p {Figures.Probability(counts.P)}"
            + $" (share {Share(counts.LowShare)} to {Share(counts.HighShare)})";
    }

    /// <summary>Needed count and power.</summary>
    public static string WhatItCanShow(ChoiceFinding choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        ChoiceSize size = choice.Size;
        string needed = size.FewestRight is { } fewest ? $"{fewest} of {size.Trials} needed at 5 %" : $"{size.Trials} can't reach 5 %";
        return $"{needed}, power {Share(size.PowerAt75)} at 75 % right and {Share(size.PowerAt90)} at 90 %";
    }

    /// <summary>A share or a power to two places.</summary>
    public static string Share(double share) => share.ToString("0.00", CultureInfo.CurrentCulture);

    /// <summary>Each person's own count, and how often the first place was chosen; empty while it is covered.</summary>
    public static string Persons(ChoiceFinding choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        return choice.Counts is { } counts
            ? $"{string.Join(", ", counts.Persons.Select(p => $"{p.Person} {p.Right} of {p.Made}"))}; first place chosen {counts.FirstPlace} of {counts.Made}"
            : "";
    }

    private static string Why(ChoiceFinding choice) => choice switch
    {
        { IsRepeat: true } or { Verdict: not EarVerdict.NotTestedEnough } => "",
        { IsComplete: false } => "; the set is not at its planned end",
        _ => $"; too few trials to say that {choice.Size.DetectShare * 100:0} % right would have been found",
    };
}
