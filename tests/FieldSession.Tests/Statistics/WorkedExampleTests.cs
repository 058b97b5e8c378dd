using FieldSession.Statistics;

namespace FieldSession.Tests.Statistics;

/// <summary>The worked examples that stand beside the methods and are not in a reference case.</summary>
public class WorkedExampleTests
{
    // Holm 1979; the same three numbers in R: p.adjust(c(.01,.04,.03), "holm")
    [Fact]
    public void Holm_steps_down() => Assert.Equal([0.03, 0.06, 0.06], Holm.Adjust([0.01, 0.04, 0.03]).Select(p => Math.Round(p, 12)));

    // arithmetic by hand
    [Fact]
    public void Equal_values_share_their_rank() => Assert.Equal([1, 2.5, 2.5, 4], Midranks.Of([5, 7, 7, 9]));

    [Fact]
    public void Judges_who_rank_alike_agree_fully()
    {
        KendallW.Result concordance = KendallW.Of([[1, 2, 3, 4], [2, 3, 5, 7], [1, 4, 6, 9]])!.Value;
        Assert.Equal(1, concordance.W, 1e-12);
        Assert.Null(concordance.P);
    }

    [Fact]
    public void Judges_who_see_no_difference_give_no_concordance() => Assert.Null(KendallW.Of([[1, 1, 1], [2, 2, 2]]));

    // by hand: 2 (2/3) / (2/3 + 2/3 + 1)
    [Fact]
    public void A_constant_shift_lowers_kappa() => Assert.Equal(4 / 7.0, RaterAgreement.Of([1, 2, 3], [2, 3, 4], 0.5).QuadraticKappa!.Value, 1e-12);

    [Fact]
    public void A_small_matrix_is_inverted()
    {
        double[] matrix = [2, 1, 1, 2];
        PositiveDefinite.Invert(matrix, 2);
        Assert.Equal([0.666667, -0.333333, -0.333333, 0.666667], matrix.Select(x => Math.Round(x, 6)));
    }

    [Fact]
    public void A_matrix_that_is_not_positive_definite_is_refused() =>
        Assert.Throws<ArgumentException>(() => PositiveDefinite.Invert(new double[] { 1, 2, 2, 1 }, 2));

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

    [Fact]
    public void The_additive_fit_equals_plain_least_squares_on_a_table_with_gaps()
    {
        double[] cells = [51, 60.5, double.NaN, 63, 52.5, 60, 66, double.NaN, 50, 62, 65, 64.5];
        AdditiveFit fit = AdditiveFit.Of(3, 4, cells);
        int[] present = [.. Enumerable.Range(0, 12).Where(at => !double.IsNaN(cells[at]))];
        List<double[]> columns = [.. Enumerable.Range(0, 3).Select(row => present.Select(at => at / 4 == row ? 1.0 : 0).ToArray())];
        columns.AddRange(Enumerable.Range(1, 3).Select(column => present.Select(at => at % 4 == column ? 1.0 : 0).ToArray()));
        LeastSquares plain = LeastSquares.Fit(columns, [.. present.Select(at => cells[at])]);
        Assert.Equal(plain.Rss, fit.Rss, 1e-10);
        Assert.Equal(plain.Coefficients[0], fit.Fitted(0, 0), 1e-10);
        double contrast = plain.StandardError(0)!.Value / plain.ResidualSd!.Value;
        Assert.Equal(contrast * contrast, fit.Variance([1, 0, 0], fit.Share([0])), 1e-10);
        Assert.Equal(contrast * contrast, fit.Leverage(0, fit.Share([0])), 1e-10);
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

    [Fact]
    public void Drawn_patterns_come_near_the_enumeration()
    {
        double[] differences = [1, -0.5, 2, 0.5, 1.5, 3, -1, 0.5];
        Random lot = new(7);
        Assert.Equal(SignFlip.Exact(differences).TwoSided, SignFlip.Drawn(differences, () => lot.Next(2) == 0, 20000).TwoSided, 0.015);
    }

    [Fact]
    public void A_column_that_repeats_the_others_is_refused() =>
        Assert.Throws<ArgumentException>(() => LeastSquares.Fit([[1, 1, 1], [1, 0, 0], [0, 1, 1]], [1, 2, 3]));
}
