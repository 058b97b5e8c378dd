using System.Collections.Immutable;

namespace FieldSession.Checking;

/// <summary>Contents page of the checks with typed values, in the order of a morning.</summary>
public static class CheckKinds
{
    /// <summary>Every kind.</summary>
    public static ImmutableArray<CheckKind> All { get; } =
        [new TyresCheck(), new PressureCheck(), new MassCheck(), new ChargeCheck(), new MeterCheck(), new WarmUpCheck(), new SpeedCheck()];

    /// <summary>The kind of a name; null: there is none.</summary>
    public static CheckKind? Of(string name) => All.FirstOrDefault(kind => Journal.Typed.Is(kind.Name, name));
}
