using FieldSession.Comparing;
using FieldSession.Reporting;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Reporting;

/// <summary>
/// The three lines of the verdict and their sentence, cell by cell; the rules are our own (docs/report.md, "The verdict").
/// </summary>
public sealed class TheVerdictTableTests
{
    private const double MarginDb = 1.0;

    [Theory]
    [InlineData(true, false, MeterVerdict.Measured)]
    [InlineData(true, true, MeterVerdict.MeasuredButSmall)]
    [InlineData(false, true, MeterVerdict.SameWithin)]
    [InlineData(false, false, MeterVerdict.NotResolved)]
    public void The_meter_speaks_by_what_the_verdict_rests_on(bool showsDifference, bool showsEquivalence, MeterVerdict word) =>
        Assert.Equal(
            word,
            MeterWord.Of(Compared(0.4, 2.4, 0.6, 2.2) with { Conclusion = new Conclusion(showsDifference, showsEquivalence, 0.05) })
        );

    [Fact]
    public void Without_a_comparison_or_with_the_verdict_withheld_nothing_is_resolved()
    {
        Assert.Equal(MeterVerdict.NotResolved, MeterWord.Of(null));
        Assert.Equal(MeterVerdict.NotResolved, MeterWord.Of(Compared(1, 2, 1.1, 1.9) with { Conclusion = null }));
    }

    private const string Test = "Ro and Tam, 'which is louder', Mill lane, 40 trials";

    [Theory]
    [InlineData(
        MeterVerdict.Measured,
        EarVerdict.HeardBlind,
        $"The crew heard a difference blind in this test ({Test}), and the meter shows it louder."
    )]
    [InlineData(
        MeterVerdict.Measured,
        EarVerdict.NotHeard,
        $"The crew did not hear it in this test ({Test}), which would have found 75 % right with a chance of 90 %; the "
            + "meter shows it louder."
    )]
    [InlineData(MeterVerdict.Measured, EarVerdict.NotTestedEnough, "The meter shows it louder; whether it is heard was not tested enough.")]
    [InlineData(
        MeterVerdict.MeasuredButSmall,
        EarVerdict.HeardBlind,
        $"The crew heard a difference blind in this test ({Test}), and the meter shows it louder, by less than the margin that matters."
    )]
    [InlineData(
        MeterVerdict.MeasuredButSmall,
        EarVerdict.NotHeard,
        $"The crew did not hear it in this test ({Test}), which would have found 75 % right with a chance of 90 %; the "
            + "meter shows it louder, by less than the margin that matters."
    )]
    [InlineData(
        MeterVerdict.MeasuredButSmall,
        EarVerdict.NotTestedEnough,
        "The meter shows it louder, by less than the margin that matters; whether it is heard was not tested enough."
    )]
    [InlineData(
        MeterVerdict.SameWithin,
        EarVerdict.HeardBlind,
        $"The crew heard a difference blind in this test ({Test}), and the meter shows none of the size that matters: a "
            + "change of character that dB(A) misses; look at 200 and 250 Hz."
    )]
    [InlineData(
        MeterVerdict.SameWithin,
        EarVerdict.NotHeard,
        $"The crew could not tell them apart in this test ({Test}), which would have found 75 % right with a chance of 90 "
            + "%; the meter could have seen 0.9 dB."
    )]
    [InlineData(
        MeterVerdict.SameWithin,
        EarVerdict.NotTestedEnough,
        "The meter shows no difference of the size that matters, and could have seen 0.9 dB; whether the ear can was not tested enough."
    )]
    [InlineData(
        MeterVerdict.NotResolved,
        EarVerdict.HeardBlind,
        $"The crew heard a difference blind in this test ({Test}), which the meter did not resolve: a change of character "
            + "that dB(A) misses, or too few runs; look at 200 and 250 Hz."
    )]
    [InlineData(MeterVerdict.NotResolved, EarVerdict.NotHeard, "This day cannot say.")]
    [InlineData(MeterVerdict.NotResolved, EarVerdict.NotTestedEnough, "This day cannot say.")]
    public void Every_pair_of_words_has_its_sentence(MeterVerdict meter, EarVerdict ear, string sentence) =>
        Assert.Equal(sentence, CombinedSentence.Of(meter, AChoice.With(ear), Compared(0.4, 2.4, 0.6, 2.2)));

