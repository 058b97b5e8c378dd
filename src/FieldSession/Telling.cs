using System.Collections.Immutable;
using FieldSession.Driving;
using FieldSession.Journal;
using FieldSession.Merging;
using FieldSession.State;

namespace FieldSession;

/// <summary>One line as it is told: the study before it, in the hand of the laptop that wrote it, and after it.</summary>
/// <param name="Line">The line.</param>
/// <param name="Entry">What it says, with the numbers of the study of all laptops; null: it can't be read.</param>
/// <param name="Before">The study before it.</param>
/// <param name="After">The study after it.</param>
internal sealed record Told(Line Line, Entry? Entry, Study Before, Study After)
{
    /// <summary>Whether the line does nothing: its laptop took it back, or a decision leaves it out.</summary>
    public bool IsLeftOut { get; init; }

    /// <summary>What was said to it.</summary>
    public Echo Echo =>
        IsLeftOut && Entry is not (ActUndone or LettersTakenBack)
            ? new Echo(LogbookWords.LineTakenBackOrLeftOut(Line.Number, Line.Kind))
            : PaperLines.EchoOf(Entry!, Before, After);
}

/// <summary>
/// Tells a journal of several laptops as one study. Each line is applied in the hand of its laptop. What a laptop took back, and what a
/// settled conflict leaves out as a whole, does nothing, but is in its place.
/// </summary>
internal static class Telling
{
    /// <summary>The lines told one after another, in the order of <see cref="StrandOrder"/>.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="isTolerant">Whether a line that can't be read is passed over instead of refused.</param>
    /// <exception cref="InvalidDataException">A line is whole, but no program of ours can have written it.</exception>
    public static IEnumerable<Told> Of(IReadOnlyList<Line> lines, bool isTolerant = false)
    {
        IReadOnlyList<Line> ordered = StrandOrder.Of(lines);
        string? first = ordered.Any(line => line.Strand != ordered[0].Strand) ? ordered[0].Strand : null;
        (Line Line, Entry? Entry)[] entries = [.. ordered.Select(line => (line, Read(line, isTolerant, () => EntryKinds.EntryIn(line))))];
        LinesLeftOut leftOut = first is null ? LinesLeftOut.None : LinesLeftOut.In(entries, first);
        Study study = Study.Empty with { FirstStrand = first };
        for (int i = 0; i < entries.Length; i++)
        {
            (Line line, Entry? entry) = entries[i];
            LineMark mark = MarkOf(line, first, i + 1);
            Study before = study.InHandOf(mark.Strand);
            Told? told = entry is null ? null : Read(line, isTolerant, () => One(line, entry, before, mark, leftOut));
            yield return told ?? new Told(line, null, before, before);
            study = told?.After ?? before;
        }
    }

    /// <summary>Where a line is.</summary>
    /// <param name="line">The line.</param>
    /// <param name="firstStrand">The study's first strand on disk; null: there is only one.</param>
    /// <param name="place">Its place among all lines, from 1.</param>
    public static LineMark MarkOf(Line line, string? firstStrand, int place) =>
        firstStrand is null || line.Strand == firstStrand
            ? new LineMark(line.Number, line.At) { Place = place }
            : new LineMark(line.Number, line.At) { Strand = line.Strand, Place = place };

    private static T? Read<T>(Line line, bool isTolerant, Func<T> read)
        where T : class
    {
        try
        {
            return AnotherHand.Told(line, read);
        }
        catch (InvalidDataException) when (isTolerant)
        {
            return null;
        }
    }

    private static Told One(Line line, Entry entry, Study before, LineMark mark, LinesLeftOut leftOut)
    {
        if (leftOut.Contains(mark.Name, entry))
        {
            return new Told(line, entry, before, before) { IsLeftOut = true };
        }

        Entry numbered = before.IsShared ? entry.Renumbered(before) : entry;
        if (before.IsShared && !numbered.IsAboutSomethingIn(before))
        {
            return new Told(line, numbered, before, before) { IsLeftOut = true };
        }

        return new Told(line, numbered, before, ConflictWatch.Watched(before, PaperLines.Applied(numbered, before, mark), mark));
    }
}

