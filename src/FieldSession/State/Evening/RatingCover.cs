namespace FieldSession.State;

/// <summary>
/// Each rates alone: what someone gave stays covered, on screens and in exports, until everyone in the car has stored
/// that attribute of that run, or the run's ratings are closed. Closed they are by 'ratings closed', by the next run's
/// start, and when the data freeze.
/// </summary>
public static class RatingCover
{
    /// <summary>Whether the ratings of a run are closed.</summary>
    public static bool IsClosed(Study study, int run)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.DataFrozen || IsDrivenOn(study, run) || study.RatingsClosed.Contains(run);
    }

    // the same car's next run; with one laptop, any next run
    private static bool IsDrivenOn(Study study, int run) =>
        run < study.Runs.Count && study.Runs.Skip(run).Any(later => later.Started.Strand == study.Runs[run - 1].Started.Strand);

    /// <summary>Whether a rating may be shown.</summary>
    public static bool IsOpen(Study study, SeatRating rating)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(rating);
        return IsClosed(study, rating.Run) || StillToRate(study, rating.Run, rating.Attribute).Length == 0;
    }

    /// <summary>The ratings that may be shown.</summary>
    public static IEnumerable<SeatRating> Open(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Ratings.Where(rating => IsOpen(study, rating));
    }

    /// <summary>The members of the crew who have not stored an attribute of a run.</summary>
    public static CrewMember[] StillToRate(Study study, int run, string attribute)
    {
        ArgumentNullException.ThrowIfNull(study);
        return [.. (study.Plan?.Crew ?? []).Where(member => Of(study, run, member.Name, attribute) is null)];
    }

    /// <summary>What a person gave for an attribute of a run; null: not stored.</summary>
    public static SeatRating? Of(Study study, int run, string person, string attribute)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Ratings.FirstOrDefault(r => r.Run == run && r.Attribute == attribute && CrewMember.SamePerson(r.Person, person));
    }
}
