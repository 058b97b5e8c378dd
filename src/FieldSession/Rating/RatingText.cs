using FieldSession.Journal;
using FieldSession.Measures;
using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>
/// Reads <c>rate Tam roar 6.25</c>, <c>rate Tam impact boom 6,25 seat=rear code=862</c> and <c>ratings closed</c>. An attribute may
/// have several words and may be shortened as long as it means one only.
/// </summary>
public static class RatingText
{
    /// <summary>The scale in a sentence.</summary>
    public const string Scale = RatingWords.ScoreForm;

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] words = Typed.Words(text);
        if (words.Length > 0 && Typed.Is(words[0], "ratings"))
        {
            return words.Length == 2 && Typed.Is(words[1], "closed")
                ? Parsed.As(new RatingsClosed())
                : Parsed.No(RatingWords.RatingsAreOnlyClosed, RatingWords.ClosingForm);
        }

        if (words.Length == 0 || !Typed.Is(words[0], "rate"))
        {
            return null;
        }

        string[] plain = [.. words.Skip(1).Where(w => !w.Contains('=', StringComparison.Ordinal))];
        return plain.Length < 3
            ? Parsed.No(RatingWords.RatingNamesPersonAttributeScore, RatingWords.RatingForm(ExampleNames.In(study)))
            : Of(plain, [.. words.Skip(1).Where(w => w.Contains('=', StringComparison.Ordinal))], study);
    }

    private static Parsed Of(string[] plain, string[] named, Study study)
    {
        int name = Math.Min(EarGate.WordsOfName(plain, study), plain.Length - 2);
        string attribute = string.Join(' ', plain[name..^1]);
        if (RatedAttribute.Called(attribute, study.Plan) is not { } rated)
        {
            return Parsed.No(
                RatingWords.CallsNoAttribute(attribute),
                RatingWords.AttributesAre(string.Join(", ", RatedAttribute.Of(study.Plan).Select(a => a.Name)))
            );
        }

        if (Typed.Number(plain[^1]) is not { } points || !Score.IsScore(points))
        {
            return Parsed.No(RatingWords.TypedIsOffScale(plain[^1]), Scale);
        }

        RatingGiven rating = new(CrewMember.NameMeant(study.Plan?.Crew, string.Join(' ', plain[..name])), rated.Name, new Score(points));
        foreach (string word in named)
        {
            if (With(rating, word) is not { } more)
            {
                return Parsed.No(RatingWords.IsNoPartOfRating(word), RatingWords.RatingFormWithSeat(ExampleNames.In(study)));
            }

            rating = more;
        }

        return Parsed.As(rating);
    }

    private static RatingGiven? With(RatingGiven rating, string word)
    {
        int equals = word.IndexOf('=', StringComparison.Ordinal);
        string value = word[(equals + 1)..];
        return word[..equals].ToLowerInvariant() switch
        {
            "seat" when value.Length > 0 => rating with { Seat = value.ToLowerInvariant() },
            "code" when SpecCode.Parse(value) is { } code => rating with { Code = code },
            _ => null,
        };
    }
}
