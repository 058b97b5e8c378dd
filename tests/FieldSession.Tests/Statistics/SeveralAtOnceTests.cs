using FieldSession.Comparing;
using FieldSession.Statistics;

namespace FieldSession.Tests.Statistics;

/// <summary>Several comparisons at once and several looks at growing data, against published tables and R packages.</summary>
public sealed class SeveralAtOnceTests
{
    // two-sided 5 % points for 2, 3, 4 and 5 treatments against a control, equal numbers (correlation 0.5):
    // C. W. Dunnett, Biometrics 20 (1964), table II, two decimals, from memory; it prints 3.03 3.29 3.48 3.62 for 5 degrees of freedom
    [Theory]
    [InlineData(5, new[] { 3.03, 3.29, 3.48, 3.62 })]
    [InlineData(10, new[] { 2.57, 2.76, 2.89, 2.99 })]
    [InlineData(20, new[] { 2.38, 2.54, 2.65, 2.73 })]
    [InlineData(60, new[] { 2.27, 2.41, 2.51, 2.58 })]
    [InlineData(double.PositiveInfinity, new[] { 2.21, 2.35, 2.44, 2.51 })]
    public void Candidates_against_one_control_have_the_limits_of_Dunnetts_table(double df, double[] limits)
    {
        for (int candidates = 2; candidates <= 5; candidates++)
        {
            Assert.Equal(limits[candidates - 2], ManyToOneT.Limit(0.05, Equal(candidates), df), 0.0051);
        }
    }

    // R 4.2.2, mvtnorm 1.1-3, pmvt (GenzBretz, absolute error 2e-6) and uniroot
    [Theory]
    [InlineData(2, new[] { 5.41785, 6.06483, 6.51293, 6.85234 })]
    [InlineData(3, new[] { 3.86651, 4.26259, 4.53831, 4.74800 })]
    [InlineData(5, new[] { 3.03024, 3.29314, 3.47582, 3.61516 })]
    public void The_same_limits_to_more_digits_are_those_of_R_mvtnorm(double df, double[] limits)
    {
        for (int candidates = 2; candidates <= 5; candidates++)
        {
            Assert.Equal(limits[candidates - 2], ManyToOneT.Limit(0.05, Equal(candidates), df), 0.0005);
        }
    }

    // R multcomp, glht with Dunnett contrasts on its data set 'recovery' (P. H. Westfall and others, Multiple Comparisons and Multiple
    // Tests, 1999):
    // 20 patients under the old blanket, 3, 3 and 15 under the new ones, 37 degrees of freedom; t and p as its manual prints them, from
    // memory
    [Theory]
    [InlineData(1.330, 0.456)]
    [InlineData(4.656, 0.0001)]
    [InlineData(1.884, 0.182)]
    public void Unequal_numbers_have_the_p_of_R_multcomps_example(double t, double p)
    {
        double[] loadings = [.. new[] { 3.0, 3, 15 }.Select(patients => Math.Sqrt(patients / (patients + 20)))];
        Assert.Equal(p, ManyToOneT.Tail(t, loadings, 37), p < 0.001 ? 0.00005 : 0.0005);
    }

    [Fact]
    public void One_comparison_alone_is_students_t_and_uncorrelated_normal_ones_multiply()
    {
        Assert.Equal(StudentT.TwoSidedP(2.3, 4), ManyToOneT.Tail(2.3, [0.7], 4), 1e-6);
        double one = 1 - StudentT.TwoSidedP(2.3, double.PositiveInfinity);
        Assert.Equal(1 - one * one * one, ManyToOneT.Tail(2.3, [0, 0, 0], double.PositiveInfinity), 1e-7);
    }

    [Fact]
    public void Loadings_give_the_correlations_back_and_what_has_none_is_said()
    {
        double[] loadings = OneFactor.Loadings(
            new[,]
            {
                { 1, 0.48, 0.42 },
                { 0.48, 1, 0.56 },
                { 0.42, 0.56, 1 },
            }
        )!;
        Assert.Equal([0.6, 0.8, 0.7], loadings.Select(loading => Math.Round(loading, 6)));
        Assert.Null(
            OneFactor.Loadings(
                new[,]
                {
                    { 1, 0.9, 0.1, 0.1 },
                    { 0.9, 1, 0.1, 0.1 },
                    { 0.1, 0.1, 1, 0.9 },
                    { 0.1, 0.1, 0.9, 1 },
                }
            )
        );
    }

