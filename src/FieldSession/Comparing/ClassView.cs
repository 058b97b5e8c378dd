namespace FieldSession.Comparing;

/// <summary>One class of one choice of readings: what counts and, if two codes can be compared, the model of it.</summary>
/// <param name="Class">The class; null: all segments.</param>
/// <param name="Counted">What counts.</param>
/// <param name="Model">The model; null: nothing to compare.</param>
internal sealed record ClassView(MeasureClass? Class, Counted Counted, ClassModel? Model)
{
    /// <summary>Looks at a class; null if the route has no such segment.</summary>
    /// <param name="table">The day.</param>
    /// <param name="cells">Valid levels or all.</param>
    /// <param name="measureClass">The class.</param>
    /// <param name="terms">For the archive.</param>
    public static ClassView? Of(DayTable table, double[] cells, MeasureClass? measureClass, ComparisonTerms terms) =>
        Of(table, cells, measureClass, terms, [.. Enumerable.Range(0, table.Runs.Length)], table.SegmentsOf(measureClass), null);

    /// <summary>The same segments under another class, with what the archive lends to that.</summary>
    public ClassView As(MeasureClass measureClass, ComparisonTerms terms) => new(
        measureClass, Counted, Model?.With(ArchiveLending.For(measureClass, terms.Archive, Math.Max(1, Counted.Segments.Length))));

    /// <summary>The same over some runs and segments only, with the drift column as told (null: by the rule).</summary>
    public static ClassView? Of(
        DayTable table, double[] cells, MeasureClass? measureClass, ComparisonTerms terms, int[] runs, int[] segments, bool? drift)
    {
        if (segments.Length == 0)
        {
            return null;
        }

        Counted counted = Counted.Of(table, cells, runs, segments);
        ArchivePrior? prior = ArchiveLending.For(measureClass, terms.Archive, Math.Max(1, counted.Segments.Length));
        return new ClassView(measureClass, counted, counted.Comparable ? ClassModel.Of(table, counted, prior, drift) : null);
    }
}
