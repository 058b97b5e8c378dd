using System.Collections.Immutable;
using FieldSession.Measures;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Rating;

/// <summary>
/// The rating screen in words: who rates, then one attribute after the other with the scale beside it. Nobody's numbers
/// are on it, not even one's own: the next at the keyboard must not see them.
/// </summary>
internal static class RatePage
{
    private const string Prompt = " > ";
    private const int ScaleColumns = 40;
    private const int RowsForLargeLetters = 20;

    /// <summary>Where the entry box begins.</summary>
    public static int BoxColumn => Prompt.Length;

    /// <summary>The page in so many columns and rows.</summary>
    public static RateWords Of(RateSight sight, int columns, int rows)
    {
        ImmutableArray<PageRow> head = [.. Head(sight, columns - 2, rows < RowsForLargeLetters ? 1 : 3)];
        ImmutableArray<PageRow> all =
        [
            .. head,
            PageRow.Of(Prompt.TrimStart(), Ink.Strong),
            .. MessageRows.Of(sight.Message, columns - 4, Ink.Alarm),
            .. Below(sight, columns - 2),
        ];
        return new RateWords([.. all.Take(rows).Select(row => PageRow.Of(" ").And(row))], head.Length);
    }

    private static IEnumerable<PageRow> Head(RateSight sight, int columns, int letterRows)
    {
        if (sight.Slip is not null)
        {
            return [PageRow.Of("TRIALS", Ink.Quiet), .. Lines(RateScreenWords.HowToLeaveSlip, columns, Ink.Strong)];
        }

        if (WhyNot(sight.Study) is { } why)
        {
            return [PageRow.Of("RATINGS", Ink.Quiet), .. Lines(why, columns, Ink.Strong)];
        }

        Run run = sight.Study.LastRun!;
        PageRow title = PageRow
            .Of("RATINGS   ", Ink.Quiet)
            .And($"run {run.Number} on {run.Code}", Ink.Strong)
            .And(RateScreenWords.AgainstReference(sight.Study.ReferenceCode));
        return sight switch
        {
            { IsParked: false } => [title, .. Lines(RateScreenWords.ShutUntilParked, columns, Ink.Strong)],
            { Rater: null } => [title, .. Lines(RateScreenWords.WhoRates, columns)],
            { Next: { } attribute } => [title, .. Attribute(sight, attribute, columns, letterRows)],
            _ => [title, .. Lines(RateScreenWords.RaterIsThrough(sight.Rater!.Name), columns, Ink.Strong)],
        };
    }

    private static IEnumerable<PageRow> Attribute(RateSight sight, RatedAttribute attribute, int columns, int letterRows) =>
        [
            PageRow.Of($"{sight.Rater!.Name}, alone:"),
            PageRow.Blank,
            .. LargeText.Of(attribute.Name, columns, letterRows, sight.Letters).Select(row => PageRow.Of(row, Ink.Strong)),
            PageRow.Of(attribute.Meaning, Ink.Quiet),
        ];

    private static IEnumerable<PageRow> Below(RateSight sight, int columns) =>
        sight switch
        {
            { Slip: { } set } => Slip(sight.Study.ChoiceSets[set - 1], columns),
            _ when WhyNot(sight.Study) is not null => Trials(sight.Study, columns),
            { Next: { } attribute } => Scale(attribute, columns),
            _ => [.. Crew(sight.Study), PageRow.Blank, .. Trials(sight.Study, columns)],
        };

    // Side by side where there is room; the quarter points between the steps need no words.
    private static IEnumerable<PageRow> Scale(RatedAttribute attribute, int columns)
    {
        string[] steps =
        [
            .. RatingSteps.All.Select(step => $"{step.Points, 4}  {(attribute.IsControl ? step.Control : step.Disturbance)}"),
        ];
        int half = steps.Length / 2;
        return columns >= 2 * ScaleColumns - 4
            ? Enumerable
                .Range(0, half)
                .Select(i => PageRow.Of(Columns.Left(steps[i], ScaleColumns) + Columns.Cut(steps[i + half], columns - ScaleColumns)))
            : steps.Select(step => PageRow.Of(step));
    }

    private static IEnumerable<PageRow> Crew(Study study)
    {
        int run = study.LastRun?.Number ?? 0;
        int asked = RatedAttribute.Of(study.Plan).Length;
        return study.Plan!.Crew.Select(
            (member, place) =>
            {
                int stored = study.Ratings.Count(r => r.Run == run && CrewMember.SamePerson(r.Person, member.Name));
                return PageRow
                    .Of($"{place + 1, 3}  ", Ink.Strong)
                    .And($"{member.Name}: {stored} of {asked} stored{(stored < asked ? "" : ", through")}");
            }
        );
    }

