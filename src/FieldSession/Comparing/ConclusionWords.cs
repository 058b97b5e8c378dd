namespace FieldSession.Comparing;

/// <summary>Phrases of verdicts, of levels and of energy alike.</summary>
internal static class ConclusionWords
{
    public const string NoScatterNoInterval = "no scatter seen at this display resolution: no interval";
    public const string NoUsableInterval = "no usable interval";
    public const string NoScatterSeen = "no scatter seen at this display resolution";

    public static string ExtendedTimes(int times) => $", extended {times} time{(times == 1 ? "" : "s")}";

    public static string DifferenceShownButSmallerThan(string margin) => $"difference shown, but smaller than {margin}";

    public static string DifferenceShownAndLargerThan(string margin) => $"difference shown and larger than {margin}";
}
