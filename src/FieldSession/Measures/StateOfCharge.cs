namespace FieldSession.Measures;

/// <summary>What the car's display says is left in the battery, in percent of its usable capacity; 0..100.</summary>
/// <param name="Percent">Percent.</param>
public readonly record struct StateOfCharge(double Percent)
{
    /// <summary>A state of charge in percent.</summary>
    /// <exception cref="QuantityOutOfRangeException">Outside 0..100 %.</exception>
    public static StateOfCharge FromPercent(double percent) => percent is >= 0 and <= 100
        ? new StateOfCharge(percent)
        : throw new QuantityOutOfRangeException(nameof(percent), MeasuresWords.RangeOfCharge);
}

/// <summary>A state of charge read before and after a leg.</summary>
/// <param name="Start">At the start.</param>
/// <param name="End">At the end; below the start.</param>
/// <param name="StepPercent">The display's step, percent: 1 on most cars.</param>
public readonly record struct ChargeUsed(StateOfCharge Start, StateOfCharge End, double StepPercent)
{
    /// <summary>How much was used, percent of the usable capacity.</summary>
    public double Percent => Start.Percent - End.Percent;

    /// <summary>
    /// Standard uncertainty of <see cref="Percent"/>: two readings, each anywhere within a step with equal chance, step / sqrt(12) apiece (JCGM
    /// 100:2008, GUM, 4.3.7). Steps of 1 %: 0.41 %.
    /// </summary>
    public double UncertaintyPercent => StepPercent * Math.Sqrt(2.0 / 12);

    /// <summary>The energy that it means.</summary>
    /// <param name="usable">Usable capacity of the battery.</param>
    public Energy Of(Energy usable) => Energy.Of(usable.Amount * Percent / 100, usable.Unit);
}
