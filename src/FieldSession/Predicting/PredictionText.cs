using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Predicting;

/// <summary>
/// Reads <c>predict Tam feature=862 sure=3 quieter=417 pay=no because=sound words to the end</c>, or <c>sure=80%</c>. Only
/// person, feature and sure must be given.
/// </summary>
public static class PredictionText
{
    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Study study)
    {
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !Typed.Is(words[0], "predict"))
        {
            return null;
        }

        if (words.Length < 4)
        {
            return Parsed.No(PredictingWords.WhatPredictionNames, Form(study));
        }

        // a name of several words ends where the answers begin
        int parts = Math.Max(2, Array.FindIndex(words, word => word.IndexOf('=', StringComparison.Ordinal) > 0));
        string person = CrewMember.NameMeant(study.Plan?.Crew, string.Join(' ', words[1..parts]));
        Dictionary<string, string> said = [];
        while (parts < words.Length && words[parts].IndexOf('=', StringComparison.Ordinal) is > 0 and var equals)
        {
            said[words[parts][..equals].ToLowerInvariant()] = words[parts][(equals + 1)..];
            parts++;
        }

        string free = string.Join(' ', words.Skip(parts));
        return Of(person, said, free.Length == 0 ? null : free, study);
    }

    /// <summary>The prediction that named answers make.</summary>
    /// <param name="person">Who predicts.</param>
    /// <param name="answers">feature, sure, and where there is an opinion quieter, pay and because.</param>
    /// <param name="words">More in their own words; null: none.</param>
    /// <param name="study">The study, for the examples.</param>
    public static Parsed Of(string person, IReadOnlyDictionary<string, string> answers, string? words, Study study)
    {
        ArgumentNullException.ThrowIfNull(answers);
        string? stranger = answers.Keys.FirstOrDefault(k => k is not ("feature" or "sure" or "quieter" or "pay" or "because"));
        if (stranger is not null)
        {
            return Parsed.No(PredictingWords.NoPartOfPrediction(stranger), Form(study));
        }

        if (SpecCode.Parse(answers.GetValueOrDefault("feature", "")) is not { } feature)
        {
            return Parsed.No(PredictingWords.FeatureCodeMissing, Form(study));
        }

        if (PredictionScale.Read(answers.GetValueOrDefault("sure", "")) is not { } sure)
        {
            return Parsed.No(PredictingWords.HowSureIsTyped, Form(study));
        }

        SpecCode? quieter = SpecCode.Parse(answers.GetValueOrDefault("quieter", ""));
        if (quieter is null && answers.ContainsKey("quieter"))
        {
            return Parsed.No(PredictingWords.NoThreeDigitCode(answers["quieter"]), Form(study));
        }

        (bool Known, bool? Value) pay = YesNo(answers.GetValueOrDefault("pay", ""));
        PredictionBasis? basis = Basis(answers.GetValueOrDefault("because", "guess"));
        return (pay.Known, basis) switch
        {
            (false, _) => Parsed.No(PredictingWords.PayIsYesOrNo, Form(study)),
            (_, null) => Parsed.No(PredictingWords.BecauseIsTyped, Form(study)),
            _ => Parsed.As(new PredictionLocked(person, feature, sure.Step, quieter, pay.Value, basis.Value, words, sure.Percent)),
        };
    }

    private static string Form(Study study) => PredictingWords.PredictionForm(ExampleNames.In(study));

    private static (bool Known, bool? Value) YesNo(string word) =>
        word.ToLowerInvariant() switch
        {
            "" => (true, null),
            "yes" or "y" => (true, true),
            "no" or "n" => (true, false),
            _ => (false, null),
        };

    private static PredictionBasis? Basis(string word) =>
        word.ToLowerInvariant() switch
        {
            "sound" => PredictionBasis.Sound,
            "seen" => PredictionBasis.Seen,
            "guess" => PredictionBasis.Guess,
            _ => null,
        };
}
