using System.Collections.Immutable;
using FieldSession.Driving;
using FieldSession.State;
using FieldSession.Terminal.Look;
using FieldSession.Terminal.Parked;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>The stop: the last run read back in route order, mended and filled, what is due asked, the next run started. Shut until the car is parked.</summary>
internal sealed class StopScreen(Desk desk, Pen pen) : ParkedScreen(KeyTable.Stop, desk, pen)
{
    private const int MostHintRows = 6;
    private const int MostDueRows = 4;

    private int _run;
    private int _place;
    private ShiftPreview? _shift;

    private ImmutableArray<StopRow> Rows => StopRow.Of(Study);

    private StopRow? Marked => Rows is { Length: > 0 } rows ? rows[Math.Clamp(_place, 0, rows.Length - 1)] : null;

    /// <inheritdoc/>
    public override void Enter()
    {
        _shift = null;
        Follow();
        KeepMarkInSight();
        base.Enter();
    }

    /// <inheritdoc/>
    protected override ParkedPage Page(int columns)
    {
        Follow();
        if (_shift is { } shift)
        {
            return new ParkedPage(shift.Rows(Study), DrivingScreenWords.HowToTakeShift);
        }

        StopPage page = new(Study, Rows, _place, Desk, columns);
        ImmutableArray<PageRow> due = [.. WhatNext.DueRows(Study, Desk.Keys, columns).Take(MostDueRows)];
        return new ParkedPage(page.Rows, Hint()) { HintRows = MostHintRows, Marked = page.MarkedRow, Above = due };
    }

    /// <inheritdoc/>
    protected override void Take(string answer)
    {
        if (_shift is { } shift)
        {
            _shift = null;
            TakeShift(shift, answer);
        }
        else if (answer.Length == 0)
        {
            Start();
        }
        else
        {
            WriteAndFollow(StopLine.Of(answer, Marked));
        }
    }

    /// <inheritdoc/>
    protected override void Do(KeyDeed deed)
    {
        bool wasShifting = _shift is not null;
        _shift = null;
        if (!Look(deed))
        {
            Act(deed, wasShifting);
        }
    }

    // what only looks, or begins something
    private bool Look(KeyDeed deed)
    {
        switch (deed)
        {
            case KeyDeed.Previous:
                Move(-1);
                return true;
            case KeyDeed.Next:
                Move(1);
                return true;
            case KeyDeed.ShiftOn:
                Preview(1);
                return true;
            case KeyDeed.ShiftBack:
                Preview(-1);
                return true;
            case KeyDeed.Due:
                OfferDue();
                return true;
            default:
                return false;
        }
    }

    private void Act(KeyDeed deed, bool wasShifting)
    {
        switch (deed)
        {
            case KeyDeed.Confirm:
                WriteAndFollow(Marked is { } row ? $"confirm {row.Place}" : "confirm");
                break;
            case KeyDeed.Undo:
                Write("u");
                break;
            case KeyDeed.Back when !wasShifting:
                Ask(KeyDeed.Screen, KeyTable.Drive);
                break;
        }
    }

    private void Move(int by) => _place = Math.Clamp(_place + by, 0, Math.Max(0, Rows.Length - 1));

    // the mark goes along with the reading it stood on
    private void TakeShift(ShiftPreview shift, string answer)
    {
        if (answer.Length > 0)
        {
            WriteAndFollow(StopLine.Of(answer, Marked));
            return;
        }

        int segment = (Marked?.Segment.Number ?? 0) + shift.By;
        Write(shift.Line);
        int place = Rows.ToList().FindIndex(row => row.Run.Number == shift.Run && row.Segment.Number == segment);
        _place = place < 0 ? _place : place;
    }

    private void Preview(int by)
    {
        if (Marked is { } row && Stretch.Into(row.Run, Study.Plan!.Route.Count, row.Segment.Number, by) is { } stretch)
        {
            _shift = new ShiftPreview(row.Run.Number, stretch, by);
            ToTop();
        }
        else
        {
            Say(DrivingScreenWords.NoGapToShiftInto(Marked, by));
        }
    }

    // Doubts are marked one after the other; what is typed is begun in the box.
    private void OfferDue()
    {
        Due? due = DueAtStop.In(Study).FirstOrDefault(one => one.Kind == DueKind.Doubts || one.Line.Length > 0);
        if (due is { Kind: DueKind.Doubts })
        {
            _place = NextDoubt() ?? _place;
        }
        else if (due is not null)
        {
            BeginLine(due.Line);
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
        bool wasOpen = Marked?.IsOpenDoubt == true;
        (int run, int segment) = (Marked?.Run.Number ?? 0, Marked?.Segment.Number ?? 0);
        Write(line);
        if (Study.RunOn is not null)
        {
            Ask(KeyDeed.Screen, KeyTable.Drive);
            return;
        }

        StopRow? same = Rows.FirstOrDefault(row => row.Run.Number == run && row.Segment.Number == segment);
        bool isAnswered = wasOpen && same?.IsOpenDoubt != true;
        _place = isAnswered ? NextDoubt() ?? _place : _place;
        KeepMarkInSight();
    }

    // Another run is read back from its newest reading: that one is still in the ear.
    private void Follow()
    {
        int run = Study.LastRun?.Number ?? 0;
        if (_run != run)
        {
            _run = run;
            _shift = null;
            _place = StopRow.Newest(Rows);
            KeepMarkInSight();
        }

        _place = Math.Clamp(_place, 0, Math.Max(0, Rows.Length - 1));
    }

    private int? NextDoubt()
    {
        ImmutableArray<StopRow> rows = Rows;
        int[] doubtful = [.. Enumerable.Range(0, rows.Length).Where(place => rows[place].IsOpenDoubt)];
        return doubtful.Length == 0 ? null : doubtful.Cast<int?>().FirstOrDefault(place => place > _place) ?? doubtful[0];
    }

    private string Hint()
    {
        string mend = Marked is { } row ? HowToMend(row) : "";
        return mend + (WhatNext.StartWords(Study) is { } start ? $"Enter: {start}" : DrivingScreenWords.EscGoesBack);
    }

    private static string HowToMend(StopRow row) => row switch
    {
        { IsOpenDoubt: true, Reading: { } reading } => DrivingScreenWords.HowToConfirm(row, reading),
        { Reading: not null } => DrivingScreenWords.FiguresCorrect(row),
        _ => DrivingScreenWords.FiguresFill(row),
    };
}
