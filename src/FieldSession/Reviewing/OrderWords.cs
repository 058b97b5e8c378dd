using System.Collections.Immutable;
using FieldSession.Comparing;
using FieldSession.State;

namespace FieldSession.Reviewing;

/// <summary>An order as it is judged: proposed or one's own, in the same words.</summary>
/// <param name="Order">The runs by place.</param>
/// <param name="Cars">The car of each run; null: one car.</param>
/// <param name="Drivers">The driver of each run; null: one driver.</param>
/// <param name="Minutes">How long it takes on the route, minutes.</param>
/// <param name="Refits">How often the tyres of a car are changed on the way.</param>
/// <param name="DriverUnevenness">Largest difference of a driver's share between two places, 0..1; null: one driver.</param>
/// <param name="Doubts">What is weak about it, in words.</param>
/// <param name="Steady">What it can tell on the steady segments.</param>
/// <param name="Impact">What it can tell on the impacts; empty: the route has none.</param>
public sealed record OrderSight(
    ImmutableList<Place> Order,
    ImmutableList<string>? Cars,
    ImmutableList<string>? Drivers,
    double Minutes,
    int Refits,
    double? DriverUnevenness,
    IReadOnlyList<string> Doubts,
    IReadOnlyList<OrderSize> Steady,
    IReadOnlyList<OrderSize> Impact
);

/// <summary>
/// What an order cancels, what stays confounded, how long it takes and how small a difference it could show, in 80 columns.
/// </summary>
public static class OrderWords
{
    private const double Even = 0.01;

    /// <summary>The lines on one order.</summary>
    /// <param name="label">What is before it, such as "1" or "own".</param>
    /// <param name="sight">The order.</param>
    public static IEnumerable<string> Of(string label, OrderSight sight)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(sight);
        string head = PlainLines.Left(label, 5);
        return
        [
            .. PlainLines.Wrapped(
                head,
                $"{string.Join(' ', sight.Order)}: {sight.Order.Count} runs, {Duration(sight.Minutes)}, tyres changed {Times(sight.Refits)}"
            ),
            .. Details(sight).SelectMany(detail => Row(detail.What, detail.Words)),
        ];
    }

    /// <summary>What there is to say of an order, each thing by its name; empty words: nothing.</summary>
    public static IEnumerable<(string What, string Words)> Details(OrderSight sight)
    {
        ArgumentNullException.ThrowIfNull(sight);
        return
        [
            ("cars", sight.Cars is null ? "" : string.Join(' ', sight.Cars)),
            ("drive", sight.Drivers is null ? "" : string.Join(' ', sight.Drivers)),
            ("cancels", Cancels(sight.Steady.Count > 0 ? sight.Steady : sight.Impact)),
            ("stays", string.Join("; ", Stays(sight))),
            (
                "could show",
                string.Join("; ", new[] { Smallest("steady", sight.Steady), Smallest("impacts", sight.Impact) }.OfType<string>())
            ),
            ("look out", string.Join("; ", sight.Doubts)),
        ];
    }

    /// <summary>A length of time in words, such as "5 h 10 min".</summary>
    public static string Duration(double minutes)
    {
        int whole = (int)Math.Ceiling(minutes);
        return whole < 60 ? $"{whole} min" : $"{whole / 60} h {whole % 60} min";
    }

    /// <summary>What an order cancels, in words.</summary>
    public static string Cancels(IReadOnlyList<OrderSize> places)
    {
        ArgumentNullException.ThrowIfNull(places);
        string[] good = [.. places.Where(place => place.DriftCancels).Select(Means)];
        string[] bad =
        [
            .. places
                .Where(place => !place.DriftCancels)
                .Select(place =>
                    $"{Means(place)}: a steady drift of 1 dB over the day would show as {Figures.SignedFineDb(place.DriftShift)} dB"
                ),
        ];
        string cancelled = good.Length == 0 ? "not a steady drift" : $"a steady drift ({string.Join(", ", good)})";
        return bad.Length == 0 ? cancelled : $"{cancelled}; but {string.Join(", ", bad)}";
    }

    private static string Means(OrderSize place) =>
        $"R on average at run {Run(place.ReferenceMeanRun)}, {place.Place} at run {Run(place.MeanRun)}";

    private static IEnumerable<string> Stays(OrderSight sight)
    {
        yield return "set and spec, with one set of tyres per spec";
        if (sight.Steady.Select(place => place.ConfoundedWith).OfType<string>().FirstOrDefault() is { } confounded)
        {
            yield return $"{confounded} and tyre: every code stays on one {confounded}";
        }

        if (sight.DriverUnevenness is { } uneven && uneven > Even)
        {
            yield return $"driver and tyre in part: shares differ by {uneven * 100:0} %";
        }

        double bent = sight.Steady.Select(place => Math.Abs(place.BentShift)).DefaultIfEmpty().Max();
        if (bent > Even)
        {
            yield return $"a bent drift in part: 1 dB over the day that begins slowly would show as up to {Figures.FineDb(bent)} dB";
        }
    }

    private static string? Smallest(string what, IReadOnlyList<OrderSize> places)
    {
        if (places.Count == 0)
        {
            return null;
        }

        OrderSize worst = places.MaxBy(place => place.SmallestDb ?? double.MaxValue)!;
        return worst.SmallestDb is { } db
            ? $"{what} {Figures.FineDb(db)} dB ({worst.Df} degree{(worst.Df == 1 ? "" : "s")} of "
                + $"freedom{(worst.DriftInModel ? ", drift taken out" : "")}"
                + $"{(worst.Comparisons > 1 ? $", {worst.Comparisons} asked at once" : "")})"
            : $"{what}: nothing by itself, no run is left to judge the scatter by";
    }

    private static IEnumerable<string> Row(string what, string words) =>
        words.Length == 0 ? [] : PlainLines.Wrapped(PlainLines.Left("", 5) + PlainLines.Left(what, 12), words);

    private static string Run(double mean) => Figures.MarginDb(mean);

    private static string Times(int times) =>
        times switch
        {
            0 => "never",
            1 => "once",
            _ => $"{times} times",
        };
}
