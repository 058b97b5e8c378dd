using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// The one model of all codes over a class of segments: an additive fit of runs and segments inside each code fills the gaps, the means of the
/// fitted runs go through the run design (docs/method.md). Every difference of the class is a line drawn from it.
/// </summary>
internal sealed class ClassModel
{
    private readonly AdditiveFit[] _fits;
    private readonly int[] _starts;

    private ClassModel(DayTable table, Counted counted, ArchivePrior? prior, bool? drift)
    {
        Counted = counted;
        Runs = [.. counted.RunsByCode.SelectMany(runs => runs).Select(row => table.Runs[row])];
        _fits = [.. counted.RunsByCode.Select(runs => AdditiveFit.Of(runs.Length, counted.Segments.Length, Cells(table, counted, runs)))];
        _starts = [.. counted.RunsByCode.Select((_, k) => counted.RunsByCode.Take(k).Sum(runs => runs.Length))];
        AllColumns = [.. Enumerable.Range(0, counted.Segments.Length)];
        RunMeans = [.. _fits.SelectMany(fit => Means(fit, AllColumns))];
        Design = RunDesign.Of(Runs, counted.Codes.Length, table.TimesKnown, drift);
        Scatter = Weigh(prior);
    }

    /// <summary>What entered.</summary>
    public Counted Counted { get; }

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

    /// <summary>The fits inside each code, as <see cref="Counted.Codes"/>.</summary>
    public IReadOnlyList<AdditiveFit> Fits => _fits;

    /// <summary>Fits what counts.</summary>
    /// <param name="table">The day.</param>
    /// <param name="counted">What counts, comparable.</param>
    /// <param name="prior">The archive's offer.</param>
    /// <param name="drift">Whether drift is in; null: by the rule.</param>
    public static ClassModel Of(DayTable table, Counted counted, ArchivePrior? prior, bool? drift) => new(table, counted, prior, drift);

    /// <summary>Levels of some runs on the compared segments, row by row.</summary>
    public static double[] Cells(DayTable table, Counted counted, ReadOnlySpan<int> runs)
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

    /// <summary>Weights of the runs in "first minus second".</summary>
    public double[] Weights(int first, int second)
    {
        double[] contrast = new double[Math.Max(first, second) + 1];
        contrast[first] = 1;
        contrast[second] = -1;
        return Design.Columns.Weights(contrast);
    }

    /// <summary>A difference over some compared segments, each with the same weight (docs/method.md, "Any line").</summary>
    /// <param name="weights">From <see cref="Weights"/>.</param>
    /// <param name="columns">Places among the compared segments.</param>
    /// <param name="marginDb">Margin of equivalence, dB.</param>
    public Estimate Line(double[] weights, ReadOnlySpan<int> columns, double marginDb)
    {
        double difference = 0;
        double readingShare = 0;
        double square = 0;
        for (int k = 0; k < _fits.Length; k++)
        {
            AdditiveFit fit = _fits[k];
            ReadOnlySpan<double> own = weights.AsSpan(_starts[k], fit.Rows);
            readingShare += fit.Variance(own, fit.Share(columns));
            double columnMean = fit.ColumnMean(columns);
            for (int row = 0; row < own.Length; row++)
            {
                difference += own[row] * (fit.RowEffect(row) + columnMean);
                square += own[row] * own[row];
            }
        }

        return Lines.Estimate(difference, square, readingShare, Scatter, marginDb);
    }

    private static IEnumerable<double> Means(AdditiveFit fit, int[] columns)
    {
        double columnMean = fit.ColumnMean(columns);
        return Enumerable.Range(0, fit.Rows).Select(row => fit.RowEffect(row) + columnMean);
    }

    private Scatter Weigh(ArchivePrior? prior)
    {
        double rss = Design.Df > 0
            ? RoundingNoise.Cleared(Design.Columns.Rss(RunMeans), Runs.Length, RunMeans.Max(Math.Abs))
            : 0;
        double kbar = Design.Df > 0 ? ReadingShareOfResiduals() / Design.Df : 1.0 / AllColumns.Length;
        return Scatter.Of(rss, Design.Df, _fits.Sum(fit => fit.Rss), _fits.Sum(fit => fit.Df), kbar, prior);
    }

    /// <summary>tr(Q C): the trace of the covariance of the run means less what the design takes up.</summary>
    private double ReadingShareOfResiduals()
    {
        double trace = 0;
        for (int k = 0; k < _fits.Length; k++)
        {
            AdditiveFit fit = _fits[k];
            ColumnShare share = fit.Share(AllColumns);
            double[] unit = new double[fit.Rows];
            for (int row = 0; row < fit.Rows; row++)
            {
                unit[row] = 1;
                trace += fit.Variance(unit, share);
                unit[row] = 0;
            }

            foreach (double[] column in Design.Columns.Basis)
            {
                trace -= fit.Variance(column.AsSpan(_starts[k], fit.Rows), share);
            }
        }

        return trace;
    }
}
