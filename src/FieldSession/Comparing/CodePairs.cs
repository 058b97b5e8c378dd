using FieldSession.Statistics;

namespace FieldSession.Comparing;

/// <summary>Every pair out of three codes or more, from the one model of the class, with Holm over the pairs (<see cref="Holm"/>).</summary>
internal static class CodePairs
{
    /// <summary>The pairs of a view; empty for fewer than three codes.</summary>
    public static IReadOnlyList<PairEstimate> Of(ClassView? view, DayTable table, ComparisonTerms terms)
    {
        if (view?.Model is not ClassModel model || model.Counted.Codes.Length < 3)
        {
            return [];
        }

        int[] codes = model.Counted.Codes;
        PairEstimate[] pairs =
        [
            .. from first in codes
               from second in codes
               where first < second
               select new PairEstimate(
                   view.Class, table.Codes[first], table.Codes[second], PairLine.Of(view, first, second, terms)!.Overall, null),
        ];
        double[] adjusted = Holm.Adjust([.. pairs.Where(pair => pair.Overall.P is not null).Select(pair => pair.Overall.P!.Value)]);
        int next = 0;
        return [.. pairs.Select(pair => pair.Overall.P is null ? pair : pair with { PHolm = adjusted[next++] })];
    }
}
