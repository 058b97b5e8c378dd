using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;
using FieldSession.Terminal.Parked;

namespace FieldSession.Terminal.Screens.Predicting;

/// <summary>The screen on which the crew locks its predictions, one person at a time.</summary>
internal sealed class PredictScreen(Desk desk, Pen pen) : ParkedScreen(ScreenName.Predict, desk, pen)
{
    private PredictionSoFar _telling = PredictionSoFar.Nobody;

    /// <inheritdoc/>
    public override void Enter()
    {
        // What somebody has half told is not for whoever comes to this screen next.
        _telling = PredictionSoFar.Nobody;
        ForgetBox();
        Say(null);
        base.Enter();
    }

    /// <inheritdoc/>
    protected override ParkedPage Page(int columns)
    {
        if (Study.Plan is not null && !Study.StillToPredict.Any() && Study.Predictions.Count > 0)
        {
            return new ParkedPage(PredictPage.Told(Study, columns), NextStep.Words(Study, Desk.Keys, ScreenName.Predict));
        }

        Objection? bar = PredictionSoFar.Bar(Study);
        return bar is null && _telling.Person is not null ? Asking(columns) : Crew(bar, columns);
    }

    /// <inheritdoc/>
    protected override void Take(string answer)
    {
        if (PredictionSoFar.Bar(Study) is { } bar)
        {
            Say(Study.StillToPredict.Any() ? bar.ToString() : null);
        }
        else if (_telling.Person is null)
        {
            Begin(answer);
        }
        else if (_telling.Open(Question.Of(Study)) is { } question)
        {
            Answer(question, answer);
        }
        else if (answer.Length == 0)
        {
            Lock();
        }
    }

    /// <inheritdoc/>
    protected override void Do(KeyDeed deed)
    {
        if (deed == KeyDeed.Back)
        {
            _telling = _telling.Back();
        }
    }

    private ParkedPage Crew(Objection? bar, int columns)
    {
        IEnumerable<string> open = Study.StillToPredict.Select((member, place) => $"{place + 1} {member.Name}");
        return bar is null
            ? new ParkedPage(PredictPage.Crew(Study, null, columns), PredictScreenWords.AskWhoPredicts(string.Join(", ", open)), "who")
            : new ParkedPage(PredictPage.Crew(Study, bar, columns), $"{Desk.Keys.KeyTo(ScreenName.Drive)}: {bar.Instead}");
    }

    private ParkedPage Asking(int columns)
    {
        ImmutableArray<Question> questions = Question.Of(Study);
        return new ParkedPage(
            PredictPage.Asking(_telling, questions, columns),
            _telling.Open(questions) is { } question ? HintOf(question) : PredictScreenWords.EnterLocks,
            _telling.Open(questions) is null ? "lock" : "answer"
        );
    }

    private static string HintOf(Question question) =>
        question.Choices.IsEmpty
            ? PredictScreenWords.TypeOwnWords
            : PredictScreenWords.TypeAChoice(string.Join(" or ", question.Choices.Select(choice => choice.Key)));

    private void Begin(string answer)
    {
        if (PredictionSoFar.PersonIn(answer, Study) is { } person)
        {
            _telling = new PredictionSoFar(person, []);
            ToTop();
        }
        else if (answer.Length > 0)
        {
            Say(PredictScreenWords.NobodyToPredict(answer));
        }
    }

    private void Answer(Question question, string answer)
    {
        if (question.ValueOf(answer) is { } value)
        {
            _telling = _telling with { Answers = _telling.Answers.Add(value) };
        }
        else
        {
            Say(question.Objection(answer));
        }
    }

    private void Lock()
    {
        Parsed parsed = _telling.Fact(Question.Of(Study), Study);
        if (parsed.Entry is not { } fact)
        {
            Say(parsed.Objection!.ToString());
        }
        else if (Told(Pen.Write(fact)))
        {
            _telling = PredictionSoFar.Nobody;
            ToTop();
        }
    }
}
