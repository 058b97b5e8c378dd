using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.Planning;

namespace FieldSession.Tests.Planning;

public class TyresAreCalculated
{
    /// <summary>Source: a published page on tyre size arithmetic: 225/60R16 has 26.63 in, 83.66 in round, 757 turns a mile.</summary>
    [Fact]
    public void A_published_size_is_reproduced()
    {
        TyreSize size = Size("225/60R16");
        Assert.Equal(26.63, size.DiameterMillimetres / 25.4, 0.005);
        Assert.Equal(83.66, size.CircumferenceMillimetres / 25.4, 0.005);
        Assert.Equal(757, size.TurnsPerMile, 0.5);
    }

    /// <summary>Worked by hand: 457.2 + 2 x 101.25 = 659.7 mm; pi times it 2072.5 mm; 3.05 times it 2012 mm.</summary>
    [Fact]
    public void The_demo_size_is_calculated()
    {
        TyreSize size = Size("225/45R18");
        Assert.Equal(659.7, size.DiameterMillimetres, 1e-9);
        Assert.Equal(2072.5, size.CircumferenceMillimetres, 0.05);
        Assert.Equal(482.5, size.TurnsPerKm, 0.05);
        Assert.Equal(2012, size.RollingCircumferenceMillimetres, 0.5);
        Assert.Equal(497, 1e6 / size.RollingCircumferenceMillimetres, 0.5);
        Assert.Equal(13.8, size.TurnsPerSecond(Speed.FromKmh(100)), 0.05);
    }

    /// <summary>
    /// Worked by hand, c / (pi (rim + section height)) with c = 331.3 sqrt(1 + t/273.15); within the published 190..250 Hz for usual sizes.
    /// </summary>
    [Theory]
    [InlineData("225/45R18", 195.6, 203.8)]
    [InlineData("205/55R16", 210.4, 219.2)]
    [InlineData("195/65R15", 215.2, 224.1)]
    [InlineData("225/60R16", 201.8, 210.2)]
    [InlineData("235/55R19", 178.6, 186.0)]
    [InlineData("245/40R20", 180.3, 187.8)]
    [InlineData("275/55R20", 165.7, 172.6)]
    public void The_cavity_mode_follows_from_size_and_temperature(string size, double at20, double at45)
    {
        Assert.Equal(at20, Size(size).CavityHz(new Temperature(20)), 0.06);
        Assert.Equal(at45, Size(size).CavityHz(new Temperature(45)), 0.06);
    }

    [Theory]
    [InlineData(0, 331.3)]
    [InlineData(10, 337.3)]
    [InlineData(20, 343.2)]
    [InlineData(60, 365.9)]
    public void Sound_is_faster_in_warm_air(double celsius, double metresPerSecond) =>
        Assert.Equal(metresPerSecond, TyreSize.SpeedOfSound(new Temperature(celsius)), 0.06);

    [Theory]
    [InlineData("225/45R18")]
    [InlineData(" 225/45 r 18 ")]
    [InlineData("225/45ZR18 95Y")]
    [InlineData("P225/45R18")]
    [InlineData("225/45-18")]
    public void A_size_is_read_as_it_is_on_a_sidewall(string text) => Assert.Equal("225/45R18", Size(text).ToString());

    [Theory]
    [InlineData("")]
    [InlineData("225")]
    [InlineData("225/45")]
    [InlineData("45/225R18")]
    [InlineData("225/45R99")]
    [InlineData("225/05R18")]
    [InlineData("999/45R18")]
    public void What_is_no_size_is_refused_with_an_example(string text)
    {
        Assert.Null(TyreSize.Parse(text, out Objection? objection));
        Assert.Contains("225/45R18", objection!.Instead);
    }

    /// <summary>Worked by hand: 30 lg(51/50) = 0.258, 40 lg(51/50) = 0.344, 30 lg(31/30) = 0.427 dB.</summary>
    [Theory]
    [InlineData(50, 1, 0.26, 0.34)]
    [InlineData(50, 2, 0.51, 0.68)]
    [InlineData(80, 1, 0.16, 0.22)]
    [InlineData(110, 2, 0.23, 0.31)]
    public void A_speed_error_costs_decibels(double kmh, double tooFast, double least, double most)
    {
        Assert.Equal(least, SpeedCost.Db(Speed.FromKmh(kmh), tooFast, SpeedCost.LeastFactor), 0.006);
        Assert.Equal(most, SpeedCost.Db(Speed.FromKmh(kmh), tooFast, SpeedCost.MostFactor), 0.006);
    }

    [Fact]
    public void A_mile_an_hour_costs_more_in_town()
    {
        Assert.Equal(0.43, SpeedCost.Db(Speed.FromMph(30), Speed.KmPerMile, SpeedCost.LeastFactor), 0.005);
        Assert.Equal(0.27, SpeedCost.Db(Speed.FromMph(65), Speed.KmPerMile, SpeedCost.MostFactor), 0.005);
    }

    /// <summary>
    /// Worked by hand from Gay-Lussac's law: (230 + 101.325) 283.15/293.15 - 101.325 = 218.7 kPa, 333.15/293.15: 275.2 kPa.
    /// </summary>
    [Theory]
    [InlineData(230, 20, 10, 218.7)]
    [InlineData(230, 20, 60, 275.2)]
    public void A_pressure_is_carried_to_another_temperature(double kpa, double from, double to, double then)
    {
        TyrePressure pressure = new TyrePressure(kpa).At(new Temperature(from), new Temperature(to));
        Assert.Equal(then, pressure.Kpa, 0.06);
        Assert.Equal(kpa, pressure.At(new Temperature(to), new Temperature(from)).Kpa, 1e-9);
    }

    /// <summary>Worked by hand: 10 degF more make 0.94 psi of 35, 0.89 of 32, 1.07 of 42, at 68 degF.</summary>
    [Theory]
    [InlineData(35, 0.94)]
    [InlineData(32, 0.89)]
    [InlineData(42, 1.07)]
    public void Ten_degrees_fahrenheit_make_about_one_psi(double psi, double more)
    {
        TyrePressure warm = TyrePressure.FromPsi(psi).At(Temperature.FromFahrenheit(68), Temperature.FromFahrenheit(78));
        Assert.Equal(more, warm.Psi - psi, 0.006);
    }

    private static TyreSize Size(string text)
    {
        TyreSize? size = TyreSize.Parse(text, out Objection? objection);
        Assert.Null(objection);
        return size!;
    }
}
