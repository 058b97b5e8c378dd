using FieldSession.Comparing;

namespace FieldSession.Reviewing;

/// <summary>What stands below a verdict in words: the line under an assumed repeatability, and how much the result hangs on single parts of the day.</summary>
internal static class ExtraWords
{
    private const string Indent = "    ";
    private const int MostNamed = 5;

    /// <summary>The lines.</summary>
    public static IEnumerable<string> Of(ClassComparison one) => [.. Assumed(one.Assumed), .. Sensitivity(one.Sensitivity, one.Verdict)];

    private static IEnumerable<string> Assumed(Estimate? assumed) => assumed?.Lo95Db is null
        ? []
        : PlainLines.Wrapped(
            Indent,
            $"(no archive: if runs repeat with 0.5 dB, which is assumed and not measured, {Figures.Interval95(assumed)}; no verdict rests on this)");

    private static IEnumerable<string> Sensitivity(Sensitivity? sensitivity, string plain)
    {
        if (sensitivity is null || sensitivity.Lines.Count == 0)
        {
            return [];
        }

        int silent = sensitivity.Lines.Count(line => !line.HasVerdict);
        string[] changing = [.. sensitivity.Lines.Where(line => line.HasVerdict && line.Verdict != plain).Select(Name)];
        string verdict = changing.Length == 0 ? "no change gives another verdict"
            : changing.Length > MostNamed ? $"{changing.Length} of {sensitivity.Lines.Count} changes give another verdict"
            : $"another verdict with {string.Join(", ", changing)}";
        string none = silent == 0 ? "" : $"; {silent} of {sensitivity.Lines.Count} changes leave too little for one";
        return PlainLines.Wrapped($"{Indent}hangs on: ", $"d from {Figures.SignedDb(sensitivity.LowestDb)} to {Figures.SignedDb(sensitivity.HighestDb)} with one thing changed; {verdict}{none}");
    }

    /// <summary>What was changed, in words.</summary>
    public static string Name(SensitivityLine line) => line.Change switch
    {
        SensitivityChange.SpoiltPutBack => "spoilt readings put back",
        SensitivityChange.RunLeftOut => $"run {line.Name} left out",
        SensitivityChange.SegmentLeftOut => $"{line.Name} left out",
        _ => "the drift column switched",
    };
}
