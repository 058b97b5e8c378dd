using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>Something that is rated from the seats.</summary>
/// <param name="Name">Its name, as it is typed.</param>
/// <param name="Group">noise, ride, steering or handling; empty: an attribute of the plan's own.</param>
/// <param name="Meaning">What to listen or feel for; empty: an attribute of the plan's own.</param>
public sealed record RatedAttribute(string Name, string Group = "", string Meaning = "")
{
    /// <summary>What is rated where the plan names nothing (from memory; our own words).</summary>
    public static ImmutableArray<RatedAttribute> Standard { get; } =
    [
        new("coarse roar", Noise, StateWords.LowRumbleOfRoughSurface),
        new("cavity ring", Noise, StateWords.HollowNoteAfterBump),
        new("pattern whine", Noise, StateWords.SteadyToneThatClimbsWithSpeed),
        new("cyclic beat", Noise, StateWords.GrowlThatRisesAndFalls),
        new("impact boom", Noise, StateWords.PressureInEarsOverJoint),
        new("slap", Noise, StateWords.SharpCrackOfJoint),
        new("impact harshness", Ride, StateWords.EdgeOfBumpInSeatAndFloor),
        new("after-shake", Ride, StateWords.WhatStillTremblesAfterBump),
        new("plushness", Ride, StateWords.HowSmallBumpsAreSwallowed),
        new("on-centre", Steering, StateWords.HowSurelyItHoldsStraightAhead),
        new("effort", Steering, StateWords.WeightOfWheelInHand),
        new("linearity", Steering, StateWords.WhetherMoreWheelGivesEvenlyMoreTurn),
        new("lane-change settle", Handling, StateWords.HowFastItIsCalmAfterChangeOfLane),
    ];

    private const string Noise = "noise";
    private const string Ride = "ride";
    private const string Steering = "steering";
    private const string Handling = "handling";

    /// <summary>Whether the words of control fit it better than those of disturbance.</summary>
    public bool IsControl => Group is Steering or Handling;

    /// <summary>What a plan's crew rates: the plan's list, or the standard one where it has none.</summary>
    public static ImmutableArray<RatedAttribute> Of(Plan? plan) =>
        plan is { Attributes.Count: > 0 } ? [.. plan.Attributes.Select(name => OfTheCrew(name.Trim()))] : Standard;

    /// <summary>
    /// The attribute that typed words call: by its whole name, or by words that begin words of one name only. Null: none, or several.
    /// </summary>
    public static RatedAttribute? Called(string typed, Plan? plan)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ImmutableArray<RatedAttribute> all = Of(plan);
        RatedAttribute[] fitting = [.. all.Where(a => typed.Length > 0 && typed.Split(' ').All(word => Begins(a.Name, word)))];
        return all.FirstOrDefault(a => IsSame(a.Name, typed)) ?? (fitting.Length == 1 ? fitting[0] : null);
    }

    // A plan that says "roar" means the standard "coarse roar" and keeps its own word for it.
    private static RatedAttribute OfTheCrew(string name) =>
        (
            Standard.FirstOrDefault(s => IsSame(s.Name, name))
            ?? Standard.FirstOrDefault(s => s.Name.Split(' ').Any(part => IsSame(part, name)))
        )
            is { } known
            ? known with
            {
                Name = name,
            }
            : new RatedAttribute(name);

    private static bool IsSame(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    private static bool Begins(string name, string word) =>
        name.Split(' ', '-').Append(name).Any(part => part.StartsWith(word, StringComparison.OrdinalIgnoreCase));
}
