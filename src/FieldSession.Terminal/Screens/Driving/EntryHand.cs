using FieldSession.Driving;
using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>
/// The hand at the entry box: what is typed is stored, refused or taken back. A refused line never costs a second one: the box is free
/// at once, and the line stays in sight.
/// </summary>
/// <param name="desk">What it may use.</param>
/// <param name="pen">The hand that writes.</param>
/// <param name="box">The box.</param>
internal sealed class EntryHand(Desk desk, Pen pen, TypingBox box)
{
    private readonly EnterBounce _enter = new(desk.Clock);
    private readonly UnstoredLines _unstored = new(pen);
    private readonly Rhythm _rhythm = new(desk.Clock);
    private bool _isUnsaved;
    private bool _isDraft;

    /// <summary>Is told when what is to be shown has changed.</summary>
    public required Action Changed { get; init; }

    /// <summary>Is told of a wish that only the shell can fulfil.</summary>
    public required Action<KeyDeed, string> Asked { get; init; }

    /// <summary>Words about the last key or line; null: none.</summary>
    public string? Message { get; private set; }

    /// <summary>The line that was not stored; null: none.</summary>
    public HeldLine? Held => _unstored.Held;

    private Study Study => desk.Logbook.Study;

    /// <summary>Empties the box; on an empty one drops the line that was not stored.</summary>
    public void Drop()
    {
        if (box.Text.Length == 0)
        {
            _unstored.Release();
        }

        Put("");
        Say(null);
        Changed();
    }

    /// <summary>Brings the line back that was not stored.</summary>
    /// <returns>Whether there was one.</returns>
    public bool Recall()
    {
        if (_unstored.Release() is not { } text)
        {
            return false;
        }

        Put(text);
        Say(null);
        Changed();
        return true;
    }

    /// <summary>Ends the row of keys that may be a word: a named key was pressed.</summary>
    public void EndRow() => _rhythm.End();

    /// <summary>What becomes of a typed character.</summary>
    public TypedKey Press(string text, char typed)
    {
        if (_isUnsaved)
        {
            // what the disk would not take waits in its turn, and the next line is typed into an empty box
            _unstored.Wait(text);
            Put(text = "");
        }

        TypedKey pressed = Typing.Press(
            text,
            typed,
            new TypingMoment(Study, desk.Keys)
            {
                Before = _rhythm.Before,
                Since = _rhythm.Since,
                IsDraft = _isDraft,
            }
        );
        _rhythm.Take(typed, pressed);
        return pressed;
    }

    /// <summary>Does what came of a typed character.</summary>
    public void Do(TypedKey typed)
    {
        switch (typed.Kind)
        {
            case TypedKind.Writes:
                WriteAtOnce(typed);
                break;
            case TypedKind.Corrects:
                MakeWord(typed.Text);
                break;
            case TypedKind.IsHeld:
                _ = _rhythm.TakeBack(1, pen);
                Say(typed.Text);
                break;
            case TypedKind.StoresFirst:
                StoreFirst(typed.Text);
                break;
            case TypedKind.SetsAside:
                _unstored.Hold(box.Text, new Objection(DrivingScreenWords.WordsSetAside, DrivingScreenWords.WordsSetAside));
                Put(typed.Text);
                Changed();
                break;
            case TypedKind.AsksHelp:
                Asked(KeyDeed.Help, "");
                break;
            default:
                Say(typed.Text.Length == 0 ? null : typed.Text);
                break;
        }
    }

    private void WriteAtOnce(TypedKey typed)
    {
        bool isNote = box.Text.Length > 0;
        if (Store(isNote ? typed.Text : "", () => pen.Write(typed.Text), typed.Text) && typed.Begun.Length > 0)
        {
            _rhythm.Wrote(desk.Logbook.LastFacts[^1].Line.Number);
        }
    }

    private void MakeWord(string letters)
    {
        bool wasTakenBack = _rhythm.TakeBack(0, pen);
        _rhythm.End();
        _isDraft = Study.RunOn is not null;
        box.Put(_isDraft ? $"; {letters}" : letters);
        Say(
            _isDraft ? DrivingScreenWords.DraftOffered
            : wasTakenBack ? DrivingScreenWords.WordTakenBack
            : null
        );
    }

