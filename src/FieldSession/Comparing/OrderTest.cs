using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>
/// The exact randomisation test of a pair's run means, an extra line beside the verdict (<see cref="OrderRandomisation"/>): it needs no normal scatter,
/// but takes no drift out and can say little with few runs (0.029 at best with 4 against 4), so that it is offered from 8 runs on.
/// </summary>
/// <param name="P">Share of all driving orders that part the means at least as far.</param>
/// <param name="Orders">How many orders there are with these numbers of runs.</param>
public sealed record OrderTest(double P, int Orders)
{
    private const int FewestRuns = 8;

    /// <summary>The test; null with fewer than 8 runs, with more orders than can be enumerated, or for runs side by side.</summary>
    internal static OrderTest? Of(PairLine pair)
    {
        ClassModel model = pair.Model;
        if (model.Design.Parallel || model.RunsOf(pair.First) + model.RunsOf(pair.Second) < FewestRuns)
        {
            return null;
        }

        return OrderRandomisation.Of(model.RunMeansOf(pair.First), model.RunMeansOf(pair.Second)) is { } test
            ? new OrderTest(test.P, test.Orders)
            : null;
    }
}
