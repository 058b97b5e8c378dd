using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession;

/// <summary>
/// The one door through which a study changes: an entry goes in, an objection or a new study comes out. A line is
/// durable before the study changes; a journal that can't write leaves the very same study.
/// </summary>
public sealed class Logbook
{
    private const int FactsKept = 12;

    // clocks are pulled straight by fractions of a second all the time
    private static readonly TimeSpan Jitter = TimeSpan.FromSeconds(1);

    private readonly IJournal _journal;
    private readonly TimeProvider _clock;
    private readonly string _strand;
    private readonly List<Line> _lines;
    private readonly DateTimeOffset _openedAt;
    private readonly long _openedStamp;

    private Logbook(IJournal journal, TimeProvider clock, string newStrand)
    {
        _journal = journal;
        _clock = clock;
        _openedAt = clock.GetUtcNow();
        _openedStamp = clock.GetTimestamp();
        _lines = [.. journal.Lines];
        _strand = _lines.Count == 0 ? newStrand : _lines[^1].Strand;
        int early = Math.Max(0, _lines.Count - FactsKept);
        Study = Fold(_lines.Take(early));
        foreach (Line line in _lines.Skip(early))
        {
            WrittenFact fact = FactIn(line, Study, out Study after);
            Study = after;
            Keep(fact);
        }
    }

    /// <summary>What is known now.</summary>
    public Study Study { get; private set; }

    /// <summary>Hash of the journal's last line; zeros while it is empty. Noted on paper it pins every line before it.</summary>
    public string HeadHash => _lines.Count == 0 ? Line.NoHash : _lines[^1].Hash;

    /// <summary>Every line of the journal, in order.</summary>
    public IReadOnlyList<Line> Lines => _lines;

    /// <summary>Every entry of the journal, in order, read anew from its lines.</summary>
    public IEnumerable<Entry> Entries => _lines.Select(EntryKinds.EntryIn);

    /// <summary>The last dozen facts with what was answered to them, newest last.</summary>
    public ImmutableList<WrittenFact> LastFacts { get; private set; } = [];

    /// <summary>Raised after the study has changed.</summary>
    public event EventHandler? Changed;

    /// <summary>Opens the logbook on a journal and reads it from the first line.</summary>
    /// <param name="journal">The record behind the study, verified.</param>
    /// <param name="clock">Where the time comes from.</param>
    /// <param name="newStrand">Name of the strand that a first line would begin: 16 hex digits, drawn by lot.</param>
    public static Logbook Open(IJournal journal, TimeProvider clock, string newStrand)
    {
        ArgumentNullException.ThrowIfNull(journal);
        return new Logbook(journal, clock, newStrand);
    }

    /// <summary>The study that a journal's lines tell, from the first to the last.</summary>
    /// <exception cref="InvalidDataException">A line is whole, but no program of ours can have written it.</exception>
    public static Study Fold(IEnumerable<Line> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        return lines.Aggregate(Study.Empty, After);
    }

    /// <summary>Writes a fact, where nothing speaks against it, and makes it durable.</summary>
    public Outcome Write(Entry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        if (entry.ObjectionIn(Study) is { } objection)
        {
            return Outcome.Refused(objection);
        }

        Study before = Study;
        // all that can go wrong in our own code goes wrong before the line is written
        Line line = EntryKinds.Of(entry).Write(entry, _lines.Count + 1, HeadHash, Now(), _strand);
        Study after = entry.ApplyTo(before, MarkOf(line));
        WrittenFact fact = new(line, entry.EchoIn(before, after));
        try
        {
            _journal.Append(line);
        }
        catch (IOException broken)
        {
            return Outcome.NotSaved(broken.Message);
        }

        _lines.Add(line);
        Study = after;
        Keep(fact);
        Changed?.Invoke(this, EventArgs.Empty);
        return Outcome.Written(line.Number, fact.Echo);
    }

    /// <summary>Reads a typed line and writes the fact it means.</summary>
    public Outcome Write(string typed)
    {
        Parsed parsed = EntryText.Parse(typed, Study);
        return parsed.Entry is { } entry ? Write(entry) : Outcome.Refused(parsed.Objection!);
    }

    private void Keep(WrittenFact fact) =>
        LastFacts = (LastFacts.Count < FactsKept ? LastFacts : LastFacts.RemoveAt(0)).Add(fact);

    private static Study After(Study study, Line line) => AnotherHand.Told(line, () => EntryKinds.EntryIn(line).ApplyTo(study, MarkOf(line)));

    private static WrittenFact FactIn(Line line, Study before, out Study after)
    {
        Study then = After(before, line);
        after = then;
        return AnotherHand.Told(line, () => new WrittenFact(line, EntryKinds.EntryIn(line).EchoIn(before, then)));
    }

    // A clock that is set back while the logbook is open does not count; one that is ahead, as after a sleep of the laptop, does.
    private DateTimeOffset Now()
    {
        DateTimeOffset steady = _openedAt + _clock.GetElapsedTime(_openedStamp);
        DateTimeOffset shown = _clock.GetUtcNow();
        return steady - shown > Jitter ? steady : shown;
    }

    private static LineMark MarkOf(Line line) => new(line.Number, line.At);
}
