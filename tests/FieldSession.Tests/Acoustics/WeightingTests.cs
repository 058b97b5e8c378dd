using System.Globalization;
using FieldSession.Acoustics;
using FieldSession.Tests.References;

namespace FieldSession.Tests.Acoustics;

/// <summary>
/// Weightings A and C against IEC 61672-1: the formula of Annex E, and Table 3 as two public transcriptions of it agree (case
/// R01-weighting).
/// </summary>
public class WeightingTests
{
    private static readonly RecordingCase Case = RecordingCase.Open("R01-weighting");

    [Fact]
    public void The_four_pole_frequencies_are_those_of_annex_E()
    {
        Case.Holds("f1", FrequencyWeighting.F1Hz);
        Case.Holds("f2", FrequencyWeighting.F2Hz);
        Case.Holds("f3", FrequencyWeighting.F3Hz);
        Case.Holds("f4", FrequencyWeighting.F4Hz);
    }

    /// <summary>Source: `formula` rows by numpy from Annex E; `table` rows: IEC 61672-1, Table 3, nominal values.</summary>
    [Theory]
    [InlineData("formula", 68)]
    [InlineData("table", 68)]
    public void A_and_C_are_those_of_the_standard_from_10_Hz_to_20_kHz(string rows, int count)
    {
        string[] quantities = [.. Case.Quantities().Where(name => name.Contains($".{rows}.", StringComparison.Ordinal))];
        Assert.Equal(count, quantities.Length);
        Assert.All(
            quantities,
            quantity =>
            {
                double hz = ThirdOctave.MiddleHz(Band(quantity));
                Case.Holds(quantity, quantity[0] == 'A' ? FrequencyWeighting.ADb(hz) : FrequencyWeighting.CDb(hz));
            }
        );
    }

    /// <summary>Source: the same design by scipy, bilinear_zpk, gain 1 at 1 kHz.</summary>
    [Fact]
    public void The_filters_lie_from_the_formula_where_scipy_s_do()
    {
        string[] quantities = [.. Case.Quantities().Where(name => name.Contains(".filter48000.", StringComparison.Ordinal))];
        Assert.Equal(14, quantities.Length);
        Assert.All(
            quantities,
            quantity =>
            {
                double hz = ThirdOctave.MiddleHz(Band(quantity));
                (double a, double c) = WeightingFilters.ResponseDb(hz, 48_000);
                Case.Holds(quantity, quantity[0] == 'A' ? a - FrequencyWeighting.ADb(hz) : c - FrequencyWeighting.CDb(hz));
            }
        );
    }

    /// <summary>
    /// Source: class 1 acceptance limits of IEC 61672-1:2013, Table 3, from memory: +1.5/-2.5 dB at 8 kHz, +2/-5 at 12.5 kHz.
    /// </summary>
    [Theory]
    [InlineData(44_100)]
    [InlineData(48_000)]
    [InlineData(96_000)]
    public void The_filters_keep_within_the_limits_of_class_1_up_to_12_500_Hz(int rateHz)
    {
        for (int n = -20; n <= 11; n++)
        {
            double off = WeightingFilters.ResponseDb(ThirdOctave.MiddleHz(n), rateHz).ADb - FrequencyWeighting.ADb(ThirdOctave.MiddleHz(n));
            double least = n switch
            {
                <= 0 => -0.7,
                <= 6 => -1,
                <= 8 => -1.5,
                9 => -2.5,
                10 => -3,
                _ => -5,
            };
            Assert.InRange(off, least, 0.1);
        }
    }

    private static int Band(string quantity) => int.Parse(quantity[(quantity.LastIndexOf('.') + 1)..], CultureInfo.InvariantCulture);
}
