using FieldSession.Comparing;
using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.EnergyDriving;

public sealed class EnergyDayTests
{
    private const string First = "leg day=1 car=X code=417 km=212.4 kwh=38.0 t0=6 t1=8 wind=2 kmh=96 at=09:10";

    private static ADay ADay => new();

    private static ADay Imperial => new(Making.ADay.ShortPlan with { Units = UnitSystem.Imperial });

    [Fact]
    public void A_leg_is_stored_with_all_that_was_typed()
    {
        ADay day = ADay.Typed(First + " driver=Ro min=135");
        LegFigures leg = Assert.Single(day.Study.Legs).Figures;
        Assert.Equal((1, "X", "417", "Ro"), (leg.Day, leg.Car, leg.Code.Digits, leg.Driver));
        Assert.Equal(212.4, leg.Distance.Kilometres, 1e-9);
        Assert.Equal(new Energy(38.0, EnergyUnit.KilowattHour), leg.Energy);
        Assert.Equal((6.0, 8.0, 7.0), (leg.AirAtStart!.Value.Celsius, leg.AirAtEnd!.Value.Celsius, leg.AirCelsius!.Value));
        Assert.Equal((2.0, 96.0), (leg.Wind!.Value.MetresPerSecond, leg.MeanSpeed!.Value.Kmh));
        Assert.Equal((new TimeOnly(9, 10), 135.0), (leg.At!.Value, leg.Minutes!.Value));
        Assert.Equal(First + " driver=Ro min=135", leg.Typed);
        Assert.Equal(100 * 38 / 212.4, leg.Consumption.PerHundredKm, 1e-12);
    }

    [Fact]
    public void A_driver_and_a_car_may_have_names_of_several_words()
    {
        Plan plan = Making.ADay.ShortPlan with
        {
            Crew = [new CrewMember("John Paul", CrewMember.DriverSeat)],
            Cars = ["grey two", "grey one"],
        };
        ADay day = new ADay(plan).Typed("leg day=1 code=417 km=212 kwh=38 driver=John Paul car=grey two t lorry");
        EnergyLeg leg = Assert.Single(day.Study.Legs);
        Assert.Equal(("John Paul", "grey two", "lorry"), (leg.Figures.Driver, leg.Figures.Car, leg.Spoilt?.Words));
    }

    [Fact]
    public void The_journal_gives_back_the_same_leg()
    {
        ADay day = ADay.Typed(First, "leg day=1 car=Y code=862 km=212.4 soc=80-31.5 usable=75 w rain at the end", "leg 1 t queue");
        Assert.Equal(day.Study.Legs, Logbook.Fold(day.Journal.Lines).Legs);
    }

    [Fact]
    public void A_plan_that_says_nothing_of_energy_days_has_their_defaults()
    {
        Plan plan = ((FieldSession.Planning.PlanMade)EntryKinds.EntryIn(ADay.Journal.Lines[0])).Plan;
        Assert.Null(plan.EnergyTold);
        Assert.Equal(2, plan.Energy.MarginPercent);
        Assert.Empty(plan.Energy.Days);
    }

    [Fact]
    public void The_answer_says_the_consumption_in_the_crews_unit()
    {
        Assert.Equal("leg 1, day 1, X on 417: 212.4 km, 38 kWh, 17.89 kWh/100 km", ADay.Answer(First).Words);
        Assert.Equal(
            "leg 1, day 1, X on 417: 132 mi, 38.6 kWh, 3.420 mi/kWh",
            Imperial.Answer("leg day=1 car=X code=417 mi=132 kwh=38.6 t0=58 wind=4").Words
        );
        Assert.Equal("leg 1, day 1, X on 417: 212 km, 13.2 l, 6.23 l/100 km", ADay.Answer("leg day=1 car=X code=417 km=212 l=13.2").Words);
        Assert.Equal(
            "leg 1, day 1, X on 417: 132 mi, 4 US gal, 33.0 mpg (US)",
            Imperial.Answer("leg day=1 car=X code=417 mi=132 gal=4").Words
        );
    }

    [Fact]
    public void Imperial_temperature_and_wind_follow_the_plan()
    {
        LegFigures leg = Imperial.Typed("leg day=1 car=X code=417 mi=132 kwh=38.6 t0=50 t1=59 wind=10 mph=60").Study.Legs[0].Figures;
        Assert.Equal(10, leg.AirAtStart!.Value.Celsius, 1e-9);
        Assert.Equal(15, leg.AirAtEnd!.Value.Celsius, 1e-9);
        Assert.Equal(4.4704, leg.Wind!.Value.MetresPerSecond, 1e-9);
        Assert.Equal(96.56064, leg.MeanSpeed!.Value.Kmh, 1e-9);
    }