    private void StoreFirst(string next)
    {
        string text = box.Text;
        Parsed parsed = EntryText.Parse(Typing.LineOf(text), Study);
        bool isStored = Store(
            text,
            () =>
                parsed.Entry switch
                {
                    ReadingTaken reading => pen.Write(reading with { WithoutEnter = true }),
                    { } note => pen.Write(note),
                    null => Outcome.Refused(parsed.Objection!),
                }
        );
        if (_isUnsaved)
        {
            _unstored.Wait(text);
        }

        Put(next);
        if (isStored && parsed.Entry is ReadingTaken)
        {
            Say(DrivingScreenWords.StoredWithoutEnter);
        }
    }

    /// <summary>Takes what is in the box: Enter.</summary>
    public void Commit()
    {
        _rhythm.End();
        bool bounced = _enter.IsBounce();
        string text = box.Text;
        string line = Typing.LineOf(text);
        if (Parking.IsWord(_isDraft ? line.TrimStart(';') : line))
        {
            Park();
        }
        else if (Typing.EndsInReading(line))
        {
            Put("");
            Refuse(
                text,
                new Objection(DrivingScreenWords.ReadingInNote, DrivingScreenWords.PutBlankBefore)
                {
                    Cure = DrivingScreenWords.ReadingAgainCure,
                }
            );
        }
        else if (line.Length > 0)
        {
            Store(text, () => pen.Write(line));
        }
        else if (_unstored.Waiting > 0)
        {
            Say(_unstored.WriteWaiting() is { } outcome ? ShellWords.NotWritten(outcome) : null);
        }
        else
        {
            StartRun(bounced);
        }
    }

    private void StartRun(bool bounced)
    {
        if (Study.RunOn is null && Study.CodeAsked is { } code)
        {
            if (bounced)
            {
                Say(DrivingScreenWords.EnterBounced);
            }
            else
            {
                Store("", () => pen.Write($"run {code}"));
            }
        }
    }

    private void Park()
    {
        Put("");
        if (Study.RunOn is { } run)
        {
            Say(DrivingScreenWords.StopShutWhileRunOn(run));
            return;
        }

        Say(null);
        desk.Parking.Take(Parking.Word);
        Asked(KeyDeed.Screen, ScreenName.Stop);
    }

    // A refused line leaves the box free for the next one; what the disk would not take stays, to be tried again with Enter.
    private bool Store(string text, Func<Outcome> write, string unsaved = "")
    {
        bool wasOn = Study.RunOn is not null;
        Message = null;
        Put("");
        Outcome outcome = _unstored.Write(write);
        if (outcome.IsWritten)
        {
            Written(outcome, wasOn);
            return true;
        }

        if (outcome.Objection is { } objection)
        {
            Refuse(text, objection);
        }
        else
        {
            Put(text.Length > 0 ? text : unsaved);
            _isUnsaved = box.Text.Length > 0;
            Say(_unstored.Waiting > 0 ? DrivingScreenWords.LinesWait(_unstored.Waiting + 1) : ShellWords.NotWritten(outcome));
        }

        return false;
    }

    private void Written(Outcome outcome, bool wasOn)
    {
        if (wasOn && _unstored.Release() is not null)
        {
            Changed();
        }

        if (!wasOn && Study.RunOn is not null && outcome.Echo?.Doubt is { } doubt)
        {
            Say(DrivingScreenWords.RunDoubted(doubt));
        }
    }

    private void Refuse(string text, Objection objection)
    {
        _unstored.Hold(text, objection);
        Message = $"{objection}";
        Changed();
    }

    private void Put(string text)
    {
        _isUnsaved = false;
        _isDraft = false;
        box.Put(text);
    }

    /// <summary>Says words about the last key; null: takes them away.</summary>
    public void Say(string? message)
    {
        if (Message != message)
        {
            Message = message;
            Changed();
        }
    }
}
