using FieldSession.Statistics;

namespace FieldSession.Tests.Statistics;

public class UnevenTrialsTests
{
    [Fact]
    public void The_worked_example_by_hand()
    {
        Assert.Equal(5.0 / 6, UnevenTrials.PAtLeast(1, [0.5, 2.0 / 3]), 14);
        Assert.Equal(1.0 / 3, UnevenTrials.PAtLeast(2, [0.5, 2.0 / 3]), 14);
        Assert.Equal(1, UnevenTrials.PAtLeast(0, [0.5, 2.0 / 3]), 14);
        Assert.Equal(0, UnevenTrials.PAtLeast(3, [0.5, 2.0 / 3]));
    }

    // with one chance of one half it is the exact binomial, which is held against ISO 5495 and R elsewhere
    [Fact]
    public void With_one_chance_for_all_it_is_the_binomial()
    {
        double[] even = [.. Enumerable.Repeat(0.5, 30)];
        Assert.All(Enumerable.Range(0, 31), hits => Assert.Equal(ExactBinomial.POneSided(hits, 30), UnevenTrials.PAtLeast(hits, even), 12));
    }

    // summed in exact fractions: k = 8..10 of choose(10, k) (2/3)^k (1/3)^(10-k)
    [Fact]
    public void Two_chances_in_three_ten_times() =>
        Assert.Equal(0.2991413910481126, UnevenTrials.PAtLeast(8, [.. Enumerable.Repeat(2.0 / 3, 10)]), 12);
}
