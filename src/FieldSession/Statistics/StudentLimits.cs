namespace FieldSession.Statistics;

/// <summary>
/// The limits of 95 % and 90 % intervals, t(0.975; df) and t(0.95; df), each worked out once: with complete data all lines of a class share their
/// degrees of freedom. Worked example: at 4 degrees of freedom 2.7764 and 2.1318, in every printed table.
/// </summary>
public sealed class StudentLimits
{
    private const int Most = 4096;
    private readonly Dictionary<double, (double T975, double T95)> _known = [];

    /// <summary>Both limits.</summary>
    /// <param name="df">Degrees of freedom, above 0.</param>
    public (double T975, double T95) Of(double df)
    {
        if (!_known.TryGetValue(df, out (double T975, double T95) limits))
        {
            limits = (StudentT.Quantile(0.975, df), StudentT.Quantile(0.95, df));
            if (_known.Count < Most)
            {
                _known.Add(df, limits);
            }
        }

        return limits;
    }
}
