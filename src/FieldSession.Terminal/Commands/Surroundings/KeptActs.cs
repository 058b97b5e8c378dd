using System.Collections.Concurrent;
using System.Collections.Immutable;
using FieldSession.Journal;
using FieldSession.Store.Journaling;

namespace FieldSession.Terminal.Commands;

/// <summary>
/// Keeps what was typed and the disk would not take: in memory as long as the program runs, and in a second place at once. Whoever types is
/// told where, and at the end what is still not in the study.
/// </summary>
internal sealed class KeptActs : IDisposable
{
    private readonly Logbook _logbook;
    private readonly SecondPlace? _place;
    private readonly string _study;
    private readonly string _earlier;
    private readonly ConcurrentQueue<string> _troubles = [];
    private string? _notKeptBecause;

    /// <summary>Keeps from now on.</summary>
    /// <param name="logbook">The study's one door.</param>
    /// <param name="study">Path of the study.</param>
    /// <param name="place">The second place; null: there is none.</param>
    public KeptActs(Logbook logbook, string study, SecondPlace? place)
    {
        _logbook = logbook;
        _study = study;
        _place = place;
        _earlier = EarlierIn(place);
        if (_earlier.Length > 0)
        {
            _troubles.Enqueue(CommandWords.ActsOfEarlierSittingKept(place!.File, study));
        }

        logbook.UnsavedChanged += OnChanged;
    }

    /// <summary>What there is to say, each only once; null: nothing new.</summary>
    public string? TakeTrouble() => _troubles.TryDequeue(out string? trouble) ? trouble : null;

    /// <summary>What is not in the study at the end, and where it is kept, in lines; empty: all is in it.</summary>
    public IEnumerable<string> AtTheEnd()
    {
        ImmutableList<UnsavedAct> acts = _logbook.Unsaved;
        if (acts.Count == 0)
        {
            return [];
        }

        string[] typed = [.. acts.Select(act => $"  {act.Typed}")];
        return [CommandWords.ActsNotInStudy(acts.Count, _study), .. typed, Where()];
    }

    /// <inheritdoc/>
    public void Dispose() => _logbook.UnsavedChanged -= OnChanged;

    private static string EarlierIn(SecondPlace? place)
    {
        try
        {
            return place?.Held() ?? "";
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
        {
            return "";
        }
    }

    private string Where() =>
        (_place, _notKeptBecause) switch
        {
            (null, _) => CommandWords.ActsKeptNowhere,
            (_, { } why) => CommandWords.ActsCantBeKept(_place.File, why),
            _ => CommandWords.ActsKeptIn(_place.File, _study),
        };

    private void OnChanged(object? sender, EventArgs changed)
    {
        _notKeptBecause = WhyNotKept();
        if (_logbook.Unsaved.Count > 0)
        {
            _troubles.Enqueue(CommandWords.ActsAreInMemory(_logbook.Unsaved.Count, Where()));
        }
    }

    private string? WhyNotKept()
    {
        try
        {
            _place?.Keep(_earlier, _logbook.Unsaved);
            return null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return fault.Message;
        }
    }
}