    // 96 for 1.4 dB, 0.4 to 2.4 dB quieter; life 48 000 km; worth 120 to the owner, or 60
    [Theory]
    [InlineData(
        MeterVerdict.Measured,
        EarVerdict.HeardBlind,
        "WORTH IT by",
        "NOT WORTH IT at",
        "NOT WORTH IT for the sound inside, which is louder"
    )]
    [InlineData(
        MeterVerdict.Measured,
        EarVerdict.NotHeard,
        "WORTH IT FOR SOME, with other ears",
        "NOT WORTH IT at",
        "NOT WORTH IT for the sound inside, which is louder"
    )]
    [InlineData(
        MeterVerdict.Measured,
        EarVerdict.NotTestedEnough,
        "CAN'T SAY without the ear",
        "CAN'T SAY without the ear",
        "CAN'T SAY without the ear"
    )]
    [InlineData(
        MeterVerdict.MeasuredButSmall,
        EarVerdict.HeardBlind,
        "WORTH IT FOR SOME, who mind",
        "NOT WORTH IT at",
        "NOT WORTH IT for the sound inside, which is louder"
    )]
    [InlineData(
        MeterVerdict.MeasuredButSmall,
        EarVerdict.NotHeard,
        "NOT WORTH IT for",
        "NOT WORTH IT for",
        "NOT WORTH IT for the sound inside, which differs by less"
    )]
    [InlineData(
        MeterVerdict.MeasuredButSmall,
        EarVerdict.NotTestedEnough,
        "CAN'T SAY without the ear",
        "CAN'T SAY without the ear",
        "CAN'T SAY without the ear"
    )]
    [InlineData(
        MeterVerdict.SameWithin,
        EarVerdict.HeardBlind,
        "CAN'T SAY, because what was heard",
        "CAN'T SAY, because what was heard",
        "CAN'T SAY, because what was heard"
    )]
    [InlineData(
        MeterVerdict.SameWithin,
        EarVerdict.NotHeard,
        "NOT WORTH IT for",
        "NOT WORTH IT for",
        "NOT WORTH IT for the sound inside, which differs by less"
    )]
    [InlineData(
        MeterVerdict.SameWithin,
        EarVerdict.NotTestedEnough,
        "CAN'T SAY without the ear",
        "CAN'T SAY without the ear",
        "CAN'T SAY without the ear"
    )]
    [InlineData(
        MeterVerdict.NotResolved,
        EarVerdict.HeardBlind,
        "CAN'T SAY, because the meter",
        "CAN'T SAY, because the meter",
        "CAN'T SAY, because the meter"
    )]
    [InlineData(
        MeterVerdict.NotResolved,
        EarVerdict.NotHeard,
        "CAN'T SAY, because the meter",
        "CAN'T SAY, because the meter",
        "CAN'T SAY, because the meter"
    )]
    [InlineData(
        MeterVerdict.NotResolved,
        EarVerdict.NotTestedEnough,
        "CAN'T SAY without the ear",
        "CAN'T SAY without the ear",
        "CAN'T SAY without the ear"
    )]
    public void Worth_follows_from_the_other_two_the_way_it_differs_and_the_owners_prices(
        MeterVerdict meter,
        EarVerdict ear,
        string worthIt,
        string tooDear,
        string louder
    )
    {
        Assert.StartsWith(
            worthIt,
            WorthWord.Of(Quieter, meter, ear, Priced with { PriceWorth = 120 }, isAgainstControl: true),
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            tooDear,
            WorthWord.Of(Quieter, meter, ear, Priced with { PriceWorth = 60 }, isAgainstControl: true),
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            louder,
            WorthWord.Of(Louder, meter, ear, Priced with { PriceWorth = 120 }, isAgainstControl: true),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(MeterVerdict.Measured, "69 crowns (40 to 240)")]
    [InlineData(MeterVerdict.MeasuredButSmall, "69 crowns (40 to 240)")]
    [InlineData(MeterVerdict.SameWithin, "not defined")]
    [InlineData(MeterVerdict.NotResolved, "not defined")]
    public void A_price_per_dB_comes_only_from_a_measured_difference(MeterVerdict meter, string perDb) =>
        Assert.Contains(
            "96 crowns more per set, 2 crowns per 1000 km; per dB " + perDb,
            WorthWord.Of(Quieter, meter, EarVerdict.HeardBlind, Priced, isAgainstControl: true),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(MeterVerdict.Measured)]
    [InlineData(MeterVerdict.MeasuredButSmall)]
    public void Where_the_dearer_spec_is_the_louder_one_no_price_per_dB_is_given(MeterVerdict meter) =>
        Assert.EndsWith(
            "per dB not defined, because the dearer spec is the louder one.",
            WorthWord.Of(Louder, meter, EarVerdict.HeardBlind, Priced, isAgainstControl: true),
            StringComparison.Ordinal
        );

    [Fact]
    public void Without_the_owners_price_or_the_control_a_quieter_set_is_for_the_owner_to_weigh()
    {
        Assert.StartsWith(
            "CAN'T SAY for the owner, who wrote down no price",
            WorthWord.Of(Quieter, MeterVerdict.Measured, EarVerdict.HeardBlind, Priced, isAgainstControl: true),
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "CAN'T SAY while it is not known which code is the control",
            WorthWord.Of(Quieter, MeterVerdict.Measured, EarVerdict.HeardBlind, Priced with { PriceWorth = 120 }, isAgainstControl: false),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(EarVerdict.HeardBlind)]
    [InlineData(EarVerdict.NotHeard)]
    [InlineData(EarVerdict.NotTestedEnough)]
    public void Without_a_price_worth_has_nothing_to_say(EarVerdict ear) =>
        Assert.All(
            Enum.GetValues<MeterVerdict>(),
            meter =>
                Assert.Equal(
                    "CAN'T SAY: the price was not written down before the reveal.",
                    WorthWord.Of(Louder, meter, ear, ADay.ShortPlan, isAgainstControl: true)
                )
        );

    [Fact]
    public void What_costs_nothing_more_is_not_called_not_worth_it() =>
        Assert.StartsWith(
            "CAN'T SAY",
            WorthWord.Of(
                Compared(-0.6, 0.8, -0.5, 0.7),
                MeterVerdict.SameWithin,
                EarVerdict.NotHeard,
                Priced with
                {
                    PricePremium = 0,
                },
                isAgainstControl: true
            ),
            StringComparison.Ordinal
        );

    [Fact]
    public void No_word_of_the_verdict_calls_them_the_same_because_nothing_was_shown()
    {
        string open = MeterWord.InWords(Compared(-3, 3, -2.5, 2.5), MarginDb);
        Assert.StartsWith("NOT RESOLVED", open, StringComparison.Ordinal);
        Assert.DoesNotContain("same", open, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("no difference", open, StringComparison.OrdinalIgnoreCase);
    }

    private static ClassComparison Louder => Compared(0.4, 2.4, 0.6, 2.2);

    private static ClassComparison Quieter => Compared(-2.4, -0.4, -2.2, -0.6);

    private static Plan Priced => ADay.ShortPlan with { PricePremium = 96, Currency = "crowns", SetLifeKm = 48_000 };

    private static ClassComparison Compared(double lo95, double hi95, double lo90, double hi90) =>
        new()
        {
            Class = MeasureClass.Steady,
            RunsCounted = 6,
            SegmentsCompared = 9,
            Verdict = "",
            Conclusion = new Conclusion(false, false, 0.05),
            CouldShow = new CouldShow(0.9, 0.5, 2.5, 4),
            Overall = new Estimate((lo95 + hi95) / 2, 0.3, 4, lo95, hi95, null, lo90, hi90),
        };
}
