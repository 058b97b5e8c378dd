using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Predicting;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Predicting;

/// <summary>One person telling their prediction, as far as they have come. Nothing of it is kept before it is locked.</summary>
/// <param name="Person">Who; null: not said yet.</param>
/// <param name="Answers">The answers, in the order of the questions.</param>
internal sealed record Telling(string? Person, ImmutableArray<string> Answers)
{
    /// <summary>Nobody yet.</summary>
    public static Telling Nobody { get; } = new(null, []);

    /// <summary>The question that is open; null: all are answered.</summary>
    public Question? Open(ImmutableArray<Question> questions) => Answers.Length < questions.Length ? questions[Answers.Length] : null;

    /// <summary>One step back.</summary>
    public Telling Back() => Answers.IsEmpty ? Nobody : this with { Answers = Answers[..^1] };

    /// <summary>The fact that the answers make.</summary>
    public Parsed Fact(ImmutableArray<Question> questions)
    {
        Dictionary<string, string> said = questions.Zip(Answers)
            .Where(pair => pair.First.Word.Length > 0 && pair.Second.Length > 0)
            .ToDictionary(pair => pair.First.Word, pair => pair.Second);
        return PredictionText.Of(Person!, said, Answers[^1].Length == 0 ? null : Answers[^1]);
    }

    /// <summary>The person that a typed number or name means, among those whose prediction is open; null: nobody.</summary>
    public static string? PersonIn(string typed, Study study)
    {
        CrewMember[] open = [.. study.StillToPredict];
        return Typed.Count(typed) is { } number && number <= open.Length
            ? open[number - 1].Name
            : open.FirstOrDefault(member => CrewMember.SamePerson(member.Name, typed))?.Name;
    }

    /// <summary>What rules out any prediction now; null: nothing.</summary>
    public static Objection? Bar(Study study)
    {
        SpecCode[] codes = [.. study.Codes];
        string? person = study.StillToPredict.FirstOrDefault()?.Name;
        return new PredictionLocked(person ?? "", codes.FirstOrDefault(), 1, null, null, PredictionBasis.Guess, null).ObjectionIn(study);
    }
}
