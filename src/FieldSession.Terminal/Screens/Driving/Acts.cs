using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>One line of the journal in the crew's words.</summary>
/// <param name="Number">Number of the line.</param>
/// <param name="Echo">What the program said.</param>
internal sealed record Act(int Number, Echo Echo);

/// <summary>The journal's last acts in words, read along as lines come.</summary>
/// <param name="Read">The lines read so far.</param>
/// <param name="Study">The study after them.</param>
/// <param name="Last">The last acts, newest last.</param>
internal sealed record Acts(ImmutableList<Line> Read, Study Study, ImmutableList<Act> Last)
{
    private const int Kept = 12;

    /// <summary>Nothing read yet.</summary>
    public static Acts None { get; } = new([], Study.Empty, []);

    /// <summary>The acts after all lines of a journal; lines that are read already are not read again.</summary>
    public Acts After(IReadOnlyList<Line> lines)
    {
        bool goesOn = Read.Count <= lines.Count && (Read.Count == 0 || Read[^1] == lines[Read.Count - 1]);
        return (goesOn ? lines.Skip(Read.Count) : lines).Aggregate(goesOn ? this : None, (acts, line) => acts.And(line));
    }

    /// <summary>The acts from a line on: while a run is on, what was read in earlier runs stays out of sight.</summary>
    public IEnumerable<Act> Since(int number) => Last.Where(act => act.Number >= number);

    private Acts And(Line line)
    {
        Entry entry = EntryKinds.EntryIn(line);
        Study after = entry.ApplyTo(Study, new LineMark(line.Number, line.At));
        ImmutableList<Act> kept = Last.Count < Kept ? Last : Last.RemoveAt(0);
        return new Acts(Read.Add(line), after, kept.Add(new Act(line.Number, entry.EchoIn(Study, after))));
    }
}
