using System.Collections.Immutable;
using System.Text;
using FieldSession.Driving;
using FieldSession.Journal;
using FieldSession.Merging;
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
    private StrandJoined? _noteDue;
    private readonly DateTimeOffset _openedAt;
    private readonly long _openedStamp;
    private DateTimeOffset _lastAct = DateTimeOffset.MinValue;

    private Logbook(IJournal journal, TimeProvider clock, string newStrand)
    {
        _journal = journal;
        _clock = clock;
        _openedAt = clock.GetUtcNow();
        _openedStamp = clock.GetTimestamp();
        _lines = [.. StrandOrder.Of(journal.Lines)];
        _strand = newStrand;
        Study = Study.Empty;
        Tell();
        TakeNote();
    }

    /// <summary>What is known now.</summary>
    public Study Study { get; private set; }

    /// <summary>Hash of the journal's last line; zeros while it is empty. Noted on paper it pins every line before it.</summary>
    public string HeadHash => _lines.Count == 0 ? Line.NoHash : _lines[^1].Hash;

    /// <summary>Every line of the journal, in order.</summary>
    public IReadOnlyList<Line> Lines => _lines;

    /// <summary>Every entry of the journal, in order, read again from its lines.</summary>
    public IEnumerable<Entry> Entries => _lines.Select(EntryKinds.EntryIn);

    /// <summary>The last dozen facts with what was answered to them, newest last.</summary>
    public ImmutableList<WrittenFact> LastFacts { get; private set; } = [];

    /// <summary>The acts that the disk would not take and that were not written since, oldest first.</summary>
    public ImmutableList<UnsavedAct> Unsaved { get; private set; } = [];

    /// <summary>Raised after the study has changed.</summary>
    public event EventHandler? Changed;

    /// <summary>Raised after <see cref="Unsaved"/> has changed.</summary>
    public event EventHandler? UnsavedChanged;

    /// <summary>Opens the logbook on a journal and reads it from the first line.</summary>
    /// <param name="journal">The record behind the study, verified.</param>
    /// <param name="clock">Where the time comes from.</param>
    /// <param name="strand">The strand of this laptop, 16 hex digits. It is begun with the first line written where the journal does not
    /// hold it.</param>
    public static Logbook Open(IJournal journal, TimeProvider clock, string strand)
    {
        ArgumentNullException.ThrowIfNull(journal);
        return new Logbook(journal, clock, strand);
    }

    /// <summary>The study that a journal's lines tell, from the first to the last, in the hand of the laptop that wrote the last.</summary>
    /// <exception cref="InvalidDataException">A line is whole, but no program of ours can have written it.</exception>
    public static Study Fold(IEnumerable<Line> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        return Telling.Of([.. lines]).LastOrDefault()?.After ?? Study.Empty;
    }

    /// <summary>Writes a fact, where nothing rules it out, and makes it durable.</summary>
    public Outcome Write(Entry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return Write(entry, null);
    }

    private Outcome Write(Entry entry, string? typed)
    {
        if (entry.ObjectionIn(Study) is { } objection)
        {
            return Outcome.Refused(objection);
        }

        Study before = Study;
        try
        {
            WriteNote();
            // all that can go wrong in our own code goes wrong before the line is written
            Line line = Next(entry);
            Study after = AfterOwn(entry, line, before);
            WrittenFact fact = new(line, _lines.Count + 1, PaperLines.EchoOf(entry, before, after));
            _journal.Append(line);
            _lines.Add(line);
            Study = after;
            Keep(fact);
            Changed?.Invoke(this, EventArgs.Empty);
            Forget(typed);
            return Outcome.Written(fact.Place, fact.Echo);
        }
        catch (IOException broken)
        {
            if (entry.MayBeKeptElsewhere)
            {
                Remember(new UnsavedAct(_clock.GetUtcNow(), typed ?? $"# {JsonOf(entry)}", broken.Message));
            }

            return Outcome.NotSaved(broken.Message);
        }
    }

    /// <summary>Reads a typed line and writes the fact it means.</summary>
    public Outcome Write(string typed)
    {
        Parsed parsed = EntryText.Parse(typed, Study);
        if (parsed is { Entry: { } logged, Paper: { } paper })
        {
            parsed = PaperLines.Of(logged, paper, Now(), _clock.LocalTimeZone, Study.Hand.LastOfDay);
        }

        return parsed.Entry is { } entry ? Write(entry, typed) : Outcome.Refused(parsed.Objection!);
    }

    // the crew tries the same line again and again until the disk takes it
    private void Remember(UnsavedAct act)
    {
        if (Unsaved.LastOrDefault()?.Typed != act.Typed)
        {
            Unsaved = Unsaved.Add(act);
            UnsavedChanged?.Invoke(this, EventArgs.Empty);
        }
    }

    private void Forget(string? typed)
    {
        if (typed is not null && Unsaved.LastOrDefault()?.Typed == typed)
        {
            Unsaved = Unsaved.RemoveAt(Unsaved.Count - 1);
            UnsavedChanged?.Invoke(this, EventArgs.Empty);
        }
    }

    private string JsonOf(Entry entry)
    {
        Line line = Next(entry);
        return $"{line.Kind} {Encoding.UTF8.GetString(line.Body)}";
    }

    private void Keep(WrittenFact fact) => LastFacts = (LastFacts.Count < FactsKept ? LastFacts : LastFacts.RemoveAt(0)).Add(fact);

    private void Tell()
    {
        LastFacts = [];
        int early = Math.Max(0, _lines.Count - FactsKept);
        int place = 0;
        foreach (Told told in Telling.Of(_lines))
        {
            Study = told.After;
            place++;
            if (place > early)
            {
                int here = place;
                Keep(AnotherHand.Told(told.Line, () => new WrittenFact(told.Line, here, told.Echo)));
            }
        }
    }

    // Until something is written, what is there to take note of is known, but is in no line.
    private void TakeNote()
    {
        if (_lines.Count == 0)
        {
            return;
        }

        string first = _lines[0].Strand;
        StrandEnd[] ends = [.. OtherEnds()];
        Line? noted = _lines.FindLast(line => line.Strand == _strand && line.Kind == EntryKinds.Joined);
        bool isNoted = ends.Length == 0 || (noted is not null && StrandOrder.EndsIn(noted).SequenceEqual(ends));
        _noteDue = isNoted ? null : new StrandJoined([.. ends]);
        string? hand = _strand == first ? null : _strand;
        Study here = (ends.Length > 0 ? Study with { FirstStrand = first } : Study).InHandOf(hand);
        Study = _noteDue?.ApplyTo(here, new LineMark(0, _lines[^1].At) { Strand = hand, Place = _lines.Count }) ?? here;
    }

    private IEnumerable<StrandEnd> OtherEnds() =>
        _lines
            .Where(line => line.Strand != _strand)
            .GroupBy(line => line.Strand)
            .Select(strand => strand.Last())
            .Select(last => new StrandEnd(last.Strand, last.Number, last.Hash))
            .OrderBy(end => end.Strand, StringComparer.Ordinal);

    private void WriteNote()
    {
        if (_noteDue is { } due)
        {
            Line line = Next(due);
            _journal.Append(line);
            _lines.Add(line);
            _noteDue = null;
        }
    }

    private Line Next(Entry entry)
    {
        Line? last = Study.FirstStrand is null ? _lines.LastOrDefault() : _lines.FindLast(line => line.Strand == _strand);
        return EntryKinds.Of(entry).Write(entry, (last?.Number ?? 0) + 1, last?.Hash ?? Line.NoHash, Now(), _strand);
    }

    // An act taken back and a decision reach back over the lines of other laptops: the whole is told again.
    private Study AfterOwn(Entry entry, Line line, Study before) =>
        Study.FirstStrand is not null && entry is ActUndone or LettersTakenBack or ConflictSettled
            ? Telling.Of([.. _lines, line]).Last().After
            : PaperLines.Applied(entry, before, Telling.MarkOf(line, Study.FirstStrand, _lines.Count + 1));

    // A clock that is set back while the logbook is open does not count; one that is ahead, as after a sleep of the laptop, does.
    private DateTimeOffset Now()
    {
        DateTimeOffset steady = _openedAt + _clock.GetElapsedTime(_openedStamp);
        DateTimeOffset shown = _clock.GetUtcNow();
        DateTimeOffset now = steady - shown > Jitter ? steady : shown;
        // the two clocks run apart by milliseconds: an act is not before the one that was written before it
        bool isJustBefore = now < _lastAct && _lastAct - now <= Jitter;
        return _lastAct = isJustBefore ? _lastAct : now;
    }
}
