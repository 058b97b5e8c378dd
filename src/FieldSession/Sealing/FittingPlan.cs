using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Sealing;

/// <summary>What a key knows of the day that its codes were drawn for, so that its custodian can fit by the key alone.</summary>
/// <param name="Number">Number of the fitting, from 1.</param>
/// <param name="PlanDigest">SHA-256 of the plan at sealing, 64 hex digits.</param>
/// <param name="Order">The order of all runs by place.</param>
/// <param name="CarOrder">The car of each run; null: one car.</param>
public sealed record FittingPlan(int Number, string PlanDigest, ImmutableList<Place> Order, ImmutableList<string>? CarOrder)
{
    /// <summary>The run that the fitting begins with, from 1.</summary>
    public int FirstRun { get; init; } = 1;

    /// <summary>The codes of earlier fittings.</summary>
    public ImmutableList<SpecCode> EarlierCodes { get; init; } = [];

    /// <summary>What was on each car when the codes were drawn; empty: nothing that is known.</summary>
    public ImmutableList<SetOnCar> OnCars { get; init; } = [];

    /// <summary>The car of a run; null: one car.</summary>
    /// <param name="run">Number of the run, from 1.</param>
    public string? CarOf(int run) => CarOrder?.ElementAtOrDefault(run - 1);
}

/// <summary>The set of tyres that is on a car. Secret until the reveal.</summary>
/// <param name="Car">The car; null: there is one.</param>
/// <param name="Code">The code that it was driven as.</param>
/// <param name="Spec">Its spec; null: only the key of that fitting can tell.</param>
public sealed record SetOnCar(string? Car, SpecCode Code, string? Spec)
{
    /// <summary>The code alone: it tells nothing.</summary>
    public override string ToString() => Code.ToString();
}

/// <summary>One line of the key: which spec a code means. Secret until the reveal.</summary>
/// <param name="Code">The blind code.</param>
/// <param name="Spec">The spec behind it.</param>
/// <param name="Mark">The mark drawn for the tyres of the spec; null: the spec's name is the mark.</param>
public sealed record KeyLine(SpecCode Code, string Spec, string? Mark = null)
{
    /// <summary>What is written under the tape of the tyres.</summary>
    public string UnderTape => Mark ?? Spec;

    /// <summary>The code alone: a line of the key that slips into a message tells nothing.</summary>
    public override string ToString() => Code.ToString();
}
