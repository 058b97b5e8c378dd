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
        Gate.WhileDataAreOpen(study)
        ?? ObjectionToRun(study)
        ?? ObjectionToDriver(study)
        ?? ObjectionToCar(study)
        ?? RunChecks.AgainstNextRun(study).FirstOrDefault();

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        Study inSession = study.SessionOn is null
            ? study with
            {
                Sessions = study.Sessions.Add(new Session(study.Sessions.Count + 1, null, null) { Opened = mark }),
            }
            : study;
        int turn = study.TurnOf(Code);
        int? step = study.Plan?.CarOrder is null ? study.StepAt(turn) : study.StepOf(Car);
        Run run = new(study.Runs.Count + 1, Code, inSession.LastSession!.Number, mark)
        {
            Turn = turn,
            Step = step,
            IsCarChosen = study.IsCarChosenBy(Car),
            Driver =
                Driver
                ?? PlannedFor(step, study.Plan?.DriverOrder)
                ?? study.Plan?.Crew.FirstOrDefault(m => m.Seat == CrewMember.DriverSeat)?.Name,
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

    private static string Again(Study before, Study after) =>
        Aborts.OfferedAgain(before) switch
        {
            { } aborted when after.LastRun?.Turn == aborted.Turn => DrivingWords.RepeatsAbortedRun(aborted),
            { } aborted => DrivingWords.AbortedRunIsLeft(aborted),
            null => "",
        };

    private static string? PlannedFor(int? step, ImmutableList<string>? shared) =>
        step < (shared?.Count ?? 0) ? shared![step!.Value] : null;

    private string? DoubtIn(Study study, int? step) =>
        step is not { } place ? DrivingWords.OrderIsDrivenToEnd
        : study.Fitting?.At(study.Plan!.Order[place]) is { } asked && asked != Code ? DrivingWords.OrderAsksForNow(asked)
        : null;

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
                DrivingWords.CodesAndCodeAsked(string.Join(", ", codes.OrderBy(c => c.Digits, StringComparer.Ordinal)), study.CodeAsked)
            );
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

/// <summary>
/// The run is ended before its last segment: it is aborted, what was read is kept, and its place is offered again. In older journals
/// a run that was ended early took its place for good.
/// </summary>
/// <param name="Aborted">Whether the run is aborted where segments are left; null: written by an older program.</param>
/// <param name="Cause">Why, in the crew's words; null: not said yet.</param>
public sealed record RunEnded(bool? Aborted = null, string? Cause = null) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study) => Gate.WhileARunIsOn(study);

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.RunOn is not { } run)
        {
            return study;
        }

        bool isAborted = Aborted == true && SegmentsLeft(study, run) > 0;
        return study.WithLastRun(run with { Ended = mark, Aborted = isAborted ? new Abort(Cause) : null }).Undoably(study, mark, "end");
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        Run run = after.LastRun!;
        int left = SegmentsLeft(after, run);
        return new Echo(
            run.Aborted is null
                ? DrivingWords.RunEndedEarly(run, left)
                : DrivingWords.RunAborted(run, left, after.Plan!.Route.Count) + DrivingWords.PlaceIsOfferedAgain(Aborts.OfferedAgain(after))
        );
    }

    private static int SegmentsLeft(Study study, Run run) =>
        (study.Plan?.Route.Count ?? 0) - run.Passages.Select(p => p.Segment).Distinct().Count();
}

/// <summary>
/// Reads <c>run 417</c>, <c>run 417 driver=Ro</c>, <c>run 417 car=NAME</c>, and <c>end</c> or <c>abort</c> with the cause: words, or a
/// cause letter.
/// </summary>
public static class RunText
{
    private const string Driver = "driver=";
    private const string Car = "car=";

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] words = Typed.Words(text);
        if (words.Length > 0 && (Typed.Is(words[0], "end") || Typed.Is(words[0], "abort")))
        {
            return End(CauseIn(words), study);
        }

        return words.Length > 0 && Typed.Is(words[0], "run") ? Start(words, study) : null;
    }

    // said again at the stop, it is the cause of the run that was aborted
    private static Parsed End(string? cause, Study study) =>
        study is { RunOn: null, LastRun: { Aborted: not null } aborted } && cause is not null
            ? Parsed.As(new AbortExplained(aborted.Number, cause))
            : Parsed.As(new RunEnded(true, cause));

    private static string? CauseIn(string[] words) =>
        words switch
        {
            [_] => null,
            [_, { Length: 1 } letter] when SpoiltCauses.FromLetter(letter[0]) is { } cause => cause.Word(),
            _ => string.Join(' ', words.Skip(1)),
        };

    private static Parsed Start(string[] words, Study study)
    {
        if (words.Length < 2 || SpecCode.Parse(words[1]) is not { } code)
        {
            return Parsed.No(DrivingWords.RunIsStartedOnCode, DrivingWords.RunForm(ExampleNames.In(study)));
        }

        RunStarted run = new(code, null);
        foreach (string part in Typed.NamesJoined(words[2..], study))
        {
            if (ValueOf(part, Driver) is null && ValueOf(part, Car) is null)
            {
                return Parsed.No(DrivingWords.IsNeitherDriverNorCar(part), DrivingWords.RunForm(ExampleNames.In(study)));
            }

            string? driver = ValueOf(part, Driver) is { } name ? CrewMember.NameMeant(study.Plan?.Crew, name) : run.Driver;
            run = run with { Driver = driver, Car = ValueOf(part, Car) ?? run.Car };
        }

        return Parsed.As(run);
    }

    private static string? ValueOf(string word, string name) =>
        word.StartsWith(name, StringComparison.OrdinalIgnoreCase) && word.Length > name.Length ? word[name.Length..] : null;
}