    private static IEnumerable<PageRow> Trials(Study study, int columns) =>
        study
            .ChoiceSets.Where(set => !set.IsComplete)
            .SelectMany(set => Lines(RateScreenWords.ChoiceSetOpen(set, FieldSession.Rating.Presenting.InWords(set)), columns));

    private static IEnumerable<PageRow> Slip(ChoiceSet set, int columns) =>
        FieldSession
            .Rating.OrderSlip.Rows(set, set.NextTrial)
            .SelectMany(row => row.Length <= columns ? [PageRow.Of(row)] : Lines(row, columns));

    private static IEnumerable<PageRow> Lines(string words, int columns, Ink ink = Ink.Plain) =>
        Wrapped.Lines(words, columns).Select(line => PageRow.Of(line, ink));

    private static string? WhyNot(Study study) =>
        study switch
        {
            { Plan: null } => "no plan",
            { RunOn: { } run } => RateScreenWords.RunStillOn(run),
            { LastRun: null } => RateScreenWords.NothingDriven,
            { DataFrozen: true } => RateScreenWords.DataFrozen,
            { LastRun: { } run } when RatingCover.IsClosed(study, run.Number) => RateScreenWords.RatingsClosed(run),
            { LastRun: { } run } when run.Code == study.ReferenceCode => RateScreenWords.ReferenceIsNotRated(run),
            _ => null,
        };

    /// <summary>Whether there is something to rate now.</summary>
    public static bool IsOpen(Study study) => WhyNot(study) is null;
}

/// <summary>What the rate screen says.</summary>
internal static class RateScreenWords
{
    public const string WhoRates = "one person alone at the keyboard: who rates? number or name, then Enter";
    public const string HowToLeaveSlip = "the order, for whoever runs the trials alone: Enter or Esc covers it";
    public const string NothingDriven = "nothing has been driven";
    public const string DataFrozen = "the data are frozen";

    public static string AgainstReference(SpecCode? reference) => $"   against {reference}, which is {Score.Anchor}";

    public const string ShutUntilParked = $"shut until the car is parked: type '{Parking.Word}' and press Enter";

    public static string RaterIsThrough(string rater) => $"{rater} is done: Enter gives the keyboard to the next";

    public static string ChoiceSetOpen(ChoiceSet set, string trials) =>
        set.IsFromRecordings
            ? $"set {set.Number}, '{set.Terms.Question}': {trials}"
            : $"set {set.Number}, '{set.Terms.Question}': {trials}; type 'choose NAME first' or second, 'slip NAME' for the order";

    public static string RunStillOn(Run run) => $"run {run.Number} is on: ratings at a stop";

    public static string RatingsClosed(Run run) => $"the ratings of run {run.Number} are closed";

    public static string ReferenceIsNotRated(Run run) => $"{run.Code} brackets the others and is {Score.Anchor}: nothing is rated";

    public static string NotInCrew(string typed, string crew) => $"'{typed}' is not in the crew: {crew}";
}

/// <summary>What the rating page is made from.</summary>
/// <param name="Study">The study.</param>
/// <param name="Rater">Who sits at the keyboard, alone; null: nobody has said so yet.</param>
/// <param name="Skipped">Attributes that this person passed over this time.</param>
/// <param name="IsParked">Whether somebody has said that the car is parked.</param>
/// <param name="Message">Words about the last key or line; null: none.</param>
internal sealed record RateSight(Study Study, CrewMember? Rater, ImmutableHashSet<string> Skipped, bool IsParked, string? Message)
{
    /// <summary>Number of the set whose order is shown to the one who runs it, alone; null: none.</summary>
    public int? Slip { get; init; }

    /// <summary>How the name of the attribute is written.</summary>
    public LetterForm Letters { get; init; }

    /// <summary>The attribute that comes next for the rater; null: none is left, or nobody rates.</summary>
    public RatedAttribute? Next =>
        Rater is { } rater && Study.LastRun is { } run
            ? RatedAttribute
                .Of(Study.Plan)
                .FirstOrDefault(a => !Skipped.Contains(a.Name) && RatingCover.Of(Study, run.Number, rater.Name, a.Name) is null)
            : null;
}

/// <summary>The rating screen's words, and the row of its entry box.</summary>
/// <param name="Rows">The rows.</param>
/// <param name="BoxRow">Row of the entry box.</param>
internal sealed record RateWords(ImmutableArray<PageRow> Rows, int BoxRow);
