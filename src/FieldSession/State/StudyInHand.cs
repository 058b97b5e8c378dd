using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>The study as one of its laptops sees it: its own run, its own session, its own place in the order.</summary>
public static class StudyInHand
{
    /// <summary>The study told in the hand of a laptop, which may be a new one.</summary>
    /// <param name="study">The study.</param>
    /// <param name="strand">The laptop's strand; null: the study's first one.</param>
    public static Study InHandOf(this Study study, string? strand)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.Hand.Strand == strand)
        {
            return study;
        }

        Hand left = study.Hand with { Undoables = study.Undoables };
        Hand taken = study.OtherHands.GetValueOrDefault(strand ?? "") ?? new Hand(strand);
        return study with
        {
            Hand = taken,
            Undoables = taken.Undoables,
            OtherHands = study.OtherHands.Remove(strand ?? "").SetItem(left.Strand ?? "", left),
        };
    }

    /// <summary>The number that the study of all laptops gives to what the laptop counts as its n-th.</summary>
    /// <param name="study">The study in the laptop's hand.</param>
    /// <param name="own">The laptop's number, from 1.</param>
    /// <param name="marks">Where each of the things is in the journal, in order.</param>
    public static int NumberOf(this Study study, int own, IEnumerable<LineMark> marks)
    {
        ArgumentNullException.ThrowIfNull(study);
        int known = 0;
        int number = 0;
        foreach (LineMark mark in marks)
        {
            number++;
            if (study.Hand.Knows(mark) && ++known == own)
            {
                return number;
            }
        }

        return own;
    }

    /// <summary>The place in the order of the next run, from 0; null: there is none left.</summary>
    /// <param name="study">The study in the laptop's hand.</param>
    /// <param name="car">The car that was named; null: the one that the laptop drives along with, or the order's next one.</param>
    public static int? StepOf(this Study study, string? car)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.Plan is not { } plan)
        {
            return null;
        }

        int? next = study.NextOfOrder();
        if (plan.CarOrder is not { } cars)
        {
            return next;
        }

        string? along = car is null || !study.IsNextCar(car, next) ? car ?? study.CarDrivenAlong() : null;
        return along is null
            ? next
            : Enumerable
                .Range(0, Math.Min(plan.Order.Count, cars.Count))
                .Cast<int?>()
                .FirstOrDefault(s => SameCar(cars[s!.Value], along) && !study.IsDriven(s.Value));
    }

    private static bool IsDriven(this Study study, int step) =>
        study.Runs.Any(run => run.Step == step && run.Aborted is null && study.Hand.Knows(run.Started));

    /// <summary>Whether naming this car binds the laptop to it: the order's next run is another car's.</summary>
    public static bool IsCarChosenBy(this Study study, string? car)
    {
        ArgumentNullException.ThrowIfNull(study);
        return car is not null && study.Plan?.CarOrder is not null && !study.IsNextCar(car, study.NextOfOrder());
    }

    /// <summary>Whether two names mean one car.</summary>
    public static bool SameCar(string? one, string? other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    /// <summary>The turn of the next run among those to be driven, from 0: an aborted run's turn is offered again.</summary>
    public static int NextTurn(this Study study) => study.LastOfOrder() is { } last ? last.Turn + (last.Aborted is null ? 1 : 0) : 0;

    /// <summary>
    /// The turn that a run on a code takes. After an aborted run that is its turn again; where the code is not its code, but that of
    /// the place after it, the crew goes on and leaves the aborted run as it is.
    /// </summary>
    public static int TurnOf(this Study study, SpecCode code)
    {
        ArgumentNullException.ThrowIfNull(study);
        int next = study.NextTurn();
        bool goesOn = study.LastOfOrder() is { Aborted: not null } && study.CodeAt(next) != code && study.CodeAt(next + 1) == code;
        return goesOn ? next + 1 : next;
    }

    /// <summary>The place in the plan's order of a turn, both from 0; null: beyond the order.</summary>
    public static int? StepAt(this Study study, int turn)
    {
        ArgumentNullException.ThrowIfNull(study);
        return turn >= study.RunsToDrive ? null : study.Steps?[turn] ?? turn;
    }

    internal static Run? LastOfOrder(this Study study) =>
        study.IsShared ? study.Runs.FindLast(run => study.Hand.TookOver(run.Started))
        : study.Runs.Count == 0 ? null
        : study.Runs[^1];

    internal static Run? OwnLastRun(this Study study) =>
        study.Runs.FindLast(run => study.Hand.Wrote(run.Started))
        ?? (study.TakesOver() ? study.Runs.FindLast(run => study.Hand.TookOver(run.Started)) : null);

    internal static Session? OwnLastSession(this Study study) =>
        study.Sessions.FindLast(session => study.Hand.Wrote(session.Opened))
        ?? (study.TakesOver() ? study.Sessions.FindLast(session => study.Hand.TookOver(session.Opened)) : null);

    private static int? NextOfOrder(this Study study) => study.StepAt(study.NextTurn());

    private static SpecCode? CodeAt(this Study study, int turn) =>
        study.StepAt(turn) is { } step ? study.Fitting?.At(study.Plan!.Order[step]) : null;

    private static bool IsNextCar(this Study study, string car, int? next) =>
        study.CarDrivenAlong() is null && next is { } step && step < study.Plan!.CarOrder!.Count && SameCar(study.Plan.CarOrder[step], car);

    private static string? CarDrivenAlong(this Study study) =>
        study.Runs.FindLast(run => run.IsCarChosen && study.Hand.Wrote(run.Started))?.Car;

    // Where the plan has several cars, a laptop that joins sits in a car of its own, with a meter of its own. Else the study was carried
    // to another place, and the day goes on there.
    private static bool TakesOver(this Study study) => study.Plan is not { Cars.Count: > 1 };

    internal static bool IsEveryStepDriven(this Study study)
    {
        if (!study.Runs.Exists(run => run.IsCarChosen || run.Started.Strand != study.Runs[0].Started.Strand))
        {
            return study.NextTurn() >= study.RunsToDrive;
        }

        string?[] cars = study.Plan!.CarOrder is null
            ? [.. study.Runs.Select(run => run.Car).Distinct(StringComparer.OrdinalIgnoreCase)]
            : [null];
        ImmutableHashSet<(int?, string?)> driven =
        [
            .. study
                .Runs.Where(run => run.Aborted is null)
                .Select(run => (run.Step, study.Plan.CarOrder is null ? run.Car?.ToUpperInvariant() : null)),
        ];
        return cars.Length > 0
            && Enumerable.Range(0, study.Plan.Order.Count).All(step => cars.All(car => driven.Contains((step, car?.ToUpperInvariant()))));
    }
}
