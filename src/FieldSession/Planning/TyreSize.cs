using System.Globalization;
using System.Text.RegularExpressions;
using FieldSession.Journal;
using FieldSession.Measures;

namespace FieldSession.Planning;

/// <summary>The size of a tyre and what follows from it by plain geometry.</summary>
/// <param name="WidthMillimetres">Nominal section width, mm.</param>
/// <param name="AspectPercent">Section height in percent of the width.</param>
/// <param name="RimInches">Rim diameter, inches.</param>
public sealed partial record TyreSize(int WidthMillimetres, int AspectPercent, double RimInches)
{
    private const double MillimetresPerInch = 25.4;

    // radial tyres roll on a circle of about 3.05 diameters, not pi (from memory)
    private const double RollingFactor = 3.05;

    /// <summary>Section height, mm.</summary>
    public double SectionHeightMillimetres => WidthMillimetres * AspectPercent / 100.0;

    /// <summary>Rim diameter, mm.</summary>
    public double RimMillimetres => RimInches * MillimetresPerInch;

    /// <summary>Outer diameter, mm: rim x 25.4 + 2 x width x ratio / 100.</summary>
    public double DiameterMillimetres => RimMillimetres + (2 * SectionHeightMillimetres);

    /// <summary>Outer circumference, mm.</summary>
    public double CircumferenceMillimetres => Math.PI * DiameterMillimetres;

    /// <summary>Turns of the wheel per km, by the outer circumference.</summary>
    public double TurnsPerKm => 1e6 / CircumferenceMillimetres;

    /// <summary>Turns of the wheel per mile, by the outer circumference.</summary>
    public double TurnsPerMile => TurnsPerKm * Speed.KmPerMile;

    /// <summary>Circumference that the loaded tyre rolls on, mm; about 3.05 diameters for a radial tyre (from memory).</summary>
    public double RollingCircumferenceMillimetres => RollingFactor * DiameterMillimetres;

    /// <summary>
    /// First mode of the ring of air in the tyre, Hz: speed of sound over the mean circumference, pi (rim + section height).
    /// Pressure does not matter, temperature does. Published peaks lie at 190..250 Hz, split by load (SAE 2009-01-2104, abstract).
    /// </summary>
    /// <param name="air">Temperature of the air in the tyre.</param>
    public double CavityHz(Temperature air) => SpeedOfSound(air) / (Math.PI * (RimMillimetres + SectionHeightMillimetres) / 1000);

    /// <summary>Turns of the wheel per second at a speed, on the rolling circumference.</summary>
    public double TurnsPerSecond(Speed speed) => speed.Kmh / 3.6 / (RollingCircumferenceMillimetres / 1000);

    /// <summary>Speed of sound in air, m/s: 331.3 sqrt(1 + t / 273.15), t in degC (dry air as an ideal gas).</summary>
    public static double SpeedOfSound(Temperature air) => 331.3 * Math.Sqrt(1 + (air.Celsius / 273.15));

    /// <summary>The size that a text names, such as "225/45R18", "225/45 ZR 18 91W" or "p235/55r19"; null where it names none.</summary>
    /// <param name="text">The text.</param>
    /// <param name="objection">What is wrong and what is allowed; null where the size is good.</param>
    public static TyreSize? Parse(string text, out Objection? objection)
    {
        ArgumentNullException.ThrowIfNull(text);
        Match match = Form().Match(text.Trim());
        int Whole(int group) => int.Parse(match.Groups[group].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture);
        TyreSize? size = match.Success
            ? new TyreSize(
                Whole(1),
                Whole(2),
                double.Parse(match.Groups[3].ValueSpan, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture)
            )
            : null;
        bool isGood = size is { WidthMillimetres: >= 125 and <= 405, AspectPercent: >= 20 and <= 90, RimInches: >= 10 and <= 26 };
        objection = isGood ? null : new Objection(PlanningWords.IsNoTyreSize, PlanningWords.TyreSizeForm);
        return isGood ? size : null;
    }

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{WidthMillimetres}/{AspectPercent}R{RimInches:0.#}");

    [GeneratedRegex(
        @"^(?:P|LT)?\s*(\d{3})\s*/\s*(\d{2})\s*(?:Z?R|-)\s*(\d{2}(?:\.5)?)(?:\s.*)?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex Form();
}
