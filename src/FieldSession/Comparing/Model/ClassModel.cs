using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// The one model of all codes over a class of segments: an additive fit of runs and segments inside each code fills the gaps, the means of
/// the fitted runs go through the run design (docs/formulas.md). Every difference of the class is a line drawn from it.
/// </summary>
internal sealed class ClassModel
{
    private readonly AdditiveErrors[] _errors;
    private readonly int[] _starts;

    private ClassModel(DayTable table, CountedReadings counted, ArchivePrior? prior, bool? drift)
    {
        Counted = counted;
        Runs = [.. counted.RunsByCode.SelectMany(runs => runs).Select(row => table.Runs[row])];
        Fits = [.. counted.RunsByCode.Select(runs => AdditiveFit.Of(runs.Length, counted.Segments.Length, Cells(table, counted, runs)))];
        _errors = [.. Fits.Select(AdditiveErrors.Of)];
        _starts = [.. counted.RunsByCode.Select((_, k) => counted.RunsByCode.Take(k).Sum(runs => runs.Length))];
        AllColumns = [.. Enumerable.Range(0, counted.Segments.Length)];
        RunMeans = [.. Fits.SelectMany(Means)];
        Design = RunDesign.Of(Runs, counted.Codes.Length, table.TimesKnown, drift);
        Scatter = Weigh(prior);
    }

    private ClassModel(ClassModel other, ArchivePrior? prior)
    {
        (Counted, Runs, Fits, AllColumns, RunMeans, Design) = (
            other.Counted,
            other.Runs,
            other.Fits,
            other.AllColumns,
            other.RunMeans,
            other.Design
        );
        (_errors, _starts, Limits) = (other._errors, other._starts, other.Limits);
        Scatter = other.Scatter.Under(prior);
    }

    /// <summary>What entered.</summary>
    public CountedReadings Counted { get; }

    /// <summary>The counted runs, grouped by code.</summary>
    public DrivenRun[] Runs { get; }

    /// <summary>Fitted mean over all compared segments of every run, dB from the day's mean.</summary>
    public double[] RunMeans { get; }

    /// <summary>The columns of the run model.</summary>
    public RunDesign Design { get; }

    /// <summary>The scatter that errors are judged by.</summary>
    public Scatter Scatter { get; }

    /// <summary>Places of all compared segments.</summary>
    public int[] AllColumns { get; }

    /// <summary>The fits inside each code, as <see cref="CountedReadings.Codes"/>.</summary>
    public IReadOnlyList<AdditiveFit> Fits { get; }

    /// <summary>The errors of the fits.</summary>
    public IReadOnlyList<AdditiveErrors> Errors => _errors;

    /// <summary>The limits of intervals.</summary>
    public StudentLimits Limits { get; } = new();

    /// <summary>Fits what counts.</summary>
    /// <param name="table">The day.</param>
    /// <param name="counted">What counts, comparable.</param>
    /// <param name="prior">The archive's offer.</param>
    /// <param name="drift">Whether drift is in; null: by the rule.</param>
    public static ClassModel Of(DayTable table, CountedReadings counted, ArchivePrior? prior, bool? drift) =>
        new(table, counted, prior, drift);

    /// <summary>The same fits with another offer of the archive.</summary>
    public ClassModel With(ArchivePrior? prior) => new(this, prior);

    /// <summary>Levels of some runs on the compared segments, row by row.</summary>
    public static double[] Cells(DayTable table, CountedReadings counted, ReadOnlySpan<int> runs)
    {
        int[] segments = counted.Segments;
        double[] cells = new double[runs.Length * segments.Length];
        for (int i = 0, at = 0; i < runs.Length; i++)
        {
            int row = runs[i] * table.Segments.Length;
            for (int s = 0; s < segments.Length; s++, at++)
            {
                cells[at] = counted.Cells[row + segments[s]];
            }
        }

        return cells;
    }

    /// <summary>Place of a code among the analysed ones; -1: not analysed.</summary>
    public int PlaceOf(int code) => Array.IndexOf(Counted.Codes, code);

    /// <summary>Counted runs of an analysed code.</summary>
    public int RunsOf(int place) => Counted.RunsByCode[place].Length;

    /// <summary>Run means of an analysed code.</summary>
    public ReadOnlySpan<double> RunMeansOf(int place) => RunMeans.AsSpan(_starts[place], RunsOf(place));

    /// <summary>"First minus second", ready to be taken over any segments.</summary>
    public ModelContrast Contrast(int first, int second)
    {
        double[] contrast = new double[Math.Max(first, second) + 1];
        contrast[first] = 1;
        contrast[second] = -1;
        double[] weights = Design.Columns.Weights(contrast);
        return new ModelContrast(weights, InFits(weights));
    }

