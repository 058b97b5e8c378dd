using FieldSession.State;

namespace FieldSession.Sealing;

/// <summary>What the custodian does with the tyres before a run.</summary>
public enum FittingChange
{
    /// <summary>Nothing that is known is on the car: all four are fitted.</summary>
    FitAll,

    /// <summary>The right set is on the car.</summary>
    LeaveOn,

    /// <summary>Another set is on the car: all four are changed.</summary>
    ChangeAll,

    /// <summary>Only the key of the earlier fitting can tell what is on the car: the mark under its tape is looked at.</summary>
    LookAtMark,
}

/// <summary>What has to be on the car for a run. Secret until the reveal.</summary>
/// <param name="Run">Number of the run, from 1.</param>
/// <param name="Car">The car; null: there is one.</param>
/// <param name="Place">The place that the run takes in the order.</param>
/// <param name="Line">Code, spec and mark.</param>
/// <param name="Change">What changes on the car.</param>
/// <param name="Before">What is on the car before; null: nothing that is known.</param>
public sealed record FittingRow(int Run, string? Car, Place Place, KeyLine Line, FittingChange Change, SetOnCar? Before)
{
    /// <summary>Run and code alone: a row that slips into a message tells nothing.</summary>
    public override string ToString() => $"run {Run}: {Line}";
}

/// <summary>The custodian's list: run by run and car by car what has to be on the car. It follows from the key alone.</summary>
public static class FittingList
{
    /// <summary>The rows in the order of the runs; none where the key does not know its order, as those of earlier programs.</summary>
    /// <param name="key">The key of the fitting.</param>
    /// <param name="earlier">The key of the fitting before it, which says what is on the cars; null: not given.</param>
    public static IEnumerable<FittingRow> Of(KeySheet key, KeySheet? earlier = null)
    {
        ArgumentNullException.ThrowIfNull(key);
        if (key.Plan is not { } plan)
        {
            yield break;
        }

        Dictionary<string, SetOnCar> onCars = OnCars(plan, earlier).ToDictionary(set => set.Car ?? "");
        for (int run = plan.FirstRun; run <= plan.Order.Count; run++)
        {
            Place place = plan.Order[run - 1];
            if (place.Index >= key.Places.Count)
            {
                continue;
            }

            KeyLine line = key.Places[place.Index];
            string? car = plan.CarOf(run);
            SetOnCar? before = onCars.GetValueOrDefault(car ?? "");
            yield return new FittingRow(run, car, place, line, ChangeTo(line, before), before);
            onCars[car ?? ""] = new SetOnCar(car, line.Code, line.Spec);
        }
    }

    /// <summary>What is on the cars when the fitting begins.</summary>
    /// <param name="plan">What the key knows of its day.</param>
    /// <param name="earlier">The key of the fitting before it; null: not given.</param>
    public static IEnumerable<SetOnCar> OnCars(FittingPlan plan, KeySheet? earlier)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.OnCars.Select(set =>
            set with
            {
                Spec = set.Spec ?? earlier?.Places.FirstOrDefault(line => line.Code == set.Code)?.Spec,
            }
        );
    }

    private static FittingChange ChangeTo(KeyLine line, SetOnCar? before) =>
        before switch
        {
            null => FittingChange.FitAll,
            { Spec: null } => FittingChange.LookAtMark,
            { Spec: { } spec } when spec == line.Spec => FittingChange.LeaveOn,
            _ => FittingChange.ChangeAll,
        };
}
