using FieldSession.Statistics;

namespace FieldSession.Tests.Statistics;

/// <summary>The worked examples that are beside the methods and are not in a reference case.</summary>
public class WorkedExampleTests
{
    // Holm 1979; the same three numbers in R: p.adjust(c(.01,.04,.03), "holm")
    [Fact]
    public void Holm_steps_down() => Assert.Equal([0.03, 0.06, 0.06], Holm.Adjust([0.01, 0.04, 0.03]).Select(p => Math.Round(p, 12)));

    // a quantile put back into the tail must give the tail it was asked for
    [Theory]
    [InlineData(0.3)]
    [InlineData(29.9)]
    [InlineData(30)]
    [InlineData(400)]
    [InlineData(36000)]
    public void A_quantile_leads_back_to_its_tail(double df)
    {
        foreach (double tail in new[] { 0.45, 0.2, 0.1, 0.025, 0.0001, 1e-6 })
        {
            Assert.Equal(1, StudentT.UpperTail(StudentT.Quantile(1 - tail, df), df) / tail, 1e-9);
        }
    }

    // arithmetic by hand
    [Fact]
    public void Equal_values_share_their_rank() => Assert.Equal([1, 2.5, 2.5, 4], Midranks.Of([5, 7, 7, 9]));

    [Fact]
    public void Judges_who_rank_alike_agree_fully()
    {
        KendallW.Result concordance = KendallW
            .Of([
                [1, 2, 3, 4],
                [2, 3, 5, 7],
                [1, 4, 6, 9],
            ])!
            .Value;
        Assert.Equal(1, concordance.W, 1e-12);
        Assert.Null(concordance.P);
    }

    [Fact]
    public void Judges_who_see_no_difference_give_no_concordance() =>
        Assert.Null(
            KendallW.Of([
                [1, 1, 1],
                [2, 2, 2],
            ])
        );

    // by hand: 2 (2/3) / (2/3 + 2/3 + 1)
    [Fact]
    public void A_constant_shift_lowers_kappa() =>
        Assert.Equal(4 / 7.0, RaterAgreement.Of([1, 2, 3], [2, 3, 4], 0.5).QuadraticKappa!.Value, 1e-12);

    [Fact]
    public void A_small_matrix_is_solved_and_inverted()
    {
        double[] factor = [2, 0, 1, 2];
        PositiveDefinite.Factor(factor, 2);
        double[] right = [2, 1];
        PositiveDefinite.Solve(factor, right);
        Assert.Equal([1, 0], right.Select(x => Math.Round(x, 12)));
        Assert.Equal([0.666667, -0.333333, -0.333333, 0.666667], PositiveDefinite.Inverse(factor, 2).Select(x => Math.Round(x, 6)));
    }