    [Fact]
    public void A_state_of_charge_gives_the_energy_by_the_usable_capacity()
    {
        LegFigures leg = ADay.Typed("leg day=1 car=X code=417 km=200 soc=80-31 usable=75").Study.Legs[0].Figures;
        Assert.Equal(36.75, leg.Energy.Amount, 1e-12);
        Assert.True(leg.FromCharge);
        Assert.Equal(1, leg.Charge!.Value.StepPercent);
        ADay planned = new(Making.ADay.ShortPlan with { EnergyTold = new EnergyPlan { Usable = Energy.Of(60, EnergyUnit.KilowattHour) } });
        Assert.Equal(30, planned.Typed("leg day=1 car=X code=417 km=200 soc=80-30").Study.Legs[0].Figures.Energy.Amount, 1e-12);
    }

    [Theory]
    [InlineData("leg day=1 car=X code=417 km=0 kwh=38", "greater than 0")]
    [InlineData("leg day=1 car=X code=417 km=-212 kwh=38", "greater than 0")]
    [InlineData("leg day=1 car=X code=417 km=212 kwh=0", "greater than 0")]
    [InlineData("leg day=1 car=X code=417 km=212 kwh=-38", "greater than 0")]
    [InlineData("leg day=1 car=X code=417 km=212 soc=31-80 usable=75", "rises")]
    [InlineData("leg day=1 car=X code=417 km=212 soc=80-80 usable=75", "does not fall")]
    [InlineData("leg day=1 car=X code=417 km=212 soc=80-131 usable=75", "between 0 and 100")]
    [InlineData("leg day=1 car=X code=417 km=212 soc=80-31", "usable capacity")]
    [InlineData("leg day=1 car=X code=417 km=212 kwh=76 usable=75", "more than the usable")]
    [InlineData("leg day=1 car=X code=999 km=212 kwh=38", "not a code of this study")]
    [InlineData("leg day=1 car=X code=41 km=212 kwh=38", "three-digit")]
    [InlineData("leg day=1 car=X km=212 kwh=38", "lacks the code")]
    [InlineData("leg day=1 code=417 km=212 kwh=38", "lacks the car")]
    [InlineData("leg car=X code=417 km=212 kwh=38", "lacks the day")]
    [InlineData("leg day=1 car=X code=417 kwh=38", "lacks the distance")]
    [InlineData("leg day=1 car=X code=417 km=212", "lacks the energy")]
    [InlineData("leg day=1 car=X code=417 km=212 km=213 kwh=38", "twice")]
    [InlineData("leg day=1 car=X code=417 km=212 kw=38", "not a part of a leg")]
    [InlineData("leg day=1 car=X code=417 km=twelve kwh=38", "can't be km")]
    [InlineData("leg day=1 car=X code=417 km=212 kwh=38 rain", "neither a part")]
    [InlineData("leg day=1 car=X code=417 km=212 kwh=38 at=25:10", "can't be at")]
    [InlineData("leg day=1 car=X code=417 km=212 kwh=38 at=14:05pm", "can't be at")]
    [InlineData("leg", "lacks the day")]
    [InlineData("leg 3 t", "no leg 3")]
    public void Nonsense_is_refused_and_changes_nothing(string line, string because) =>
        Assert.Contains(because, ADay.Refusal(line).ToString(), StringComparison.Ordinal);

    [Theory]
    [InlineData("at=2:05pm")]
    [InlineData("at=2.05PM")]
    [InlineData("at=14:05")]
    [InlineData("at=14.05")]
    public void The_time_of_day_is_typed_by_either_clock(string at)
    {
        ADay day = ADay.Typed($"leg day=1 car=X code=417 km=212.4 kwh=38.0 {at}");
        Assert.Equal(new TimeOnly(14, 5), Assert.Single(day.Study.Legs).Figures.At);
    }

    [Theory]
    [InlineData("leg day=1 car=X code=417 km=90 kwh=16 at=10:00", true)]
    [InlineData("leg day=1 car=x code=862 km=90 kwh=16 at=11:22 min=60", true)]
    [InlineData("leg day=1 car=X code=417 km=90 kwh=16 at=08:00 min=71", true)]
    [InlineData("leg day=1 car=X code=417 km=90 kwh=16 at=11:23 min=60", false)]
    [InlineData("leg day=1 car=X code=417 km=90 kwh=16 at=08:00 min=70", false)]
    [InlineData("leg day=1 car=Y code=862 km=90 kwh=16 at=10:00", false)]
    [InlineData("leg day=2 car=X code=417 km=90 kwh=16 at=10:00", false)]
    public void A_car_is_on_one_leg_at_a_time(string second, bool refused)
    {
        // 212.4 km at 96 km/h last 132.75 minutes: from 09:10 to just before 11:23
        ADay day = ADay.Typed(First);
        Outcome outcome = day.Book.Write(second);
        Assert.Equal(refused, !outcome.IsWritten);
        Assert.Equal(refused, outcome.Objection?.ToString().Contains("was on leg 1 at that time", StringComparison.Ordinal) ?? false);
    }

