using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>
/// Reads <c>trials 862 417 n=10 seg=3 side=two which is louder</c>: the pair, the number of trials, and where it is wanted the
/// segment, the side (two, or the code that is expected), <c>kind=triangle</c>, <c>detect=90</c> (the share of right choices
/// that the set is to find, 75 to 90 %), <c>from=recordings</c> (played at home), and the question in words.
/// </summary>
public static class TrialsText
{
    private const double Subtle = 0.75;
    private const double Plain = 0.90;
    private const string FromRecordings = "from=recordings";

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !Typed.Is(words[0], "trials"))
        {
            return null;
        }

        if (words.Length < 4 || SpecCode.Parse(words[1]) is not { } first || SpecCode.Parse(words[2]) is not { } second)
        {
            return Parsed.No(RatingWords.TrialsNamePairAndNumber, RatingWords.TrialsForm(ExampleNames.In(study)));
        }

        string[] named = [.. words.Skip(3).TakeWhile(w => w.Contains('=', StringComparison.Ordinal))];
        string question = string.Join(' ', words.Skip(3 + named.Length)).TrimEnd('?');
        ChoiceTerms terms = new(
            ChoiceKind.Paired,
            first,
            second,
            question.Length == 0 ? RatingWords.UsualQuestion : question,
            null,
            null,
            Subtle
        );
        return Of(terms, named, study);
    }

    private static Parsed Of(ChoiceTerms terms, string[] named, Study study)
    {
        int? trials = null;
        bool isFromRecordings = false;
        foreach (string word in named)
        {
            if (Typed.Is(word, FromRecordings))
            {
                isFromRecordings = true;
            }
            else if (Value(word, "n") is { } number && Typed.Count(number) is <= ChoiceTrialsPlanned.MostTrials and { } count)
            {
                trials = count;
            }
            else if (Read(terms, word) is { } read)
            {
                terms = read;
            }
            else
            {
                return Parsed.No(
                    RatingWords.IsNoPartOfTrials(word),
                    RatingWords.TrialsFormWithAllParts(ExampleNames.In(study), ChoiceTrialsPlanned.MostTrials)
                );
            }
        }

        return trials is not { } n ? Parsed.No(RatingWords.NumberOfTrialsIsMissing, RatingWords.TrialsForm(ExampleNames.In(study)))
            : isFromRecordings
                ? Parsed.As(new ChoiceTrialsPlanned(terms, [.. Enumerable.Repeat("", n)], Sealed: true, FromRecordings: true))
            : Parsed.As(new ChoiceTrialsPlanned(terms, Counterbalance.Of(terms.Places, n, Seed(study, terms)), Sealed: true));
    }

    private static ChoiceTerms? Read(ChoiceTerms terms, string word) =>
        word.Split('=')[0].ToLowerInvariant() switch
        {
            "seg" when Typed.Count(Value(word, "seg")!) is { } segment => terms with { Segment = segment },
            "side" when Typed.Is(Value(word, "side")!, "two") => terms with { Expected = null },
            "side" when SpecCode.Parse(Value(word, "side")!) is { } expected => terms with { Expected = expected },
            "kind" when Typed.Is(Value(word, "kind")!, "triangle") => terms with { Kind = ChoiceKind.Triangle },
            "kind" when Typed.Is(Value(word, "kind")!, "paired") => terms with { Kind = ChoiceKind.Paired },
            "detect" when Typed.Number(Value(word, "detect")!) / 100 is >= Subtle and <= Plain and { } share => terms with
            {
                DetectShare = share,
            },
            _ => null,
        };

    private static string? Value(string word, string name) =>
        word.StartsWith(name + "=", StringComparison.OrdinalIgnoreCase) ? word[(name.Length + 1)..] : null;

    private static string Seed(Study study, ChoiceTerms terms) =>
        $"{study.Plan?.StudyName}|{study.ChoiceSets.Count + 1}|{terms.First}|{terms.Second}";
}
