using FieldSession.State;

namespace FieldSession.Comparing;

/// <summary>Whether what was spoilt is spread evenly: uneven flags can make a difference that is none.</summary>
public static class SpoiltBalance
{
    /// <summary>The warnings in words, codes only; empty: even enough.</summary>
    public static IEnumerable<string> Warnings(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        double limit = study.Plan?.Limits.Of(FurtherLimits.SpoiltUneven) ?? FurtherLimits.SpoiltUneven.Default;
        (SpecCode Code, double Percent)[] codes =
        [
            .. from runs in study.Runs.GroupBy(run => run.Code)
               let readings = runs.SelectMany(run => run.Readings).ToArray()
               where readings.Length > 0
               select (runs.Key, 100.0 * readings.Count(reading => reading.LeftOut) / readings.Length),
        ];
        if (codes.Length > 1 && codes.Max(code => code.Percent) - codes.Min(code => code.Percent) > limit + 1e-9)
        {
            yield return ComparingWords.SpoiltReadingsAreUneven(string.Join(", ", codes.Select(code => $"{code.Code} {code.Percent:0} %")));
        }

        foreach (string empty in Empty(study))
        {
            yield return empty;
        }
    }

    private static IEnumerable<string> Empty(Study study) =>
        from segment in study.Plan?.Route ?? []
        from code in study.Runs.Where(run => !run.IsOn).Select(run => run.Code).Distinct()
        let readings = study.Runs.Where(run => run.Code == code).SelectMany(run => run.Readings).Where(reading => reading.Segment == segment.Number).ToArray()
        where readings.Length > 0 && readings.All(reading => reading.LeftOut)
        select ComparingWords.EveryReadingIsSpoilt(code, segment.Name);
}
