using System.Collections.Immutable;
using FieldSession.Comparing;
using FieldSession.State;
using FieldSession.Tests.Making;

namespace FieldSession.Tests.Rating;

/// <summary>Days with something for the ear: run 1 on the reference 417, run 2 on 862, now at the stop after it.</summary>
internal static class AnEarDay
{
    public static ADay AtTheStop(params ImmutableList<string> attributes) =>
        new ADay(ADay.ShortPlan with { Attributes = attributes })
            .Ready()
            .Typed("run 417", "5860", "6365", "714", "run 862", "5961", "6466", "725");

    public static EarFindings Found(ADay day) => EarFindings.Of(day.Study, StudyTerms.Of(day.Study));

    /// <summary>A set of so many trials of which so many choose 862, all by Ro, who drove and saw neither meter nor comparison.</summary>
    public static ADay Chosen(string trials, int made, int of862)
    {
        ADay day = AtTheStop().Typed(trials);
        for (int trial = 1; trial <= made; trial++)
        {
            bool stands862First = day.Study.ChoiceSets[^1].CodeAt(trial, 1).Digits == "862";
            day.Typed($"choose Ro {(stands862First == trial <= of862 ? "first" : "second")} unseen");
        }

        return day;
    }

    /// <summary>A triangle set of so many trials with so many right.</summary>
    public static ADay Triangles(int trials, int right)
    {
        ADay day = AtTheStop().Typed($"trials 417 862 n={trials} kind=triangle which is the odd one");
        for (int trial = 1; trial <= trials; trial++)
        {
            ChoiceSet set = day.Study.ChoiceSets[0];
            int odd = Enumerable.Range(1, 3).Single(place => set.IsOdd(trial, place));
            day.Typed($"choose Ro {(trial <= right ? odd : (odd % 3) + 1)} unseen");
        }

        return day;
    }
}