    // K. K. G. Lan and D. L. DeMets, Biometrika 70 (1983), five equal looks, 2.5 % on each side; values from memory, as the ldbounds
    // program of D. M. Reboussin and others (Controlled Clinical Trials 21, 2000) prints them
    [Fact]
    public void Five_looks_have_the_published_limits_of_the_OBrien_Fleming_and_the_Pocock_kind_of_spending()
    {
        double[] information = [0.2, 0.4, 0.6, 0.8, 1];
        double Late(double t) => 2 * StudentT.TwoSidedP(2.2414027 / Math.Sqrt(t), double.PositiveInfinity);
        double Even(double t) => 0.05 * Math.Log(1 + (Math.E - 1) * t);
        AssertLimits(
            [4.8769, 3.3569, 2.6803, 2.2898, 2.0310],
            SpendingBoundary.Limits(information, [.. information.Select(Late)], isTwoSided: true)
        );
        AssertLimits(
            [2.4380, 2.4268, 2.4101, 2.3966, 2.3859],
            SpendingBoundary.Limits(information, [.. information.Select(Even)], isTwoSided: true)
        );
    }

    // C. Jennison and B. W. Turnbull, Group Sequential Methods (2000), tables 2.1 and 2.3, two-sided 5 %; from memory
    [Theory]
    [InlineData(2, 2.178, 1.977)]
    [InlineData(3, 2.289, 2.004)]
    [InlineData(4, 2.361, 2.024)]
    [InlineData(5, 2.413, 2.040)]
    public void The_constants_of_Pocock_and_of_OBrien_and_Fleming_spend_5_percent(int looks, double pocock, double fleming)
    {
        double[] information = [.. Enumerable.Range(1, looks).Select(look => (double)look)];
        Assert.Equal(0.05, SpendingBoundary.Crossed(information, [.. information.Select(_ => pocock)], isTwoSided: true).Sum(), 0.0002);
        Assert.Equal(
            0.05,
            SpendingBoundary
                .Crossed(information, [.. information.Select(look => fleming * Math.Sqrt(looks / look))], isTwoSided: true)
                .Sum(),
            0.0002
        );
    }

    // own arithmetic, the same recursion by the trapezoid rule with 401 points in another language; 4.5 %, then nine tenths of what is left
    [Theory]
    [InlineData(new[] { 4 }, 4.5, 4.5)]
    [InlineData(new[] { 4, 6 }, 1.354, 1.551)]
    [InlineData(new[] { 4, 8 }, 0.949, 1.091)]
    [InlineData(new[] { 4, 6, 8 }, 0.273, 0.347)]
    [InlineData(new[] { 8, 10 }, 1.943, 2.184)]
    public void A_lengthened_order_needs_a_smaller_p(int[] ends, double differencePercent, double equivalencePercent)
    {
        WordLevels now = new Looks(ends).Now;
        Assert.Equal(differencePercent, 100 * now.Difference, 0.002);
        Assert.Equal(equivalencePercent, 100 * now.Equivalence, 0.002);
    }

    // worked by hand: 0.01 * 2, 0.02 * 2, then 0.04 * 1 because the first two are both rejected
    [Fact]
    public void Of_two_questions_that_cant_both_be_answered_wrongly_only_one_counts()
    {
        (double[] first, double[] second) = HolmOfTwos.Adjust([0.01, 0.04], [0.02, 0.5]);
        Assert.Equal([0.02, 0.04], first);
        Assert.Equal([0.04, 0.5], second);
        (int[] ofFirst, int[] ofSecond) = HolmOfTwos.Divisors([0.01 / 0.05, 0.04 / 0.05], [0.02 / 0.05, 0.5 / 0.05]);
        Assert.Equal([2, 1], ofFirst);
        Assert.Equal([2, 1], ofSecond);
    }

    // all the first tests hold and none of the second: no more than k of 2 k can be true, so nothing is gained by steps
    [Fact]
    public void Steps_stop_at_the_first_that_is_not_below_its_level()
    {
        (int[] first, int[] second) = HolmOfTwos.Divisors([0.2, 0.6, 2], [5, 6, 7]);
        Assert.Equal([3, 3, 3], first);
        Assert.Equal([3, 3, 3], second);
    }

    [Fact]
    public void Looks_never_spend_more_than_5_percent_together()
    {
        int[] ends = [4, 5, 6, 8, 12, 20];
        double[] limits =
        [
            .. Enumerable
                .Range(1, ends.Length)
                .Select(count => StudentT.Quantile(1 - new Looks(ends[..count]).Now.Difference / 2, double.PositiveInfinity)),
        ];
        Assert.InRange(SpendingBoundary.Crossed([.. ends.Select(end => (double)end)], limits, isTwoSided: true).Sum(), 0.0499, 0.05);
    }

    private static double[] Equal(int candidates) => [.. Enumerable.Repeat(Math.Sqrt(0.5), candidates)];

    private static void AssertLimits(double[] expected, double[] found)
    {
        Assert.Equal(expected.Length, found.Length);
        Assert.All(expected.Zip(found), pair => Assert.Equal(pair.First, pair.Second, 0.0002));
    }
}
