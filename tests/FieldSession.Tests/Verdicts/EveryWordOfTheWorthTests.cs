using FieldSession.Comparing;
using FieldSession.Reporting;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Verdicts;

/// <summary>
/// What may be said of the worth, and what must then be true of meter, ear and prices. Rules: docs/report.md, "The verdict".
/// </summary>
public sealed class EveryWordOfTheWorthTests
{
    private const string Price =
        @": -?\d+ crowns more per set, [\d.-]+ crowns per 1000 km(?:, up to \d+ crowns is what the owner would pay)?; per dB (?:not defined, because (?:no difference was measured|the dearer spec is the louder one)|-?\d+ crowns \(-?\d+ to -?\d+\))\.";

    /// <summary>What the worth rests on.</summary>
    private sealed record Weighed(
        MeterVerdict Meter,
        EarVerdict Ear,
        double? Asked,
        double? Worth,
        bool Quieter,
        bool AgainstControl,
        string Said
    )
    {
        public bool Measured => Meter is MeterVerdict.Measured or MeterVerdict.MeasuredButSmall;

        public bool Unheard => Ear == EarVerdict.NotHeard;

        public bool Heard => Ear == EarVerdict.HeardBlind;

        public bool Weighable => Measured && Ear != EarVerdict.NotTestedEnough && AgainstControl;

        public bool Affordable => Asked <= Worth;

        public bool PricePerDbIsDefined =>
            Said.Contains("no difference was measured", StringComparison.Ordinal) != Measured && DearerAndLouderIsSaid;

        // what costs more and is louder has no price per dB
        private bool DearerAndLouderIsSaid =>
            Said.Contains("the dearer spec is the louder one", StringComparison.Ordinal)
            == (Measured && AgainstControl && !Quieter && Asked > 0);
    }

    private static WordTable<Weighed> OfTheWorth =>
        new(
            new(@"CAN'T SAY: the price was not written down before the reveal\.", "no price", w => w.Asked is null),
            new(
                "NOT WORTH IT for the sound inside, which differs by less than the margin that matters and was not heard in this test"
                    + Price,
                "it costs more, lies within the margin, NOT HEARD",
                w =>
                    w
                        is {
                            Asked: > 0,
                            Meter: MeterVerdict.SameWithin or MeterVerdict.MeasuredButSmall,
                            Unheard: true,
                            PricePerDbIsDefined: true
                        }
            ),
            new(
                "CAN'T SAY without the ear" + Price,
                "no word of the ear",
                w => w is { Ear: EarVerdict.NotTestedEnough, PricePerDbIsDefined: true }
            ),
            new(
                "CAN'T SAY, because the meter did not resolve which is quieter" + Price,
                "NOT RESOLVED",
                w => w is { Meter: MeterVerdict.NotResolved, PricePerDbIsDefined: true }
            ),
            new(
                "CAN'T SAY, because what was heard is not a level: the owner weighs what the ratings say" + Price,
                "SAME WITHIN",
                w => w is { Meter: MeterVerdict.SameWithin, PricePerDbIsDefined: true }
            ),
            new(
                "CAN'T SAY while it is not known which code is the control" + Price,
                "measured, the control not known",
                w => w is { Measured: true, AgainstControl: false }
            ),
            new(
                "NOT WORTH IT for the sound inside, which is louder" + Price,
                "measured louder, and it costs more, so a dB has no price",
                w => w is { Weighable: true, Quieter: false, Asked: > 0, PricePerDbIsDefined: true }
            ),
            new(
                "CAN'T SAY for the owner: it costs nothing more and is louder inside" + Price,
                "measured louder, and it costs nothing more",
                w => w is { Weighable: true, Quieter: false, Asked: <= 0 }
            ),
            new(
                "CAN'T SAY for the owner, who wrote down no price that it would be worth" + Price,
                "no price of the owner's",
                w => w is { Weighable: true, Quieter: true, Worth: null }
            ),
            new(
                "NOT WORTH IT at this price, which is above what the owner said it would be worth" + Price,
                "dearer than that",
                w => w is { Weighable: true, Quieter: true, Affordable: false }
            ),
            new(
                "WORTH IT by what the owner said: quieter, and heard in this test" + Price,
                "MEASURED quieter, HEARD BLIND, affordable",
                w => w is { Weighable: true, Meter: MeterVerdict.Measured, Heard: true, Quieter: true, Affordable: true }
            ),
            new(
                "WORTH IT FOR SOME, who mind what they hear though it is less than the margin that matters" + Price,
                "BUT SMALL quieter, HEARD BLIND, affordable",
                w => w is { Weighable: true, Meter: MeterVerdict.MeasuredButSmall, Heard: true, Quieter: true, Affordable: true }
            ),
            new(
                "WORTH IT FOR SOME, with other ears: the meter shows it quieter, and these ears did not find it in this test" + Price,
                "MEASURED quieter, NOT HEARD, affordable",
                w => w is { Weighable: true, Unheard: true, Quieter: true, Affordable: true }
            )
        );

    [Fact]
    public void Every_word_of_the_worth_is_true_of_meter_ear_and_prices()
    {
        WordTable<Weighed> table = OfTheWorth;
        foreach (MeterVerdict meter in Enum.GetValues<MeterVerdict>())
        {
            foreach (EarVerdict ear in Enum.GetValues<EarVerdict>())
            {
                ReadAll(table, meter, ear);
            }
        }

        table.HasNoIdleLine();
    }

    private static void ReadAll(WordTable<Weighed> table, MeterVerdict meter, EarVerdict ear)
    {
        foreach (
            (double? asked, double? worth, bool quieter, bool againstControl) in from asked in new double?[] { null, 0, 96 }
            from worth in new double?[] { null, 60, 120 }
            from quieter in new[] { true, false }
            from againstControl in new[] { true, false }
            select (asked, worth, quieter, againstControl)
        )
        {
            Plan plan = ADay.ShortPlan with { PricePremium = asked, PriceWorth = worth, Currency = "crowns", SetLifeKm = 48_000 };
            string said = WorthWord.Of(Compared(quieter ? -1 : 1), meter, ear, plan, againstControl);
            table.Read(said, new Weighed(meter, ear, asked, worth, quieter, againstControl, said));
        }
    }

    private static ClassComparison Compared(int sign) =>
        new()
        {
            RunsCounted = 6,
            SegmentsCompared = 9,
            Verdict = "",
            Overall = new Estimate(1.4 * sign, 0.3, 4, Math.Min(0.4 * sign, 2.4 * sign), Math.Max(0.4 * sign, 2.4 * sign)),
        };
}
