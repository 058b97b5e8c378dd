using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// Logarithms of the consumption of the stretches on code, block, car and driver, by least squares (docs/formulas.md, "Energy days"): a
/// block is the stretches that several cars drove together. Without any block: code, car and air temperature.
/// </summary>
internal sealed class EnergyModel
{
    /// <summary>
    /// Fewer degrees of freedom than this give no interval and no words: one comparison of like with like can agree by luck.
    /// </summary>
    public const int LeastDf = 2;

    private const double ReferenceCelsius = 20;

    private readonly string[] _codes;
    private readonly double[] _y;

    private EnergyModel(EnergyStretch[] counted, bool isPaired, string[] codes)
    {
        Counted = counted;
        IsPaired = isPaired;
        _codes = codes;
        double[] logs = [.. counted.Select(stretch => Math.Log(stretch.PerHundredKm))];
        double mean = logs.Length == 0 ? 0 : logs.Average();
        _y = [.. logs.Select(log => log - mean)];
    }

    /// <summary>The stretches that count.</summary>
    public EnergyStretch[] Counted { get; }

    /// <summary>Whether cars were driven side by side.</summary>
    public bool IsPaired { get; }

    /// <summary>Whether the air temperature of every stretch is known.</summary>
    public bool TemperaturesKnown => Counted.All(stretch => stretch.AirCelsius is not null);

    /// <summary>The model of stretches: those driven side by side, or, where none were, all.</summary>
    public static EnergyModel Of(IReadOnlyList<EnergyStretch> stretches)
    {
        EnergyStretch[] paired =
        [
            .. stretches
                .GroupBy(stretch => (stretch.Day, stretch.Slot))
                .Where(block => block.Select(stretch => stretch.Car).Distinct().Count() > 1)
                .SelectMany(block => block),
        ];
        EnergyStretch[] counted = paired.Length > 0 ? paired : [.. stretches];
        return new EnergyModel(counted, paired.Length > 0, [.. counted.Select(stretch => stretch.Code).Distinct()]);
    }

    /// <summary>The line of one code against another.</summary>
    public EnergyLine Line(string code, string reference)
    {
        if (!_codes.Contains(code) || !_codes.Contains(reference))
        {
            return EnergyLine.None(EnergyObstacle.NotDriven);
        }

        EnergyLine? whole = Fit(code, reference, withDrivers: true);
        return whole is { Df: >= LeastDf } ? whole : WithoutDrivers(code, reference, driversMatter: whole is null && DriverColumns().Any());
    }

    /// <summary>The line of one car against another on the same code; null where car and code cannot be told apart.</summary>
    public EnergyLine? CarLine(string car, string firstCar, string reference)
    {
        IEnumerable<double[]> others =
        [
            .. BlockColumns(),
            .. _codes.Where(code => code != reference).Select(code => Column(stretch => stretch.Code == code)),
            .. Counted
                .Select(stretch => stretch.Car)
                .Distinct()
                .Where(other => other != car && other != firstCar)
                .Select(other => Column(stretch => stretch.Car == other)),
        ];
        return Design(others, Column(stretch => stretch.Car == car)) is { } design ? Line(design) : null;
    }

    private EnergyLine WithoutDrivers(string code, string reference, bool driversMatter)
    {
        if (Fit(code, reference, withDrivers: false) is { } plain)
        {
            return driversMatter ? plain with { Obstacle = EnergyObstacle.Driver } : plain;
        }

        return EnergyLine.None(
            Try(code, reference, withCars: false, withDrivers: false) is null ? EnergyObstacle.NeverTogether : EnergyObstacle.Car
        );
    }

    private EnergyLine? Fit(string code, string reference, bool withDrivers) =>
        Try(code, reference, withCars: true, withDrivers) is { } design ? Line(design) : null;

    private EnergyLine Line(OrthonormalColumns design)
    {
        double[] contrast = new double[design.Count];
        contrast[^1] = 1;
        double[] weights = design.Weights(contrast);
        int df = design.Rows - design.Count;
        double largest = _y.Max(Math.Abs);
        double rss = RoundingNoise.Cleared(design.Rss(_y), _y.Length, largest);
        return new EnergyLine(weights.Zip(_y, (weight, y) => weight * y).Sum(), df)
        {
            UnitVariance = df > 0 ? rss / df : null,
            Leverage = weights.Sum(weight => weight * weight),
            ResolutionVariance = weights
                .Zip(Counted, (weight, stretch) => weight * weight * stretch.LnUncertainty * stretch.LnUncertainty)
                .Sum(),
        };
    }

    // The code's own column comes last: it is taken only if block, car, driver and the other codes do not make it up.
    private OrthonormalColumns? Try(string code, string reference, bool withCars, bool withDrivers)
    {
        IEnumerable<double[]> others =
        [
            .. BlockColumns(),
            .. withCars ? CarColumns() : [],
            .. withDrivers ? DriverColumns() : [],
            .. _codes.Where(other => other != code && other != reference).Select(other => Column(stretch => stretch.Code == other)),
        ];
        return Design(others, Column(stretch => stretch.Code == code));
    }

    private OrthonormalColumns? Design(IEnumerable<double[]> others, double[] last)
    {
        OrthonormalColumns design = new(Counted.Length);
        foreach (double[] column in others)
        {
            design.TryAdd(column);
        }

        return design.TryAdd(last) ? design : null;
    }

    private IEnumerable<double[]> BlockColumns()
    {
        if (IsPaired)
        {
            return Counted
                .Select(stretch => (stretch.Day, stretch.Slot))
                .Distinct()
                .Select(block => Column(stretch => (stretch.Day, stretch.Slot) == block));
        }

        double[] constant = Column(_ => true);
        return TemperaturesKnown ? [constant, [.. Counted.Select(stretch => stretch.AirCelsius!.Value - ReferenceCelsius)]] : [constant];
    }

    private IEnumerable<double[]> CarColumns() =>
        Counted.Select(stretch => stretch.Car).Distinct().Skip(1).Select(car => Column(stretch => stretch.Car == car));

    private IEnumerable<double[]> DriverColumns() =>
        Counted.All(stretch => stretch.Driver is not null)
            ? Counted.Select(stretch => stretch.Driver).Distinct().Skip(1).Select(driver => Column(stretch => stretch.Driver == driver))
            : [];

    private double[] Column(Func<EnergyStretch, bool> holds) => [.. Counted.Select(stretch => holds(stretch) ? 1.0 : 0)];
}
