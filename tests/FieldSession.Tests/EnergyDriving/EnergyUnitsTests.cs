using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Tests.EnergyDriving;

/// <summary>
/// Worked values of consumption. The mile of 1.609344 km and the inch of 25.4 mm are exact (international yard and pound agreement, 1959);
/// with them kWh/100 km, Wh/mi and mi/kWh are one number in three forms.
/// </summary>
public sealed class EnergyUnitsTests
{
    [Theory]
    [InlineData(18, 289.7, 3.452)]
    [InlineData(15.53, 250, 4.00)]
    [InlineData(18.64, 300, 3.33)]
    [InlineData(18.17, 292.4, 3.42)]
    public void Consumption_of_electricity_in_its_three_units(double per100Km, double whPerMile, double milesPerKwh)
    {
        Consumption one = new(per100Km, EnergyCarrier.Electricity);
        Assert.Equal(whPerMile, one.WhPerMile, 0.1);
        Assert.Equal(milesPerKwh, one.MilesPerKilowattHour, 0.005);
        Assert.Equal(1000, one.WhPerMile * one.MilesPerKilowattHour, 1e-9);
    }

    [Fact]
    public void A_US_gallon_is_231_cubic_inches() => Assert.Equal(231 * 2.54 * 2.54 * 2.54 / 1000, Energy.LitresPerUsGallon, 1e-12);

    // 235.2146 and 282.4809 are the factors printed in conversion tables (from memory); here they follow from mile and gallon.
    [Theory]
    [InlineData(8, 235.2146 / 8, 282.4809 / 8)]
    [InlineData(6.2, 235.2146 / 6.2, 282.4809 / 6.2)]
    public void Consumption_of_fuel_in_miles_per_gallon(double litresPer100Km, double mpgUs, double mpgImperial)
    {
        Consumption one = new(litresPer100Km, EnergyCarrier.Fuel);
        Assert.Equal(mpgUs, one.MilesPerUsGallon, 1e-4);
        Assert.Equal(mpgImperial, one.MilesPerImperialGallon, 1e-4);
    }

    [Fact]
    public void Fuel_is_counted_in_litres_whatever_it_was_typed_in()
    {
        Assert.Equal(37.85411784, Energy.Of(10, EnergyUnit.UsGallon).KwhOrLitres, 1e-12);
        Assert.Equal(45.4609, Energy.Of(10, EnergyUnit.ImperialGallon).KwhOrLitres, 1e-12);
        Assert.Equal("10 US gal", Energy.Of(10, EnergyUnit.UsGallon).ToString());
        Assert.Equal(EnergyCarrier.Fuel, Energy.Of(10, EnergyUnit.Litre).Carrier);
    }

    [Fact]
    public void An_average_is_total_energy_over_total_distance_and_no_mean_of_ratios()
    {
        // 100 km at 20 and 100 km at 10 kWh/100 km: 15 kWh/100 km; the mean of mi/kWh would say 14.0
        Consumption both = Consumption.Of(30, 200, EnergyCarrier.Electricity);
        Assert.Equal(15, both.PerHundredKm, 1e-12);
        double meanOfRatios =
            (
                new Consumption(20, EnergyCarrier.Electricity).MilesPerKilowattHour
                + new Consumption(10, EnergyCarrier.Electricity).MilesPerKilowattHour
            ) / 2;
        Assert.NotEqual(both.MilesPerKilowattHour, meanOfRatios, 0.1);
    }

    [Fact]
    public void A_range_is_usable_energy_over_consumption() =>
        Assert.Equal(416.667, new Consumption(18, EnergyCarrier.Electricity).KmOn(75), 1e-3);

    // 200 km at 18 kWh/100 km take 36 kWh: 1 % of 75 kWh is 2.1 % of it, and two readings to 1 % are uncertain by 0.85 % of it (GUM 4.3.7:
    // step / sqrt 12 each).
    [Fact]
    public void The_step_of_the_charge_display_is_a_known_part_of_the_energy()
    {
        ChargeUsed charge = new(StateOfCharge.FromPercent(80), StateOfCharge.FromPercent(32), 1);
        Energy usable = Energy.Of(75, EnergyUnit.KilowattHour);
        Assert.Equal(36, charge.Of(usable).Amount, 1e-12);
        Assert.Equal(2.1, 100 * 0.75 / 36, 0.05);
        Assert.Equal(0.85, 100 * charge.UncertaintyPercent / charge.Percent, 0.005);
        LegFigures leg = new()
        {
            Day = 1,
            Car = "X",
            Code = new SpecCode("417"),
            Distance = Distance.FromKilometres(200),
            Energy = charge.Of(usable),
            FromCharge = true,
            Charge = charge,
            Usable = usable,
        };
        Assert.Equal(0.0085, leg.EnergyUncertainty / leg.Energy.KwhOrLitres, 0.00005);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(2001)]
    [InlineData(double.NaN)]
    public void An_energy_that_no_car_takes_is_no_energy(double amount) =>
        Assert.Throws<QuantityOutOfRangeException>(() => Energy.Of(amount, EnergyUnit.KilowattHour));

    [Theory]
    [InlineData(-0.1)]
    [InlineData(100.1)]
    public void A_state_of_charge_lies_in_0_to_100_percent(double percent) =>
        Assert.Throws<QuantityOutOfRangeException>(() => StateOfCharge.FromPercent(percent));

    [Theory]
    [InlineData(0, 100)]
    [InlineData(10, 0)]
    public void Nothing_over_something_is_no_consumption(double energy, double km) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Consumption.Of(energy, km, EnergyCarrier.Fuel));
}
