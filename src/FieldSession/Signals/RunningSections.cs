namespace FieldSession.Signals;

/// <summary>Second-order sections one behind the other, with what they remember; samples go through in blocks of any length.</summary>
/// <param name="sections">The sections, in their order.</param>
public sealed class RunningSections(IReadOnlyList<SecondOrderSection> sections)
{
    private readonly SecondOrderSection[] _sections = [.. sections];
    private readonly double[] _first = new double[sections.Count];
    private readonly double[] _second = new double[sections.Count];

    /// <summary>Filters the next samples into a span of the same length, which may be the same one.</summary>
    public void Filter(ReadOnlySpan<double> samples, Span<double> filtered)
    {
        samples.CopyTo(filtered);
        filtered = filtered[..samples.Length];
        for (int s = 0; s < _sections.Length; s++)
        {
            (double b0, double b1, double b2, double a1, double a2) = _sections[s];
            double first = _first[s];
            double second = _second[s];
            for (int i = 0; i < filtered.Length; i++)
            {
                double x = filtered[i];
                double y = (b0 * x) + first;
                first = (b1 * x) - (a1 * y) + second;
                second = (b2 * x) - (a2 * y);
                filtered[i] = y;
            }

            // numbers too small to be levels would slow the processor down
            _first[s] = Math.Abs(first) < 1e-200 ? 0 : first;
            _second[s] = Math.Abs(second) < 1e-200 ? 0 : second;
        }
    }
}
