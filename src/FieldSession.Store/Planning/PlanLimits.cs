using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Store.Planning;

/// <summary>Reads the table <c>[limits]</c>: what the checks hold the day against.</summary>
internal static class PlanLimits
{
    private const string Table = "limits.";
    private const string Reasons = "limits.reasons.";
    private const int LongestReason = 200;

    /// <summary>The names of all limits, with their table.</summary>
    public static IEnumerable<string> Names =>
        [.. LimitNames.Select(name => Table + name), .. LimitNames.Select(name => Reasons + name)];

    private static IEnumerable<string> LimitNames => AllLimits.InOrder.Select(held => held.Limit.Name);

    /// <summary>The limits of a plan; what it does not say keeps its default.</summary>
    public static Limits Of(PlanWords words, Troubles troubles)
    {
        Limits limits = new();
        foreach ((Limit limit, _, Func<Limits, double, Limits> set) in AllLimits.InOrder)
        {
            limits = words.Number(Table + limit.Name, limit.Lowest, limit.Highest, troubles) is { } number ? set(limits, number) : limits;
        }

        return limits with { Reasons = ReasonsOf(words, troubles) };
    }

    private static ImmutableSortedDictionary<string, string>? ReasonsOf(PlanWords words, Troubles troubles)
    {
        ImmutableSortedDictionary<string, string> reasons = ImmutableSortedDictionary<string, string>.Empty;
        foreach (string name in LimitNames)
        {
            if (words.Find(Table + name) is not { } changed)
            {
                continue;
            }

            if (words.Text(Reasons + name, LongestReason, troubles) is { } reason)
            {
                reasons = reasons.Add(name, reason);
            }
            else
            {
                changed.Warn(troubles, $"the limit '{name}' is changed without a reason", $"write it under [limits.reasons]: {name} = \"why\"");
            }
        }

        return reasons.IsEmpty ? null : reasons;
    }
}
