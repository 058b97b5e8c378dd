using FieldSession.Measures;

namespace FieldSession.State;

/// <summary>
/// Whom and what an example names: people, codes, attribute, car and units of the study itself, so that it can be typed as it is. Codes
/// come in the order in which the study lists them, which says nothing of what they are.
/// </summary>
/// <param name="Driver">The first of the crew.</param>
/// <param name="Person">The last of the crew, who rates and predicts in examples.</param>
/// <param name="Code">A code.</param>
/// <param name="Other">Another code.</param>
/// <param name="Attribute">Something that is rated.</param>
/// <param name="Car">The car; X where the plan names none.</param>
/// <param name="Units">The units of the plan.</param>
public sealed record ExampleNames(
    string Driver,
    string Person,
    string Code,
    string Other,
    string Attribute,
    string Car = "X",
    UnitSystem Units = UnitSystem.Metric
)
{
    /// <summary>Those of the documents.</summary>
    public static ExampleNames OfDocuments { get; } = new("Ro", "Tam", "862", "417", "roar");

    /// <summary>Those of a study; what it does not have yet is taken from the documents.</summary>
    public static ExampleNames In(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        ExampleNames usual = OfDocuments;
        string[] codes = [.. study.Codes.Select(code => code.Digits)];
        return study.Plan is not { Crew.Count: > 0 } plan
            ? usual
            : new ExampleNames(
                plan.Crew[0].Name,
                plan.Crew[^1].Name,
                codes.ElementAtOrDefault(0) ?? usual.Code,
                codes.ElementAtOrDefault(1) ?? usual.Other,
                RatedAttribute.Of(plan)[0].Name,
                plan.Cars?.FirstOrDefault() ?? usual.Car,
                plan.Units
            );
    }
}
