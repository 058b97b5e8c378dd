using FieldSession.Comparing;
using FieldSession.Measures;
using FieldSession.State;
using FieldSession.Statistics;

namespace FieldSession.Reviewing;

/// <summary>A set of forced choices in words.</summary>
public static class ChoiceWords
{
    /// <summary>"HEARD BLIND", "NOT HEARD" or "NOT TESTED ENOUGH".</summary>
    public static string Word(EarVerdict verdict) =>
        verdict switch
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

    /// <summary>"'which is louder', Sallowheath lane, 862 or 417, two-sided", and that it was played from recordings.</summary>
    public static string Question(ChoiceFinding choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        ChoiceTerms terms = choice.Terms;
        return $"'{terms.Question}'{Where(choice)}, {terms.First} or {terms.Second}, {terms.Side}";
    }

    /// <summary>
    /// "862 chosen 9 of 10 unseen, p 0.021 (share 0.55 to 1.00)", what was chosen with the meter seen beside it, or that it is covered.
    /// </summary>
    public static string Counts(ChoiceFinding choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        if (choice.Made == 0)
        {
            return $"none of {choice.Planned} trials made";
        }

        if (choice.IsCovered)
        {
            return $"{choice.Made} of {choice.Planned} trials made, covered until the planned end";
        }

        string stopped = choice.IsComplete ? "" : $", stopped before the {choice.Planned} planned";
        string unseen = choice.Counts is { } counts ? Unseen(counts, choice) : ReviewingWords.NobodyChoseUnseen;
        return unseen
            + stopped
            + Apart(choice.MeterSeen, ReviewingWords.WithMeterSeen)
            + Apart(choice.OrderSeen, ReviewingWords.WithOrderSeen);
    }

    /// <summary>The count alone: "862 chosen 27 of 36 unseen".</summary>
    public static string Tally(ChoiceFinding choice, Func<string, string> name)
    {
        ArgumentNullException.ThrowIfNull(choice);
        return choice switch
        {
            { Made: 0 } or { IsCovered: true } => Counts(choice),
            { Counts: { } counts } => $"{Chosen(counts, name)} unseen, '{choice.Terms.Question}'",
            _ => ReviewingWords.NobodyChoseUnseen,
        };
    }

    private static string Unseen(ChoiceCounts counts, ChoiceFinding choice) =>
        $"{Chosen(counts)} unseen, {(choice.Terms.IsTwoSided ? "two-sided" : "one-sided")} p "
        + $"{Figures.Probability(counts.P)} ({Interval(counts, choice)})";

    private static string Apart(ChoiceCounts? counts, string how) => counts is null ? "" : $"; {how}, counted apart: {Chosen(counts)}";

    private static string Chosen(ChoiceCounts counts, Func<string, string>? name = null) =>
        $"{(counts.RightCode is { } code ? $"{name?.Invoke(code.Digits) ?? code.Digits} chosen" : "the odd one found")} "
        + $"{counts.Right} of {counts.Made}";

    /// <summary>Needed count and power.</summary>
    public static string WhatItCanShow(ChoiceFinding choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        ChoiceSize size = choice.Size;
        if (size.Trials == 0)
        {
            return ReviewingWords.OnlyUnseenCount;
        }

        string needed = size.FewestRight is { } fewest ? $"{fewest} of {size.Trials} needed at 5 %" : $"{size.Trials} can't reach 5 %";
        return $"{needed}, power {Share(size.PowerAt75)} at 75 % right and {Share(size.PowerAt90)} at 90 %";
    }

    /// <summary>A power to two places, more where it would be printed on the other side of the 80 % that 'not heard' asks for.</summary>
    public static string Share(double share) => EnoughDigits.Plain(share, EnoughDigits.For(2, [share], [ChoiceSize.EnoughPower]));

    /// <summary>Each person's own count, and how often the first place was chosen; empty while it is covered.</summary>
    public static string Persons(ChoiceFinding choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        return string.Join(
            "; ",
            new[]
            {
                Persons(choice.Counts, ""),
                Persons(choice.MeterSeen, $"{ReviewingWords.WithMeterSeen}: "),
                Persons(choice.OrderSeen, $"{ReviewingWords.WithOrderSeen}: "),
            }.Where(words => words.Length > 0)
        );
    }

    private static string Persons(ChoiceCounts? counts, string how) =>
        counts is null
            ? ""
            : $"{how}{string.Join(", ", counts.Persons.Select(p => $"{p.Person} {p.Right} of {p.Made}"))}; first place chosen "
                + $"{counts.FirstPlace} of {counts.Made}";

    /// <summary>Of whom, what and where it was tested: "Ro and Tam, 'which is louder', Sallowheath lane, 20 trials".</summary>
    public static string TestedOn(ChoiceFinding choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        string who = string.Join(" and ", choice.Counts?.Persons.Select(person => person.Person) ?? []);
        return $"{who}, '{choice.Terms.Question}'{Where(choice)}, {choice.Counts?.Made} trials";
    }

    /// <summary>What the set would have found: "would have found 75 % right with a chance of 90 %".</summary>
    public static string WouldHaveFound(ChoiceFinding choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        return $"would have found {100 * choice.Size.DetectShare:0} % right with a chance of {100 * choice.Size.PowerAtDetect:0} %";
    }

    private static string Where(ChoiceFinding choice) =>
        $"{(choice.Segment is null ? "" : $", {choice.Segment}")}{(choice.IsFromRecordings ? $", {ReviewingWords.FromRecordings}" : "")}";

    // one-sided tests agree with one-sided limits alone; a limit never lands on the chance that the word beside it is about
    private static string Interval(ChoiceCounts counts, ChoiceFinding choice)
    {
        string Limit(double share) => EnoughDigits.Plain(share, EnoughDigits.For(2, [share], [choice.Size.Chance]));
        return counts.IsOneSided
            ? ReviewingWords.ShareAtLeast(Limit(counts.LowShare))
            : ReviewingWords.ShareBetween(Limit(counts.LowShare), Limit(counts.HighShare));
    }

    private static string Why(ChoiceFinding choice) =>
        choice switch
        {
            { IsRepeat: true } or { Verdict: not EarVerdict.NotTestedEnough } => "",
            { IsComplete: false } => "; the set is not at its planned end",
            { Size.Trials: 0 } => "",
            _ => $"; too few trials to say that {choice.Size.DetectShare * 100:0} % right would have been found",
        };
}
