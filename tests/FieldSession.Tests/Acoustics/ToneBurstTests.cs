using System.Globalization;
using FieldSession.Acoustics;
using FieldSession.Tests.References;

namespace FieldSession.Tests.Acoustics;

/// <summary>
/// Tone bursts of 1 kHz (case R05-tone-bursts): IEC 61672-1, Table 4, is 10 lg(1 - exp(-T/tau)); absolute values by scipy.
/// </summary>
public class ToneBurstTests
{
    private const int RateHz = 48_000;
    private static readonly RecordingCase Case = RecordingCase.Open("R05-tone-bursts");

    public static TheoryData<string> Bursts =>
        [.. Case.Quantities().Select(name => name[..name.IndexOf(".L", StringComparison.Ordinal)]).Distinct()];

    [Theory]
    [MemberData(nameof(Bursts))]
    public void A_burst_reads_what_the_standard_says(string burst)
    {
        double seconds = double.Parse(burst[1..], CultureInfo.InvariantCulture);
        double amplitude = Math.Sqrt(2) * Math.Pow(10, 94 / 20.0) * 2e-5;
        double[] samples = [.. new double[RateHz / 2], .. InventedSound.Sine(1000, RateHz, seconds, amplitude), .. new double[3 * RateHz]];

        // samples are in pascal: 0 dB at 20 micropascal
        WindowLevels heard = InventedSound.Metered(samples, RateHz).Windows[0].Raised(-20 * Math.Log10(2e-5));

        Case.Holds($"{burst}.LAFmax.rel", heard.LAFmaxDb - 94);
        Case.Holds($"{burst}.LASmax.rel", heard.LASmaxDb - 94);
        Case.Holds($"{burst}.LAFmax.abs", heard.LAFmaxDb);
        Case.Holds($"{burst}.LASmax.abs", heard.LASmaxDb);
        Case.Holds($"{burst}.LAeq.abs", heard.LAeqDb);
        Case.Holds($"{burst}.LCeq.abs", heard.LCeqDb);
        Case.Holds($"{burst}.LZeq.abs", heard.LZeqDb);
    }
}
