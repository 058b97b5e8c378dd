using FieldSession.Signals;
using Tomlyn.Syntax;

namespace FieldSession.Store.Planning;

/// <summary>Reads the ring band of a plan: <c>ring_band_hz = [178, 282]</c>.</summary>
internal static class PlanRing
{
    private const double LowestHz = 100;
    private const double HighestHz = 400;
    private const double NarrowestHz = 20;

    /// <summary>The band; null: not told, or refused.</summary>
    public static FrequencyBand? BandOf(PlanWords words, Troubles troubles)
    {
        if (words.Find("ring_band_hz") is not { } word)
        {
            return null;
        }

        double?[] edges = [.. (word.Items ?? []).Select(NumberOf)];
        if (edges is [{ } low, { } high] && low >= LowestHz && high <= HighestHz && high - low >= NarrowestHz)
        {
            return new(low, high);
        }

        word.Refuse(troubles, PlanFolderWords.RingBandIsNone, PlanFolderWords.RingBandForm);
        return null;
    }

    private static double? NumberOf(PlanWord item) => item.Value switch
    {
        IntegerValueSyntax whole => whole.Value,
        FloatValueSyntax real => real.Value,
        _ => null,
    };
}
