using System.Collections.Immutable;
using FieldSession.Aligning;
using FieldSession.Journal;
using FieldSession.Reviewing;
using FieldSession.State;
using FieldSession.Terminal.Look;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>One line of the journal in the crew's words.</summary>
/// <param name="Number">Number of the line.</param>
/// <param name="Echo">What the program said.</param>
internal sealed record Act(int Number, Echo Echo);

/// <summary>The journal's last acts in words.</summary>
/// <param name="Last">The last acts, newest last.</param>
internal sealed record Acts(ImmutableList<Act> Last)
{
    /// <summary>No act yet.</summary>
    public static Acts None { get; } = new([]);

    /// <summary>The last acts of a logbook.</summary>
    public static Acts Of(Logbook logbook) => new([.. logbook.LastFacts.Select(fact => new Act(fact.Place, fact.Echo))]);

    /// <summary>The acts from a line on: while a run is on, what was read in earlier runs stays out of sight.</summary>
    public IEnumerable<Act> Since(int number) => Last.Where(act => act.Number >= number);
}

/// <summary>The last acts, newest below, each with the number of its journal line.</summary>
internal static class ActsBlock
{
    private const int NumberColumns = 6;
    private const int MostActs = 8;

    /// <summary>At most so many rows; an act takes several of them where it may be wrapped.</summary>
    public static IEnumerable<PageRow> Rows(DriveSight sight, int columns, int rows, bool wrapped)
    {
        int from = sight.Study.RunOn?.Started.Place ?? 0;
        return sight.Acts.Since(from).TakeLast(MostActs).SelectMany(act => Rows(act, columns, wrapped)).TakeLast(rows);
    }

    private static IEnumerable<PageRow> Rows(Act act, int columns, bool wrapped)
    {
        string words = act.Echo.Doubt is null ? act.Echo.Words : $"? {act.Echo.Words}";
        int room = columns - NumberColumns;
        string number = $"{act.Number, 4}  ";
        foreach (string line in wrapped ? Wrapped.Lines(words, room) : [Columns.Cut(words, room)])
        {
            yield return PageRow.Of(Columns.Left(number, NumberColumns), Ink.Quiet).And(line);
            number = "";
        }
    }
}

/// <summary>What the drive page is made from.</summary>
/// <param name="Study">The study.</param>
/// <param name="Acts">The last acts.</param>
/// <param name="Comparison">The running comparison, covered where it must be.</param>
/// <param name="Message">Words about the last key or line, such as why it was refused; null: none.</param>
/// <param name="Keys">The keys.</param>
/// <param name="Held">A line that was not stored; null: none.</param>
internal sealed record DriveSight(
    Study Study,
    Acts Acts,
    ImmutableArray<SegmentRow> Comparison,
    string? Message,
    KeyTable Keys,
    HeldLine? Held = null
)
{
    /// <summary>What a stream of levels shows; null: there is none.</summary>
    public StreamSight? Levels { get; init; }

    /// <summary>How the next segment and the stored figures are written.</summary>
    public LetterForm Letters { get; init; }

    /// <summary>Whether the box holds the range of the stream.</summary>
    public bool IsOffered { get; init; }
}

/// <summary>The drive screen's words, and where the entry box is among them.</summary>
/// <param name="Rows">The rows.</param>
/// <param name="Box">Row, first column and width of the entry box.</param>
internal sealed record DriveWords(ImmutableArray<PageRow> Rows, (int Row, int Column, int Columns) Box);
