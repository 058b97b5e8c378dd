using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;
using FieldSession.Store.Journaling;

namespace FieldSession.Terminal.Starting;

/// <summary>The studies opened last, each with how far it has come; studies of one name are told apart, copies of one study are called so.</summary>
internal static class RecentStudies
{
    /// <summary>The studies at some paths, without opening one for writing.</summary>
    public static ImmutableArray<RecentStudy> At(IEnumerable<string> paths)
    {
        Glance[] all = [.. paths.Select(GlanceAt)];
        return [.. all.Select((one, place) => new RecentStudy(one.Path, one.Words + Apart(one, all, place)))];
    }

    private static string Apart(Glance one, Glance[] all, int place)
    {
        if (one.Identity is not { } identity)
        {
            return "";
        }

        int original = Array.FindIndex(all, other => other.Identity == identity);
        return original < place
            ? StartingWords.CopyOf(original + 1)
            : all.Any(other => other.Identity is { } others && others != identity && other.Name == one.Name) ? StartingWords.ToldApart(one.Begun, identity) : "";
    }

    private static Glance GlanceAt(string path)
    {
        try
        {
            IReadOnlyList<Line> lines = StudyGlance.LinesOf(path);
            Study study = Logbook.Fold(lines);
            return new Glance(path, WordsOf(study), study.Plan?.StudyName, StudyState.IdentityOf(lines), lines.Count > 0 ? lines[0].At : default);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return new Glance(path, StartingWords.CantBeRead, null, null, default);
        }
    }

    private static string WordsOf(Study study) => DayAhead.Of(study) is { } ahead ? StageWords.Of(study.Plan!.StudyName, ahead) : StageWords.Empty;

    private sealed record Glance(string Path, string Words, string? Name, StudyIdentity? Identity, DateTimeOffset Begun);
}
