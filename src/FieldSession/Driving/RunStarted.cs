using System.Collections.Immutable;
using FieldSession.Checking;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Driving;

/// <summary>The next run begins; starting it confirms the protocol sheet of the plan.</summary>
/// <param name="Code">The code on the car.</param>
/// <param name="Driver">Who drives; null: the plan says it, for this run or by its seats.</param>
/// <param name="Car">The car; null: the plan says it, or there is one car.</param>
public sealed record RunStarted(SpecCode Code, string? Driver, string? Car = null) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) =>
        Gate.WhileDataAreOpen(study) ?? ObjectionToRun(study) ?? ObjectionToDriver(study) ?? ObjectionToCar(study) ?? RunChecks.AgainstNextRun(study).FirstOrDefault();

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        Study inSession = study.SessionOn is null
            ? study with { Sessions = study.Sessions.Add(new Session(study.Sessions.Count + 1, null, null) { Opened = mark }) }
            : study;
        int turn = study.TurnOf(Code);
        int? step = study.Plan?.CarOrder is null ? study.StepAt(turn) : study.StepOf(Car);
        Run run = new(study.Runs.Count + 1, Code, inSession.LastSession!.Number, mark)
        {
            Turn = turn,
            Step = step,
            IsCarChosen = study.IsCarChosenBy(Car),
            Driver = Driver ?? PlannedFor(step, study.Plan?.DriverOrder) ?? study.Plan?.Crew.FirstOrDefault(m => m.Seat == CrewMember.DriverSeat)?.Name,
            Car = Car ?? PlannedFor(step, study.Plan?.CarOrder),
            Doubt = DoubtIn(study, step),
        };
        return (inSession with { Runs = study.Runs.Add(run) }).Undoably(study, mark, $"run {Code}");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        string first = after.NextSegment is { } segment ? $"; first segment {segment.Number} {segment.Name}" : "";
        string car = after.LastRun?.Car is { } driven ? $", car {driven}" : "";
        return new Echo($"run {after.LastRun?.Number} on {Code}{car}{Again(before, after)}{first}", after.LastRun?.Doubt);
    }

    private static string Again(Study before, Study after) => Aborts.OfferedAgain(before) switch
    {
        { } aborted when after.LastRun?.Turn == aborted.Turn => DrivingWords.RepeatsAbortedRun(aborted),
        { } aborted => DrivingWords.AbortedRunIsLeft(aborted),
        null => "",
    };

    private static string? PlannedFor(int? step, ImmutableList<string>? shared) => step < (shared?.Count ?? 0) ? shared![step!.Value] : null;

    private string? DoubtIn(Study study, int? step) => step is not { } place
        ? DrivingWords.OrderIsDrivenToEnd
        : study.Fitting?.At(study.Plan!.Order[place]) is { } asked && asked != Code ? DrivingWords.OrderAsksForNow(asked) : null;

    private Objection? ObjectionToRun(Study study)
    {
        if (study.RunOn is { } on)
        {
            return new Objection(DrivingWords.OtherRunIsStillOn(on), DrivingWords.EndRunThenStartNext);
        }

        SpecCode[] codes = study.Fitting is { } fitting ? [.. fitting.Codes] : [];
        return codes.Length == 0 || codes.Contains(Code)
            ? null
            : new Objection(
                JournalWords.IsNoCodeOfStudy(Code),
                DrivingWords.CodesAndCodeAsked(string.Join(", ", codes.OrderBy(c => c.Digits, StringComparer.Ordinal)), study.CodeAsked));
    }

    private Objection? ObjectionToDriver(Study study) =>
        Driver is null || study.Plan is not { Crew.Count: > 0 } plan || plan.Crew.Any(m => CrewMember.SamePerson(m.Name, Driver))
            ? null
            : new Objection(JournalWords.IsNotInCrew(Driver), JournalWords.CrewIs(string.Join(", ", plan.Crew.Select(m => m.Name))));

    private Objection? ObjectionToCar(Study study) =>
        Car is null || study.Plan?.Cars is not { } cars || cars.Contains(Car, StringComparer.OrdinalIgnoreCase)
            ? null
            : new Objection(DrivingWords.IsNoCarOfPlan(Car), DrivingWords.CarsAre(string.Join(", ", cars)));
}