/// <summary>
/// Lines that do nothing when the study is told: taken back by their laptop, or left out by the last decision on a conflict.
/// </summary>
/// <param name="TakenBack">Lines taken back, and those that took them back.</param>
/// <param name="Decided">Lines that a decision leaves out.</param>
/// <param name="FromOn">Of each strand ("": the first) the line from which on a decision leaves out its data, and the last line it holds
/// for.</param>
internal sealed record LinesLeftOut(
    ImmutableHashSet<LineName> TakenBack,
    ImmutableHashSet<LineName> Decided,
    ImmutableDictionary<string, (int From, int To)> FromOn
)
{
    /// <summary>Nothing is left out.</summary>
    public static LinesLeftOut None { get; } = new([], [], ImmutableDictionary<string, (int From, int To)>.Empty);

    /// <summary>What a journal leaves out.</summary>
    public static LinesLeftOut In(IReadOnlyList<(Line Line, Entry? Entry)> entries, string first)
    {
        HashSet<LineName> takenBack = [];
        Dictionary<(ConflictKind, LineName, LineName), ConflictSide> decided = [];
        HashSet<LineName> letters =
        [
            .. entries.SelectMany(one => one.Entry is LettersTakenBack back ? LinesFrom(back.From, one.Line, first) : []),
        ];
        takenBack.UnionWith(letters);
        foreach ((Line line, Entry? entry) in entries)
        {
            LineName name = Telling.MarkOf(line, first, 1).Name;
            if (entry is ActUndone undone && !letters.Contains(name))
            {
                takenBack.UnionWith(LinesFrom(undone.Line, line, first));
            }
            else if (entry is ConflictSettled settled)
            {
                decided[(settled.Kind, settled.First, settled.Second)] = settled.Counts;
            }
        }

        return new LinesLeftOut([.. takenBack], [.. decided.Select(WholeLine).OfType<LineName>()], FrozenOf(decided, entries, first));
    }

    /// <summary>Whether a line does nothing.</summary>
    public bool Contains(LineName name, Entry entry) =>
        TakenBack.Contains(name)
        || Decided.Contains(name)
        || (
            FromOn.TryGetValue(name.Strand ?? "", out (int From, int To) range)
            && name.Line >= range.From
            && name.Line <= range.To
            && !entry.OutlivesFreeze
        );

    private static IEnumerable<LineName> LinesFrom(int number, Line to, string first) =>
        Enumerable
            .Range(number, Math.Max(0, to.Number - number + 1))
            .Select(between => Telling.MarkOf(to, first, 1).Name with { Line = between });

    // runs and readings are kept in sight and marked; of a plan's part and of a person's prediction there can be only one
    private static LineName? WholeLine(KeyValuePair<(ConflictKind Kind, LineName First, LineName Second), ConflictSide> decided) =>
        decided.Key.Kind is ConflictKind.SamePlanPart or ConflictKind.SamePrediction or ConflictKind.SameShift
            ? decided.Value switch
            {
                ConflictSide.First => decided.Key.Second,
                ConflictSide.Second => decided.Key.First,
                _ => null,
            }
            : null;

    private static ImmutableDictionary<string, (int From, int To)> FrozenOf(
        Dictionary<(ConflictKind Kind, LineName First, LineName Second), ConflictSide> decided,
        IReadOnlyList<(Line Line, Entry? Entry)> entries,
        string first
    )
    {
        var ranges = ImmutableDictionary.CreateBuilder<string, (int From, int To)>();
        foreach (
            LineName second in decided
                .Where(d => d.Key.Kind == ConflictKind.AfterFreeze && d.Value == ConflictSide.First)
                .Select(d => d.Key.Second)
        )
        {
            string onDisk = second.Strand ?? first;
            // its next joining line knows of the freeze
            int? joined = entries
                .Where(e => e.Line.Strand == onDisk && e.Line.Number > second.Line && e.Entry is StrandJoined)
                .Select(e => (int?)e.Line.Number)
                .Min();
            ranges[second.Strand ?? ""] = (second.Line, joined ?? int.MaxValue);
        }

        return ranges.ToImmutable();
    }
}

/// <summary>
/// What a line did, flat, for programs that question a study without telling its journal: told when the line was stored, by all lines there
/// were then.
/// </summary>
/// <param name="Run">Run that it changed; null: none.</param>
/// <param name="Code">Code of that run; null: none.</param>
/// <param name="Segment">Segment whose reading it took, flagged, corrected or missed; null: none.</param>
/// <param name="LowDb">Low end of that reading after the line, dB; null: no reading.</param>
/// <param name="HighDb">High end of it, or its one value, dB; null: no reading.</param>
/// <param name="Cause">What spoilt that reading, as known after the line; null: nothing.</param>
public sealed record LineFact(int? Run, string? Code, int? Segment, double? LowDb, double? HighDb, string? Cause)
{
    /// <summary>A line that changed no run, or could not be told.</summary>
    public static LineFact None { get; } = new(null, null, null, null, null, null);

    /// <summary>What each line did, in the order of the lines.</summary>
    /// <param name="lines">All lines of the study so far.</param>
    public static IReadOnlyList<LineFact> Of(IReadOnlyList<Line> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        Dictionary<string, LineFact> told = [];
        foreach (Told one in Telling.Of(lines, isTolerant: true))
        {
            told[one.Line.Hash] = Of(one);
        }

        return [.. lines.Select(line => told.GetValueOrDefault(line.Hash, None))];
    }

    private static LineFact Of(Told told)
    {
        if (told.After.Runs.FindLast(run => !ReferenceEquals(run, told.Before.Runs.ElementAtOrDefault(run.Number - 1))) is not { } run)
        {
            return None;
        }

        Run? before = told.Before.Runs.ElementAtOrDefault(run.Number - 1);
        Passage? passage = run
            .Passages.Where((one, place) => !ReferenceEquals(one, before?.Passages.ElementAtOrDefault(place)))
            .LastOrDefault();
        Reading? reading = passage as Reading;
        return new LineFact(
            run.Number,
            run.Code.Digits,
            passage?.Segment,
            reading?.Levels.LowDb,
            reading?.Levels.HighDb,
            reading?.Spoilt?.Cause.Word()
        );
    }
}
