using FieldSession.Measures;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Journeys;

/// <summary>Before, keys, after: what is typed at a charging stop.</summary>
public sealed class LegsByKeysTests
{
    private static ADay Planned(UnitSystem units = UnitSystem.Metric) =>
        new(
            ADay.ShortPlan with
            {
                Units = units,
                EnergyTold = new EnergyPlan
                {
                    Usable = Energy.Of(75, EnergyUnit.KilowattHour),
                    Days = [new([new("X", new Place(0)), new("Y", new Place(1))]), new([new("X", new Place(1)), new("Y", new Place(0))])],
                },
            }
        );

    [Fact]
    public void A_leg_is_typed_field_by_field_and_what_the_plan_knows_needs_Enter_alone()
    {
        ADay day = Planned();
        using Tui tui = new(day, screen: "legs");
        tui.Keys("<Enter><Enter><Enter>Ro<Enter>212.4<Enter>38.0<Enter>6<Enter>8<Enter>2<Enter>96<Enter>09:10<Enter>");
        LegFigures leg = Assert.Single(day.Study.Legs).Figures;
        Assert.Equal("leg day=1 car=X code=417 driver=Ro km=212.4 kwh=38.0 t0=6 t1=8 wind=2 kmh=96 at=09:10", leg.Typed);
        Assert.Contains("stored: leg 1, day 1, X on 417", tui.Screen, StringComparison.Ordinal);
        Assert.Contains(">day 1", tui.Screen, StringComparison.Ordinal);
        Assert.Contains(" car Y", tui.Screen, StringComparison.Ordinal);
        Assert.Contains(" code 862", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Charge_from_to_and_empty_fields_are_enough()
    {
        ADay day = Planned();
        using Tui tui = new(day, screen: "legs");
        tui.Keys("<Enter><Enter><Enter><Enter>212.4<Enter>80 - 31<Enter><Enter><Enter><Enter><Enter><Enter>");
        LegFigures leg = Assert.Single(day.Study.Legs).Figures;
        Assert.Equal(36.75, leg.Energy.Amount, 1e-9);
        Assert.Null(leg.Wind);
    }

    [Fact]
    public void Fuel_and_miles_go_into_the_same_fields()
    {
        ADay day = new(ADay.ShortPlan with { Units = UnitSystem.Imperial });
        using Tui tui = new(day, screen: "legs");
        tui.Keys("X<Enter>417<Enter><Enter>132<Enter>4.1gal<Enter>58<Enter><Enter>4<Enter>60<Enter><Enter>");
        Assert.Equal("leg day=1 car=X code=417 mi=132 gal=4.1 t0=58 wind=4 mph=60", Assert.Single(day.Study.Legs).Figures.Typed);
    }

    [Fact]
    public void A_wrong_value_is_said_at_its_field_and_stays_in_the_box()
    {
        ADay day = Planned();
        using Tui tui = new(day, screen: "legs");
        tui.Keys("<Enter><Enter><Enter><Enter>-5<Enter>");
        Assert.Contains("km=-5 can't be", tui.Screen, StringComparison.Ordinal);
        Assert.Contains("km > -5", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<Esc><Enter><Enter><Enter><Enter><Enter>");
        Assert.Contains("km is needed", tui.Screen, StringComparison.Ordinal);
        Assert.Empty(day.Study.Legs);
    }

    [Fact]
    public void A_refused_leg_stays_in_the_form_and_can_be_repaired()
    {
        ADay day = Planned();
        using Tui tui = new(day, screen: "legs");
        tui.Keys("<Enter><Enter><Enter><Enter>212<Enter>76<Enter><Enter><Enter><Enter><Enter><Enter>");
        Assert.Contains("more than the usable", tui.Screen, StringComparison.Ordinal);
        tui.Keys("<CursorUp><CursorUp><CursorUp><CursorUp><CursorUp>36<Enter><Enter><Enter><Enter><Enter><Enter>");
        Assert.Equal(36, Assert.Single(day.Study.Legs).Figures.Energy.Amount);
    }

    [Fact]
    public void Whole_lines_flag_a_leg_and_take_an_act_back()
    {
        ADay day = Planned().Typed("leg day=1 car=X code=417 km=212 kwh=38");
        using Tui tui = new(day, screen: "legs");
        tui.Keys("leg 1 w shower of rain<Enter>");
        Assert.Equal("shower of rain", day.Study.Legs[0].Spoilt!.Words);
        tui.Keys("u<Enter>u<Enter>");
        Assert.Empty(day.Study.Legs);
        Assert.Contains("taken back: leg 1", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_date_suggests_the_next_day_with_the_swapped_codes()
    {
        ADay day = Planned().Typed("leg day=1 car=X code=417 km=212 kwh=38", "leg day=1 car=Y code=862 km=212 kwh=39");
        day.Clock.Advance(TimeSpan.FromDays(1));
        using Tui tui = new(day, screen: "legs");
        Assert.Contains(">day 2", tui.Screen, StringComparison.Ordinal);
        Assert.Contains(" code 862", tui.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Full_disk_is_said_and_Enter_tries_again()
    {
        ADay day = Planned();
        using Tui tui = new(day, screen: "legs");
        day.Journal.DiskIsFull = true;
        tui.Keys("leg day=1 car=X code=417 km=212 kwh=38<Enter>");
        Assert.Contains("not saved", tui.Screen, StringComparison.Ordinal);
        day.Journal.DiskIsFull = false;
        tui.Keys("<Enter>");
        Assert.Single(day.Study.Legs);
    }
}
