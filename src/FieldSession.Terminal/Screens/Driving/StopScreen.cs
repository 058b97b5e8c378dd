using System.Collections.Immutable;
using FieldSession.Driving;
using FieldSession.Journal;
using FieldSession.State;
using FieldSession.Terminal.Look;
using FieldSession.Terminal.Parked;
using Terminal.Gui.Input;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>
/// The stop: the last run read back in route order, repaired and filled, what is due asked, the next run started. Shut until the car is
/// parked.
/// </summary>
internal sealed class StopScreen(Desk desk, Pen pen) : ParkedScreen(ScreenName.Stop, desk, pen)
{
    private const int MostHintRows = 6;
    private const int MostDueRows = 4;

    private readonly StopLetters _letters = new(desk, pen);
    private int _run;
    private int _place;
    private int _placeBefore;
    private ShiftPreview? _shift;
    private string? _unstored;

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
        return new ParkedPage(page.Rows, Hint())
        {
            HintRows = MostHintRows,
            Marked = page.MarkedRow,
            Above = due,
        };
    }

    /// <inheritdoc/>
    protected override void Take(string answer)
    {
        ShiftPreview? shown = _shift;
        _shift = null;
        if (answer.Length == 0 && shown is not null)
        {
            TakeShift(shown);
        }
        else if (answer.Length == 0)
        {
            Start();
        }
        else if (ShiftPreview.Of(StopLine.Of(answer, Marked), Study) is { } asked)
        {
            Show(asked);
        }
        else
        {
            WriteAndFollow(StopLine.Of(answer, Marked), answer);
        }
    }

    /// <inheritdoc/>
    protected override bool Takes(Key key)
    {
        if (BoxText.Length > 0 || !(IsOpen || _letters.IsOfWord) || !StopLetters.IsTyped(key, out char typed))
        {
            _letters.End();
            return false;
        }

        if (!_letters.IsOfWord)
        {
            _placeBefore = _place;
        }

        (StopLetter kind, string text) = _letters.Press(typed);
        switch (kind)
        {
            case StopLetter.Word:
                MakeWord(text);
                return true;
            case StopLetter.Bounce:
                Say(text);
                return true;
            default:
                return false;
        }
    }

    /// <inheritdoc/>
    protected override void Do(KeyDeed deed)
    {
        ShiftPreview? shown = _shift;
        int lines = Desk.Logbook.Lines.Count;
        _shift = null;
        if (!Look(deed, shown))
        {
            Act(deed, shown is not null);
        }

        _letters.Wrote(lines);
    }

    // An undo may have begun a run again; what a letter did is gone, so the car is as parked as before.
    private void MakeWord(string letters)
    {
        Say(_letters.TakeBack() ? DrivingScreenWords.WordTakenBack : null);
        if (Study.RunOn is null)
        {
            Desk.Parking.Take(Parking.Word);
        }

        (_place, _shift) = (_placeBefore, null);
        BeginLine(letters);
    }

    // what only looks, or begins something
    private bool Look(KeyDeed deed, ShiftPreview? shown)
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
                Preview(shown, 1);
                return true;
            case KeyDeed.ShiftBack:
                Preview(shown, -1);
                return true;
            case KeyDeed.Due:
                CompleteOrOffer();
                return true;
            case KeyDeed.Recall:
                BeginLine(_unstored ?? "");
                _unstored = null;
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
                Ask(KeyDeed.Screen, ScreenName.Drive);
                break;
        }
    }

    private void Move(int by) => _place = Math.Clamp(_place + by, 0, Math.Max(0, Rows.Length - 1));

    // the mark goes along with the reading it was on
    private void TakeShift(ShiftPreview shift)
    {
        int segment = (Marked?.Segment.Number ?? 0) + shift.By;
        Write(shift.Line);
        int place = Rows.ToList().FindIndex(row => row.Run.Number == shift.Run && row.Segment.Number == segment);
        _place = place < 0 ? _place : place;
    }

    // once more in the same direction is one segment more, in the other one less
    private void Preview(ShiftPreview? shown, int step)
    {
        int by = (shown?.By ?? 0) + step;
        if (by != 0 && Marked is { } row && Stretch.Into(row.Run, Study.Plan!.Route.Count, row.Segment.Number, by) is { } stretch)
        {
            Show(new ShiftPreview(row.Run.Number, stretch, by));
        }
        else if (by != 0)
        {
            _shift = shown;
            Say(DrivingScreenWords.NoGapToShiftInto(Marked, by));
        }
    }

    private void Show(ShiftPreview shift)
    {
        _shift = shift;
        ToTop();
    }

    private void CompleteOrOffer()
    {
        if (BoxText.Length == 0)
        {
            OfferDue();
            return;
        }

        BeginLine(WordsBegun.Completed(BoxText, Study));
    }

    // Doubts are marked one after the other; what is typed is begun in the box.
    private void OfferDue()
    {
        Due? due = DueAtStop.In(Study).FirstOrDefault(one => one.Kind == DueKind.Doubts || one.Line.Length > 0);
        if (due is { Kind: DueKind.Doubts })
        {
            _place = StopRow.NextDoubt(Rows, _place) ?? _place;
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

    // Once a run is on, everything belongs to the drive screen; after a repaired reading the next doubtful one is marked.
    private void WriteAndFollow(string line, string typed = "")
    {
        bool wasOpen = Marked?.IsOpenDoubt == true;
        (int run, int segment) = (Marked?.Run.Number ?? 0, Marked?.Segment.Number ?? 0);
        Keep(Pen.Write(line), typed);
        if (Study.RunOn is not null)
        {
            Ask(KeyDeed.Screen, ScreenName.Drive);
            return;
        }

        StopRow? same = Rows.FirstOrDefault(row => row.Run.Number == run && row.Segment.Number == segment);
        bool isAnswered = wasOpen && same?.IsOpenDoubt != true;
        _place = isAnswered ? StopRow.NextDoubt(Rows, _place) ?? _place : _place;
        KeepMarkInSight();
    }

    // What was refused, or what the disk would not take, is kept for one key that brings it back.
    private void Keep(Outcome outcome, string typed)
    {
        if (!Told(outcome) && typed.Length > 0)
        {
            _unstored = typed;
            Say($"{ShellWords.NotWritten(outcome)}; {DrivingScreenWords.BackspaceBringsLineBack}");
        }
        else if (outcome.IsWritten)
        {
            _unstored = null;
        }
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

    private string Hint()
    {
        string cure = Marked is { } row ? DrivingScreenWords.HowToCorrect(row) : "";
        return cure + (WhatNext.StartWords(Study) is { } start ? $"Enter: {start}" : DrivingScreenWords.EscGoesBack);
    }
}