    /// <summary>A difference over some compared segments, each with the same weight (docs/formulas.md, "Any line").</summary>
    /// <param name="contrast">From <see cref="Contrast"/>.</param>
    /// <param name="columns">Places among the compared segments.</param>
    /// <param name="marginDb">Margin of equivalence, dB.</param>
    public Estimate Line(ModelContrast contrast, ReadOnlySpan<int> columns, double marginDb)
    {
        bool isAll = columns.Length == AllColumns.Length;
        double difference = 0;
        double readingShare = 0;
        double square = 0;
        foreach (RowContrast rows in contrast.InFits)
        {
            difference += isAll ? rows.ValueOverAll : rows.Value(columns);
            readingShare += isAll ? rows.VarianceOverAll() : rows.Variance(columns);
            square += rows.SumOfSquares;
        }

        return LineInterval.Estimate(difference, square, readingShare, Scatter, marginDb, Limits);
    }

    /// <summary>The runs' weights, fit by fit; a fit without any is left out.</summary>
    private RowContrast[] InFits(double[] weights) =>
        [
            .. Enumerable
                .Range(0, _errors.Length)
                .Where(k => weights.AsSpan(_starts[k], Fits[k].Rows).ContainsAnyExcept(0.0))
                .Select(k => _errors[k].Contrast(weights.AsSpan(_starts[k], Fits[k].Rows))),
        ];

    private static IEnumerable<double> Means(AdditiveFit fit) =>
        Enumerable.Range(0, fit.Rows).Select(row => fit.RowEffect(row) + fit.MeanOfColumns);

    private Scatter Weigh(ArchivePrior? prior)
    {
        double rss = Design.Df > 0 ? RoundingNoise.Cleared(Design.Columns.Rss(RunMeans), Runs.Length, RunMeans.Max(Math.Abs)) : 0;
        double kbar = Design.Df > 0 ? ReadingShareOfResiduals() / Design.Df : 1.0 / AllColumns.Length;
        return Scatter.Of(rss, Design.Df, Fits.Sum(fit => fit.Rss), Fits.Sum(fit => fit.Df), kbar, prior);
    }

    /// <summary>tr(Q C): the trace of the covariance of the run means less what the design takes up.</summary>
    private double ReadingShareOfResiduals()
    {
        if (Fits.All(fit => fit.Present == fit.Rows * fit.Columns))
        {
            return (double)Design.Df / AllColumns.Length;
        }

        double trace = _errors.Sum(errors => errors.OfAllRowMeans());
        foreach (double[] column in Design.Columns.Basis)
        {
            trace -= InFits(column).Sum(rows => rows.VarianceOverAll());
        }

        return trace;
    }
}

/// <summary>A difference of two codes before any segments are chosen.</summary>
/// <param name="Weights">Weights of the runs.</param>
/// <param name="InFits">The same inside each fit that has any.</param>
internal sealed record ModelContrast(double[] Weights, RowContrast[] InFits);

/// <summary>One class of one choice of readings: what counts and, if two codes can be compared, the model of it.</summary>
/// <param name="Class">The class; null: all segments.</param>
/// <param name="Counted">What counts.</param>
/// <param name="Model">The model; null: nothing to compare.</param>
internal sealed record ClassView(MeasureClass? Class, CountedReadings Counted, ClassModel? Model)
{
    /// <summary>Looks at a class; null if the route has no such segment.</summary>
    /// <param name="table">The day.</param>
    /// <param name="cells">Valid levels or all.</param>
    /// <param name="measureClass">The class.</param>
    /// <param name="terms">For the archive.</param>
    public static ClassView? Of(DayTable table, double[] cells, MeasureClass? measureClass, ComparisonTerms terms) =>
        Of(table, cells, measureClass, terms, [.. Enumerable.Range(0, table.Runs.Length)], table.SegmentsOf(measureClass), null);

    /// <summary>The same segments under another class, with what the archive lends to that.</summary>
    public ClassView As(MeasureClass measureClass, ComparisonTerms terms) =>
        new(measureClass, Counted, Model?.With(ArchiveLending.For(measureClass, terms.Archive, Math.Max(1, Counted.Segments.Length))));

    /// <summary>The same over some runs and segments only, with the drift column as told (null: by the rule).</summary>
    public static ClassView? Of(
        DayTable table,
        double[] cells,
        MeasureClass? measureClass,
        ComparisonTerms terms,
        int[] runs,
        int[] segments,
        bool? drift
    )
    {
        if (segments.Length == 0)
        {
            return null;
        }

        CountedReadings counted = CountedReadings.Of(table, cells, runs, segments);
        ArchivePrior? prior = ArchiveLending.For(measureClass, terms.Archive, Math.Max(1, counted.Segments.Length));
        return new ClassView(measureClass, counted, counted.Comparable ? ClassModel.Of(table, counted, prior, drift) : null);
    }
}
