using FieldSession.Comparing;
using FieldSession.Measures;
using FieldSession.Reviewing;
using FieldSession.State;

namespace FieldSession.Reporting;

/// <summary>A code against the reference, with what the meter and the ear found.</summary>
/// <param name="Asked">How the code is called.</param>
/// <param name="Against">How the reference is called.</param>
/// <param name="Plan">The plan, for the measure and the margin.</param>
/// <param name="Main">The comparison that the plan's main question is answered on; null: nothing can be compared.</param>
/// <param name="Choice">The forced choices that carry the ear's word; null: none were planned for the pair.</param>
public sealed record AskedPair(string Asked, string Against, Plan Plan, ClassComparison? Main, ChoiceFinding? Choice);

/// <summary>
/// The answer as one would tell it to whoever owns the car. Rules (docs/report.md, "The answer card"): it says a difference only where the
/// meter's word does, and its 'give or take' is half of the interval that agrees with that word.
/// </summary>
public static class PlainSentence
{
    private const int LeastDecimals = 1;

    /// <summary>What the meter found.</summary>
    /// <param name="pair">What was asked and found.</param>
    /// <param name="when">"On this day" or "Over these 3 days".</param>
    public static string OfMeter(AskedPair pair, string when)
    {
        ArgumentNullException.ThrowIfNull(pair);
        return pair.Main?.Overall is { } overall
            ? OfMeter(pair, pair.Main, overall, when)
            : AnswerWords.NothingCompared(when, pair.Asked, pair.Against);
    }

    /// <summary>What the ear found.</summary>
    public static string OfEar(AskedPair pair)
    {
        ArgumentNullException.ThrowIfNull(pair);
        return OfEar(pair.Choice);
    }

    private static string OfMeter(AskedPair pair, ClassComparison main, Estimate overall, string when)
    {
        string margin = Figures.MarginDb(pair.Plan.MainMarginDb);
        string found = Found(pair, overall, main.Basis);
        return MeterWord.Of(main) switch
        {
            MeterVerdict.Measured => AnswerWords.Found(when, found) + AnswerWords.MeterShowsIt,
            MeterVerdict.MeasuredButSmall => AnswerWords.Found(when, found) + AnswerWords.MeterShowsItSmall(margin),
            MeterVerdict.SameWithin => AnswerWords.SameWithin(when, pair, margin, AnswerWords.Where(pair.Plan)),
            _ when main.Conclusion is null => AnswerWords.Found(when, found) + AnswerWords.NoVerdict(main.Verdict),
            _ => AnswerWords.Found(when, found) + AnswerWords.NotToldFromNothing,
        };
    }

    // the half agrees with the word: where no difference is shown it is no smaller than the difference
    private static string Found(AskedPair pair, Estimate overall, WordBasis? basis)
    {
        double db = Math.Abs(overall.DifferenceDb);
        double? half = basis is { } known ? (known.HighDb - known.LowDb) / 2 : (overall.Hi95Db - overall.Lo95Db) / 2;
        double? width = overall.HasNoUsableInterval ? null : half;
        int decimals = width is { } wide ? EnoughDigits.ToTellApart(LeastDecimals, db, wide) : LeastDecimals;
        bool isNothing = db < Math.Pow(10, -decimals) / 2;
        string difference = isNothing
            ? AnswerWords.AsLoudAs(pair)
            : AnswerWords.Differs(
                pair,
                EnoughDigits.Plain(db, decimals),
                overall.DifferenceDb > 0 ? AnswerWords.Louder : AnswerWords.Quieter
            );
        return width is { } known95
            ? AnswerWords.GiveOrTake(difference, AnswerWords.Where(pair.Plan), EnoughDigits.Plain(known95, decimals))
            : AnswerWords.ErrorNotKnown(difference, AnswerWords.Where(pair.Plan));
    }

    private static string OfEar(ChoiceFinding? choice) =>
        choice?.Verdict switch
        {
            null => AnswerWords.EarNotAsked,
            EarVerdict.HeardBlind => AnswerWords.EarHeard(choice),
            EarVerdict.NotHeard => AnswerWords.EarDidNotHear(choice),
            _ => AnswerWords.EarNotTestedEnough,
        };
}
