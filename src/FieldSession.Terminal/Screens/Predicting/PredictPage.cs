using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Predicting;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Predicting;

/// <summary>The predictions in words: one person's questions, or who has locked; what was said only once all have.</summary>
internal static class PredictPage
{
    private const int FewestNameColumns = 12;
    private const int MostNameColumns = 30;
    private const int QuestionColumns = 28;

    /// <summary>Who has locked and who is still open, or why nobody can yet.</summary>
    public static ImmutableArray<PageRow> Crew(Study study, Objection? bar, int columns)
    {
        string[] open = [.. study.StillToPredict.Select(member => member.Name)];
        int names = NameColumns(study);
        return
        [
            PageRow.Of("Predictions", Ink.Strong),
            .. Text(PredictScreenWords.RulesOfPredicting, columns),
            PageRow.Blank,
            .. bar is null
                ? []
                : Wrapped.Lines($"not now: {bar.Why}; {bar.Instead}", columns - 2).Select(line => PageRow.Of($" {line} ", Ink.Alarm)),
            .. open.Select((name, place) => PageRow.Of($"{place + 1}  ", Ink.Strong).And(Columns.Left(name, names)).And("open")),
            .. study.Predictions.Select(p => PageRow.Of("   ").And(Columns.Left(p.Person, names)).And("locked, hidden")),
        ];
    }

    /// <summary>What was said, once all have locked.</summary>
    public static ImmutableArray<PageRow> Told(Study study, int columns) =>
        [
            PageRow.Of(PredictScreenWords.AllLocked, Ink.Strong),
            PageRow.Blank,
            .. study.Predictions.SelectMany(prediction => Told(prediction, NameColumns(study), columns).Append(PageRow.Blank)),
        ];

    /// <summary>One person's questions, the answers so far, and the question that is open.</summary>
    public static ImmutableArray<PageRow> Asking(PredictionSoFar telling, ImmutableArray<Question> questions, int columns) =>
        [
            PageRow.Of(PredictScreenWords.AnswersAlone(telling.Person!), Ink.Strong),
            .. telling.Answers.IsEmpty ? [] : ImmutableArray.Create(PageRow.Blank),
            .. questions.Zip(telling.Answers).SelectMany(pair => Answered(pair.First, pair.Second, columns)),
            .. telling.Open(questions) is { } open ? Question(open) : Last(columns),
        ];

    private static IEnumerable<PageRow> Told(Prediction told, int names, int columns) =>
        Wrapped
            .Lines(PredictScreenWords.Told(told), columns - names)
            .Select((line, place) => PageRow.Of(Columns.Left(place == 0 ? told.Person : "", names), Ink.Strong).And(line));

    private static int NameColumns(Study study) =>
        Math.Clamp(study.Plan!.Crew.Max(member => Columns.Of(member.Name)) + 2, FewestNameColumns, MostNameColumns);

    private static IEnumerable<PageRow> Answered(Question question, string value, int columns) =>
        Wrapped
            .Lines(question.Shown(value), columns - QuestionColumns)
            .Select((line, place) => PageRow.Of(Columns.Left(place == 0 ? question.Words : "", QuestionColumns), Ink.Quiet).And(line));

    private static IEnumerable<PageRow> Question(Question open) =>
        [
            PageRow.Blank,
            PageRow.Of(open.Words, Ink.Strong),
            .. open.Choices.Select(choice => PageRow.Of($"  {choice.Key}  ", Ink.Strong).And(choice.Words)),
            .. open.MayBePercent ? [PageRow.Of($"  {PredictScreenWords.OrPerCent}", Ink.Quiet)] : Array.Empty<PageRow>(),
            .. open.MayBeEmpty ? [PageRow.Of(PredictScreenWords.EnterIsNoOpinion, Ink.Quiet)] : Array.Empty<PageRow>(),
        ];

    private static IEnumerable<PageRow> Last(int columns) => [PageRow.Blank, .. Text(PredictScreenWords.LastWordBeforeLocking, columns)];

    private static IEnumerable<PageRow> Text(string words, int columns) => Wrapped.Lines(words, columns).Select(line => PageRow.Of(line));
}

/// <summary>One person telling their prediction, as far as they have come. Nothing of it is kept before it is locked.</summary>
/// <param name="Person">Who; null: not said yet.</param>
/// <param name="Answers">The answers, in the order of the questions.</param>
internal sealed record PredictionSoFar(string? Person, ImmutableArray<string> Answers)
{
    /// <summary>Nobody yet.</summary>
    public static PredictionSoFar Nobody { get; } = new(null, []);

    /// <summary>The question that is open; null: all are answered.</summary>
    public Question? Open(ImmutableArray<Question> questions) => Answers.Length < questions.Length ? questions[Answers.Length] : null;

    /// <summary>One step back.</summary>
    public PredictionSoFar Back() => Answers.IsEmpty ? Nobody : this with { Answers = Answers[..^1] };

    /// <summary>The fact that the answers make.</summary>
    public Parsed Fact(ImmutableArray<Question> questions, Study study)
    {
        Dictionary<string, string> said = questions
            .Zip(Answers)
            .Where(pair => pair.First.Word.Length > 0 && pair.Second.Length > 0)
            .ToDictionary(pair => pair.First.Word, pair => pair.Second);
        return PredictionText.Of(Person!, said, Answers[^1].Length == 0 ? null : Answers[^1], study);
    }

    /// <summary>The person that a typed number or name means, among those whose prediction is open; null: nobody.</summary>
    public static string? PersonIn(string typed, Study study)
    {
        CrewMember[] open = [.. study.StillToPredict];
        return Typed.Count(typed) is { } number && number <= open.Length ? open[number - 1].Name : CrewMember.Meant(open, typed)?.Name;
    }

    /// <summary>What rules out any prediction now; null: nothing.</summary>
    public static Objection? Bar(Study study)
    {
        SpecCode[] codes = [.. study.Codes];
        string? person = study.StillToPredict.FirstOrDefault()?.Name;
        return new PredictionLocked(person ?? "", codes.FirstOrDefault(), 1, null, null, PredictionBasis.Guess, null).ObjectionIn(study);
    }
}
