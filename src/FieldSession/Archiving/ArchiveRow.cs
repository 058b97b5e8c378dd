using FieldSession.State;

namespace FieldSession.Archiving;

/// <summary>What an archive, a folder or a CSV of it, can lend of one finished study over one class of segments.</summary>
/// <param name="Scatter">How well runs and readings repeated.</param>
/// <param name="Crew">The crew in words; null: not told, any.</param>
/// <param name="Loop">The whole route; null: not told, any.</param>
public sealed record ArchiveRow(EarlierScatter Scatter, string? Crew = null, string? Loop = null)
{
    /// <summary>What finished studies can lend.</summary>
    public static IEnumerable<ArchiveRow> Of(IEnumerable<ArchivedStudy> studies) =>
        from study in studies
        where study.IsFinished
        from scatter in study.Scatter
        where !scatter.IsKind
        select new ArchiveRow(
            new EarlierScatter(study.Name, scatter.Group, scatter.NuRun, scatter.SRunDb, scatter.Kbar, scatter.NuE, scatter.SEDb, study.Identity.Hash),
            study.CrewInWords,
            study.Route);

    /// <summary>What is lent to a plan: the days of its own crew on its own loop.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="own">The study that borrows, which never lends to itself; null: it is still to be made.</param>
    /// <param name="rows">What there is.</param>
    public static IEnumerable<EarlierScatter> LentTo(Plan plan, StudyIdentity? own, IEnumerable<ArchiveRow> rows)
    {
        ArgumentNullException.ThrowIfNull(plan);
        string crew = ArchivedStudy.CrewInWordsOf(plan);
        string loop = ArchivedStudy.RouteOf(plan);
        return rows.Where(row => (row.Crew is null || CrewMember.SamePerson(row.Crew, crew)) && (row.Loop is null || row.Loop == loop))
            .Select(row => row.Scatter)
            .Where(scatter => IsOther(scatter, own));
    }

    /// <summary>Whether some scatter is of another study than the one that borrows.</summary>
    public static bool IsOther(EarlierScatter scatter, StudyIdentity? own)
    {
        ArgumentNullException.ThrowIfNull(scatter);
        return scatter.Study is null || scatter.Study != own?.Hash;
    }
}
