using System.Collections.Immutable;
using FieldSession.State;

namespace FieldSession.Planning;

/// <summary>An order of runs to choose or to judge, with who and what drives each run where there is more than one.</summary>
/// <param name="Order">The runs by place.</param>
public sealed record OrderProposal(ImmutableList<Place> Order)
{
    /// <summary>The car of each run; null: one car.</summary>
    public ImmutableList<string>? Cars { get; init; }

    /// <summary>The driver of each run; null: one driver.</summary>
    public ImmutableList<string>? Drivers { get; init; }

    /// <summary>The runs as they are written in the plan.</summary>
    public override string ToString() => string.Join(' ', Order);

    /// <summary>The order that a plan holds.</summary>
    public static OrderProposal In(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new OrderProposal(plan.Order) { Cars = plan.CarOrder, Drivers = plan.DriverOrder };
    }
}
