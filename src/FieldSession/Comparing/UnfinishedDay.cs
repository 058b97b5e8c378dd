namespace FieldSession.Comparing;

/// <summary>
/// Before the plan's end no p is known to anybody, nor what hangs on it: whoever sees one decides by it whether to go on. Intervals stay, marked as
/// unfinished.
/// </summary>
internal static class UnfinishedDay
{
    /// <summary>The comparison without any p.</summary>
    public static Comparison Of(Comparison comparison) => comparison with
    {
        IsUnfinished = true,
        Comparisons = [.. comparison.Comparisons.Select(Of)],
        AskedPairs = [.. comparison.AskedPairs.Select(Of)],
        Pairs = [.. comparison.Pairs.Select(pair => pair with { Overall = Of(pair.Overall), PHolm = null })],
    };

    private static CodeComparison Of(CodeComparison pair) => pair with { Classes = Of(pair.Classes), WithSpoilt = Of(pair.WithSpoilt) };

    private static ClassComparisons Of(ClassComparisons classes) => new(Of(classes.All), Of(classes.Steady), Of(classes.Impact));

    private static ClassComparison? Of(ClassComparison? one) => one is null ? null : one with
    {
        IsUnfinished = true,
        Overall = one.Overall is { } overall ? Of(overall) : null,
        Basis = null,
        MoreRuns = null,
        MoreRunsAsSeen = null,
        MoreRunsCautious = null,
        Interaction = null,
        OrderTest = null,
        Assumed = one.Assumed is { } assumed ? Of(assumed) : null,
        RouteEnergy = one.RouteEnergy is { } energy ? energy with { Overall = Of(energy.Overall) } : null,
        Kinds = [.. one.Kinds.Select(kind => kind with { Estimate = Of(kind.Estimate) })],
        Segments = [.. one.Segments.Select(segment => segment with { Estimate = Of(segment.Estimate), PHolm = null })],
        Sensitivity = one.Sensitivity is { } sensitivity
            ? sensitivity with { Lines = [.. sensitivity.Lines.Select(line => line with { Overall = Of(line.Overall) })] }
            : null,
    };

    private static Estimate Of(Estimate estimate) => estimate with { P = null, PTost = null };
}
