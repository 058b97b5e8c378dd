using FieldSession.State;

namespace FieldSession.Reviewing;

/// <summary>How blind a study is, and what cannot be told before the reveal, in plain words.</summary>
public static class BlindWords
{
    /// <summary>What is in the title of a study whose codes were never sealed.</summary>
    public const string NotBlind = "NOT BLIND";

    /// <summary>"blind", or "NOT BLIND" where no codes were sealed.</summary>
    public static string Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Fittings.Count > 0 ? "blind" : NotBlind;
    }

    /// <summary>Sentences for the blind summary; empty for a study of one sealed fitting.</summary>
    public static IEnumerable<string> Remarks(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.Fittings.Count == 0)
        {
            yield return $"{NotBlind}: no codes were sealed; whoever drove may have known what was on the car.";
        }

        foreach (string line in ConflictWords.Of(study).Concat(SessionWords.Of(study)))
        {
            yield return line;
        }

        if (study.Fittings.Count > 1)
        {
            yield return $"{string.Join("; ", study.Fittings.Select((fitting, index) => Fitted(study, fitting, index + 1)))}.";
            yield return "Only the keys say which codes of different fittings are the same spec: until the reveal they are compared as different codes, "
                + "and their difference may come from the specs or from what changed in between.";
        }
    }

    private static string Fitted(Study study, Fitting fitting, int number)
    {
        int[] runs = [.. study.Runs.Where(run => fitting.Codes.Contains(run.Code)).Select(run => run.Number)];
        string driven = runs.Length == 0 ? "not driven" : runs.Length == 1 ? $"run {runs[0]}" : $"runs {runs[0]} to {runs[^1]}";
        string codes = string.Join(", ", fitting.Codes.Select(code => code.Digits).Order(StringComparer.Ordinal));
        return $"Fitting {number}: codes {codes}, {driven}";
    }
}
