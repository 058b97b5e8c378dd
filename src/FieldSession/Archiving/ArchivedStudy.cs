using System.Collections.Immutable;
using FieldSession.Comparing;
using FieldSession.Revealing;
using FieldSession.State;

namespace FieldSession.Archiving;

/// <summary>What an archive keeps of a study: how well runs and readings repeated, and how the crew's predictions came out. Which code was
/// louder is not in it, nor what a code was.</summary>
/// <param name="Identity">Which study it is; two studies may have one name.</param>
/// <param name="Name">The study's name.</param>
/// <param name="Began">When its first run started, UTC; null: none was driven.</param>
/// <param name="Crew">The crew's names, in order of the alphabet.</param>
/// <param name="Route">The route's segments with their kinds, in order: two studies with the same text drove the same loop.</param>
/// <param name="Runs">Runs driven.</param>
/// <param name="IsFinished">Whether the key is open: only then nothing of it can change any more.</param>
/// <param name="Scatter">How well runs and readings repeated; empty while it is not finished.</param>
/// <param name="Predictions">The predictions, scored; empty while it is not finished.</param>
public sealed record ArchivedStudy(
    StudyIdentity Identity,
    string Name,
    DateTimeOffset? Began,
    ImmutableArray<string> Crew,
    string Route,
    int Runs,
    bool IsFinished,
    ImmutableArray<ArchivedScatter> Scatter,
    ImmutableArray<ScoredPrediction> Predictions
)
{
    /// <summary>What else is kept of it; nothing while it is not finished.</summary>
    public ArchivedDetails Details { get; init; } = ArchivedDetails.None;

    /// <summary>The crew in words.</summary>
    public string CrewInWords => InWords(Crew);

    /// <summary>The route in words: first and last segment, and how many.</summary>
    public string RouteInWords
    {
        get
        {
            string[] names = [.. Route.Split('|').Select(part => part.Split('/')[0])];
            return names.Length < 2 ? names[0] : $"{names[0]} to {names[^1]} ({names.Length})";
        }
    }

    /// <summary>What an archive keeps of a study.</summary>
    /// <param name="identity">Which study it is.</param>
    /// <param name="study">The study.</param>
    /// <param name="key">The opened key; null: it is not open.</param>
    public static ArchivedStudy Of(StudyIdentity identity, Study study, OpenedKey? key)
    {
        ArgumentNullException.ThrowIfNull(study);
        bool isFinished = study.Opening is not null;
        return new ArchivedStudy(
            identity,
            study.Plan?.StudyName ?? "",
            study.Runs.Count == 0 ? null : study.Runs[0].Started.At,
            study.Plan is { } planned ? CrewOf(planned) : [],
            study.Plan is { } plan ? RouteOf(plan) : "",
            study.Runs.Count,
            isFinished,
            isFinished ? [.. ArchivedScatter.Of(study)] : [],
            isFinished ? [.. PredictionScores.In(study, key)] : []
        )
        {
            Details = isFinished ? ArchivedDetails.Of(study, key) : ArchivedDetails.None,
        };
    }

    /// <summary>A plan's crew in words, as the archive knows it.</summary>
    public static string CrewInWordsOf(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return InWords(CrewOf(plan));
    }

    private static ImmutableArray<string> CrewOf(Plan plan) =>
        [.. plan.Crew.Select(member => member.Name).Order(StringComparer.OrdinalIgnoreCase)];

    private static string InWords(IEnumerable<string> crew) => string.Join(", ", crew);

    /// <summary>A plan's route as the archive knows it.</summary>
    public static string RouteOf(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return string.Join('|', plan.Route.Select(segment => $"{segment.Name}/{segment.Kind.Word}"));
    }
}

/// <summary>
/// How well one study repeated over a class of segments or a kind of surface (docs/formulas.md, "Archive"): its own outputs, no prior, no
/// floor.
/// </summary>
/// <param name="Group">"all", "steady", "impact", "ring" for the ring band of recordings, or a kind of surface.</param>
/// <param name="IsKind">Whether it is a kind of surface.</param>
/// <param name="NuRun">Degrees of freedom of <paramref name="SRunDb"/>.</param>
/// <param name="SRunDb">Run-to-run standard deviation of the run means, dB; null without degrees of freedom.</param>
/// <param name="Kbar">Share of the reading variance in a run mean.</param>
/// <param name="NuE">Degrees of freedom of <paramref name="SEDb"/>.</param>
/// <param name="SEDb">Standard deviation of a reading about its run and segment, dB; null without degrees of freedom.</param>
public sealed record ArchivedScatter(string Group, bool IsKind, double NuRun, double? SRunDb, double Kbar, double NuE, double? SEDb)
{
    /// <summary>Word of all segments together.</summary>
    public const string All = "all";

    /// <summary>
    /// The scatter of a study by class, then by kind in the order of the route; groups without a comparison are left away.
    /// </summary>
    public static IEnumerable<ArchivedScatter> Of(Study study)
    {
        MeasuredDay day = StudyReadings.Of(study);
        ComparisonTerms terms = StudyTerms.Of(study) with { Archive = null };
        ClassComparisons? classes = FirstPairOf(day, terms);
        IEnumerable<ArchivedScatter?> byClass =
        [
            One(All, false, classes?.All),
            One("steady", false, classes?.Steady),
            One("impact", false, classes?.Impact),
        ];
        IEnumerable<ArchivedScatter?> byKind = (day.Planned ?? [])
            .Select(segment => segment.Kind)
            .Distinct()
            .Select(kind => One(kind, true, FirstPairOf(OfKind(day, kind), terms)?.All));
        ArchivedScatter? ring = One(EarlierScatter.Ring, false, RingFinding.Of(study)?.Pairs is [{ } first, ..] ? first.Main : null);
        return byClass.Append(ring).Concat(byKind).OfType<ArchivedScatter>();
    }

    // all pairs share one model, so the first one tells the scatter of all
    private static ClassComparisons? FirstPairOf(MeasuredDay day, ComparisonTerms terms) =>
        BlindComparison.Of(day, terms).Comparisons is [{ } first, ..] ? first.Classes : null;

    private static MeasuredDay OfKind(MeasuredDay day, string kind) =>
        new([.. day.Levels.Where(level => level.Kind == kind)], 0, [.. (day.Planned ?? []).Where(segment => segment.Kind == kind)]);

    private static ArchivedScatter? One(string group, bool isKind, ClassComparison? found) =>
        found is { Kbar: { } kbar } && (found.NuRun > 0 || found.NuE > 0)
            ? new ArchivedScatter(group, isKind, found.NuRun, found.SRunDb, kbar, found.NuE, found.SEDb)
            : null;
}

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
            new EarlierScatter(
                study.Name,
                scatter.Group,
                scatter.NuRun,
                scatter.SRunDb,
                scatter.Kbar,
                scatter.NuE,
                scatter.SEDb,
                study.Identity.Hash
            ),
            study.CrewInWords,
            study.Route
        );

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