    [Fact]
    public void A_matrix_times_its_inverse_is_one_whatever_its_size()
    {
        const int n = 37;
        Random lot = new(5);
        double[] matrix = new double[n * n];
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                matrix[i * n + j] = matrix[j * n + i] = i == j ? n : lot.NextDouble();
            }
        }

        double[] factor = [.. matrix];
        PositiveDefinite.Factor(factor, n);
        double[] inverse = PositiveDefinite.Inverse(factor, n);
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                Assert.Equal(i == j ? 1 : 0, Enumerable.Range(0, n).Sum(k => matrix[i * n + k] * inverse[k * n + j]), 1e-12);
            }
        }
    }

    [Fact]
    public void A_matrix_that_is_not_positive_definite_is_refused() =>
        Assert.Throws<ArgumentException>(() => PositiveDefinite.Factor(new double[] { 1, 2, 2, 1 }, 2));

    [Fact]
    public void Rounding_left_over_counts_as_nothing()
    {
        Assert.Equal(0, RoundingNoise.Cleared(1e-28, 30, 60));
        Assert.Equal(0.25, RoundingNoise.Cleared(0.25, 30, 60));
    }

    [Fact]
    public void Gaps_are_filled_by_row_and_column()
    {
        AdditiveFit fit = AdditiveFit.Of(2, 3, [1, 2, double.NaN, 3, double.NaN, 5]);
        Assert.Equal(3, fit.Fitted(0, 2), 1e-12);
        Assert.Equal(4, fit.Fitted(1, 1), 1e-12);
        Assert.Equal(0, fit.Df);
    }

    // plain least squares on dummy columns is the reference; the same table lying and standing takes both ways of elimination
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_additive_fit_equals_plain_least_squares_on_a_table_with_gaps(bool standing)
    {
        double nan = double.NaN;
        double[] lying = [51, 60.5, nan, 63, 52.5, 60, 66, nan, 50, 62, 65, 64.5, nan, nan, 64, nan];
        double[] cells = standing
            ? [.. Enumerable.Range(0, 16).Select(at => lying[at % 4 * 4 + at / 4]), nan, 61, nan, nan]
            : [.. lying[..12]];
        (int rows, int columns) = standing ? (5, 4) : (3, 4);
        int[] present = [.. Enumerable.Range(0, cells.Length).Where(at => !double.IsNaN(cells[at]))];
        List<double[]> design = [.. Enumerable.Range(0, rows).Select(row => present.Select(at => at / columns == row ? 1.0 : 0).ToArray())];
        design.AddRange(
            Enumerable.Range(1, columns - 1).Select(column => present.Select(at => at % columns == column ? 1.0 : 0).ToArray())
        );
        LeastSquares plain = LeastSquares.Fit(design, [.. present.Select(at => cells[at])]);

        AdditiveFit fit = AdditiveFit.Of(rows, columns, cells);
        AdditiveErrors errors = AdditiveErrors.Of(fit);

        double firstCell = Math.Pow(plain.StandardError(0)!.Value / plain.ResidualSd!.Value, 2);
        double[] first = [1, .. new double[rows - 1]];
        Assert.Equal(plain.Rss, fit.Rss, 1e-9);
        Assert.Equal(plain.Coefficients[0], fit.Fitted(0, 0), 1e-10);
        Assert.Equal(firstCell, errors.Leverage(0, 0), 1e-10);
        Assert.Equal(firstCell, errors.Contrast(first).Variance([0]), 1e-10);
        int[] all = [0, 1, 2, 3];
        double mean = Enumerable
            .Range(0, rows)
            .Sum(row => errors.Contrast([.. Enumerable.Range(0, rows).Select(r => r == row ? 1.0 : 0)]).Variance(all));
        Assert.Equal(mean, errors.OfAllRowMeans(), 1e-10);
        Assert.Equal(all.Average(column => fit.Fitted(0, column)), errors.Contrast(first).Value(all), 1e-10);
        Assert.Equal(errors.Contrast(first).Value(all), errors.Contrast(first).ValueOverAll, 1e-12);
        Assert.Equal(errors.Contrast(first).Variance(all), errors.Contrast(first).VarianceOverAll(), 1e-12);
        Assert.Equal(errors.OfColumns(all), errors.OfAllColumns, 1e-12);
        // degrees of freedom: the leverages of the cells add up to the number of columns of the design
        Assert.Equal(design.Count, present.Sum(at => errors.Leverage(at / columns, at % columns)), 1e-9);
    }

    [Fact]
    public void A_complete_table_has_the_variances_of_the_books()
    {
        AdditiveErrors errors = AdditiveErrors.Of(AdditiveFit.Of(4, 10, [.. Enumerable.Range(0, 40).Select(i => (double)(i * i % 7))]));
        Assert.Equal(1 / 4.0 + 1 / 10.0 - 1 / 40.0, errors.Leverage(2, 3), 1e-12);
        Assert.Equal(4 / 10.0, errors.OfAllRowMeans(), 1e-12);
        RowContrast contrast = RowContrast.Of(errors, [0.5, 0.5, -0.5, -0.5]);
        Assert.Equal((1.0, 1 / 10.0), (contrast.SumOfSquares, Math.Round(contrast.Variance([1, 4]), 12)));
    }

    // every printed table of t
    [Fact]
    public void Limits_of_intervals_are_those_of_printed_tables()
    {
        (double t975, double t95) = new StudentLimits().Of(4);
        Assert.Equal((2.7764, 2.1318), (Math.Round(t975, 4), Math.Round(t95, 4)));
    }

    // a power put back into the test must give the noncentrality it came from
    [Theory]
    [InlineData(0.9)]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(130)]
    public void A_noncentrality_leads_back_to_its_power(double df)
    {
        foreach (double power in new[] { 0.06, 0.3, 0.8, 0.99 })
        {
            if (NoncentralT.NoncentralityForPower(power, df, 0.05) is { } found)
            {
                Assert.Equal(power, NoncentralT.TwoSidedPower(found, df, 0.05), 1e-9);
            }
        }
    }

    [Fact]
    public void A_power_that_no_effect_reaches_is_unknown()
    {
        Assert.Null(NoncentralT.NoncentralityForPower(0.99, 0.5, 0.05));
        Assert.Null(NoncentralT.NoncentralityForPower(0.04, 4, 0.05));
    }

    [Fact]
    public void A_contrast_of_two_groups_is_the_difference_of_their_means()
    {
        OrthonormalColumns design = new(4);
        Assert.True(design.TryAdd([1, 1, 0, 0]));
        Assert.True(design.TryAdd([0, 0, 1, 1]));
        Assert.False(design.TryAdd([1, 1, 1, 1]));
        Assert.Equal([0.5, 0.5, -0.5, -0.5], design.Weights([1, -1]).Select(w => Math.Round(w, 12)));
    }

    // by hand: of the 20 ways to take three of six, only the true one and its mirror part the means that far
    [Fact]
    public void Two_groups_wholly_apart_are_two_orders_of_twenty()
    {
        Assert.Equal(new OrderRandomisation.Result(0.1, 20), OrderRandomisation.Of([1, 2, 3], [4, 5, 6])!.Value);
        Assert.Equal(1, OrderRandomisation.Of([1, 4], [2, 3])!.Value.P);
        Assert.Equal(12_870, OrderRandomisation.Of(new double[8], new double[8])!.Value.Orders);
        Assert.Null(OrderRandomisation.Of(new double[9], new double[9]));
        Assert.Null(OrderRandomisation.Of([], [1]));
    }

    [Fact]
    public void Drawn_patterns_come_near_the_enumeration()
    {
        double[] differences = [1, -0.5, 2, 0.5, 1.5, 3, -1, 0.5];
        Random lot = new(7);
        Assert.Equal(SignFlip.Exact(differences).TwoSided, SignFlip.Drawn(differences, () => lot.Next(2) == 0, 20000).TwoSided, 0.015);
    }

    [Fact]
    public void A_column_that_repeats_the_others_is_refused() =>
        Assert.Throws<ArgumentException>(() =>
            LeastSquares.Fit(
                [
                    [1, 1, 1],
                    [1, 0, 0],
                    [0, 1, 1],
                ],
                [1, 2, 3]
            )
        );
}
