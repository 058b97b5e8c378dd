using System.Globalization;

namespace FieldSession.Archiving;

/// <summary>An archive in plain words.</summary>
public static class ArchiveWords
{
    /// <summary>The list of studies, a line each.</summary>
    public static IEnumerable<string> Listed(IEnumerable<ArchivedStudy> studies)
    {
        ArgumentNullException.ThrowIfNull(studies);
        return studies.Select(study => string.Create(
            CultureInfo.InvariantCulture,
            $"{study.Began?.UtcDateTime.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "not driven",-10}  {study.Identity.ShortHash}  {study.Name,-16} {study.Runs,3} runs  {(study.IsFinished ? "finished" : "key shut"),-8}  {study.CrewInWords}; {study.RouteInWords}"));
    }

    /// <summary>How well runs and readings repeated, a line a group.</summary>
    public static IEnumerable<string> Summed(IEnumerable<ArchiveSum> sums)
    {
        ArgumentNullException.ThrowIfNull(sums);
        string by = "";
        foreach (ArchiveSum sum in sums)
        {
            if (sum.By != by)
            {
                by = sum.By;
                yield return $"by {by}: standard deviation of a run and of a reading, dB (degrees of freedom)";
            }

            string name = sum.Name.Length > 0 ? $"{sum.Name}, {sum.Group}" : sum.Group;
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"  {name}: run {Sd(sum.RunSdDb)} ({sum.NuRun:0.#}), reading {Sd(sum.ReadingSdDb)} ({sum.NuE:0.#}), {sum.Studies} stud{(sum.Studies == 1 ? "y" : "ies")}");
        }
    }

    private static string Sd(double? sd) => sd?.ToString("0.00", CultureInfo.InvariantCulture) ?? "unknown";
}
