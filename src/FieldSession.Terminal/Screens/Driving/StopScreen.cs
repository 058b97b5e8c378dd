using System.Collections.Immutable;
using FieldSession.State;
using FieldSession.Terminal.Look;
using FieldSession.Terminal.Parked;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>The stop: the last run read back in order, mended, and the next one started. Shut until the car is parked.</summary>
internal sealed class StopScreen(Desk desk, Pen pen) : ParkedScreen(KeyTable.Stop, desk, pen)
{
    private const int MostHintRows = 6;

    private int _run;
    private int _place;

    private ImmutableList<Passage> Passages => Study.LastRun?.Passages ?? [];

    private Passage? Marked => _place < Passages.Count ? Passages[_place] : null;

    /// <inheritdoc/>
    public override void Enter()
    {
        Follow();
        base.Enter();
    }

    /// <inheritdoc/>
    protected override ParkedPage Page(int columns)
    {
        Follow();
        StopPage page = new(Study, _place, Desk.Clock.LocalTimeZone, columns);
        ImmutableArray<PageRow> todo = [.. WhatNext.RowsWhenReadBack(Study, Desk.Keys, columns)];
        return new ParkedPage([.. page.Rows, .. todo], Hint()) { HintRows = MostHintRows, Marked = page.MarkedRow };
    }

    /// <inheritdoc/>
    protected override void Take(string answer)
    {
        if (answer.Length == 0)
        {
            Start();
        }
        else
        {
            WriteAndFollow(StopLine.Of(answer, _run, Marked?.Segment ?? 0));
        }
    }

    /// <inheritdoc/>
    protected override void Do(KeyDeed deed)
    {
        string place = $"{_run}.{Marked?.Segment}";
        switch (deed)
        {
            case KeyDeed.Previous or KeyDeed.Next:
                _place = Math.Clamp(_place + (deed == KeyDeed.Next ? 1 : -1), 0, Math.Max(0, Passages.Count - 1));
                break;
            case KeyDeed.Confirm:
                WriteAndFollow($"confirm {place}");
                break;
            case KeyDeed.ShiftOn:
                Write($"shift {place} +1");
                break;
            case KeyDeed.ShiftBack:
                Write($"shift {place} -1");
                break;
            case KeyDeed.Undo:
                Write("u");
                break;
            case KeyDeed.Back:
                Ask(KeyDeed.Screen, KeyTable.Drive);
                break;
        }
    }

    private void Start()
    {
        if (Study.CodeAsked is { } code)
        {
            WriteAndFollow($"run {code}");
        }
    }

    // Once a run is on, everything belongs to the drive screen; after a mended reading the next doubtful one is marked.
    private void WriteAndFollow(string line)
    {
        bool wasAsked = Marked is Reading { IsToBeAsked: true };
        Write(line);
        if (Study.RunOn is not null)
        {
            Ask(KeyDeed.Screen, KeyTable.Drive);
        }
        else if (wasAsked && Marked is Reading { IsToBeAsked: false })
        {
            _place = Doubtful() ?? _place;
        }
    }

    // Another run is read back from its first doubtful reading.
    private void Follow()
    {
        int run = Study.LastRun?.Number ?? 0;
        if (_run != run)
        {
            _run = run;
            _place = Doubtful() ?? 0;
        }

        _place = Math.Clamp(_place, 0, Math.Max(0, Passages.Count - 1));
    }

    private int? Doubtful()
    {
        int place = Passages.FindIndex(passage => passage is Reading { IsToBeAsked: true });
        return place < 0 ? null : place;
    }

    private string Hint()
    {
        string mend = Marked switch
        {
            Reading { IsToBeAsked: true } reading => DrivingScreenWords.HowToConfirm(reading),
            Reading => DrivingScreenWords.FiguresCorrect,
            _ => "",
        };
        return mend + (WhatNext.StartWords(Study) is { } start ? $"Enter: {start}" : DrivingScreenWords.EscGoesBack);
    }
}