    [Fact]
    public void The_same_leg_again_is_refused() =>
        Assert.Contains("says the same already", ADay.Typed(First).Refusal(First).Why, StringComparison.Ordinal);

    [Fact]
    public void Kilowatt_hours_and_fuel_do_not_meet_in_one_study() =>
        Assert.Contains(
            "another energy carrier",
            ADay.Typed(First).Refusal("leg day=1 car=Y code=862 km=212 l=13").Why,
            StringComparison.Ordinal
        );

    [Fact]
    public void Without_sealed_codes_a_leg_needs_an_override()
    {
        ADay open = new(isSealed: false);
        Assert.Equal("commitment", open.Refusal(First).Check);
        open.Typed("override commitment paper key lies with Ilse", First);
    }

    [Fact]
    public void While_a_run_is_on_no_leg_is_typed() =>
        Assert.Contains("run 1 is on", ADay.Ready().Typed("run 417").Refusal(First).Why, StringComparison.Ordinal);

    [Theory]
    [InlineData("leg day=1 car=X code=417 km=212 kwh=3.8", "hard to believe")]
    [InlineData("leg day=1 car=X code=417 km=21 kwh=38", "hard to believe")]
    [InlineData("leg day=1 car=X code=417 km=212 kwh=38 soc=80-60 usable=75", "the state of charge 15.0 kWh")]
    public void An_absurd_leg_is_stored_as_doubtful(string line, string doubt) =>
        Assert.Contains(doubt, ADay.Answer(line).Doubt, StringComparison.Ordinal);

    [Fact]
    public void The_plan_of_swaps_is_held_against_each_leg()
    {
        EnergyDay[] days = [new([new("X", new Place(0)), new("Y", new Place(1))]), new([new("X", new Place(1)), new("Y", new Place(0))])];
        ADay day = new(Making.ADay.ShortPlan with { EnergyTold = new EnergyPlan { Days = [.. days] } });
        Assert.Null(day.Answer(First).Doubt);
        Assert.Equal("the plan asks for 862 on X on day 2", day.Answer("leg day=2 car=X code=417 km=212 kwh=38").Doubt);
        Assert.Equal("the plan has no car Z on day 2", day.Answer("leg day=2 car=Z code=417 km=212 kwh=38").Doubt);
        Assert.Equal("the plan has 2 energy days", day.Answer("leg day=3 car=X code=417 km=212 kwh=38").Doubt);
    }

    [Fact]
    public void Meter_and_charge_in_one_study_are_doubtful()
    {
        ADay day = ADay.Typed(First);
        Assert.Contains("mixed", day.Answer("leg day=1 car=Y code=862 km=212 soc=80-30 usable=75").Doubt, StringComparison.Ordinal);
    }

    [Fact]
    public void A_strong_wind_is_said_at_once() =>
        Assert.Contains(
            "look out: mean wind above 5 m/s",
            ADay.Answer("leg day=1 car=X code=417 km=212 kwh=38 wind=5.5").Words,
            StringComparison.Ordinal
        );

    [Fact]
    public void A_flag_at_once_or_before_the_cars_next_leg_leaves_the_leg_out_and_again_takes_it_back()
    {
        ADay day = ADay.Typed(First + " w rain shower", "leg day=1 car=Y code=862 km=212 kwh=39");
        Assert.Equal(new Spoiling(SpoiltCause.Wind, "rain shower", false), day.Study.Legs[0].Spoilt);
        Assert.Equal("leg 2 spoilt by traffic", day.Answer("leg 2 t").Words);
        Assert.True(day.Study.Legs[1].LeftOut);
        Assert.Equal("leg 2 is clean again", day.Answer("leg 2 t").Words);
        Assert.Null(day.Study.Legs[1].Spoilt);
    }

    [Fact]
    public void A_flag_after_the_cars_next_leg_is_late_and_leaves_nothing_out()
    {
        ADay day = ADay.Typed(First, "leg day=2 car=X code=417 km=212 kwh=39");
        Assert.Contains("flagged late", day.Answer("leg 1 t").Words, StringComparison.Ordinal);
        Assert.False(StudyLegs.Of(day.Study)[0].Spoilt);
    }

    [Fact]
    public void Undo_takes_a_leg_and_a_flag_back()
    {
        ADay day = ADay.Typed(First, "leg 1 t", "u");
        Assert.Null(Assert.Single(day.Study.Legs).Spoilt);
        Assert.Equal("taken back: leg 1", day.Answer("u").Words);
        Assert.Empty(day.Study.Legs);
    }

    [Fact]
    public void Locked_predictions_freeze_the_energy_days()
    {
        ADay day = ADay.Ready()
            .Typed(
                "run 417",
                "5860",
                "6365",
                "714",
                "run 862",
                "5860",
                "6365",
                "714",
                "calibration after 94",
                "predict Ro feature=862 sure=3"
            );
        Assert.Contains("frozen", day.Refusal(First).Why, StringComparison.Ordinal);
    }
}
