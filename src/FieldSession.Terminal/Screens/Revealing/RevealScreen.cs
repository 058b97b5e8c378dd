using FieldSession.Journal;
using FieldSession.Revealing;
using FieldSession.State;
using FieldSession.Terminal.Parked;

namespace FieldSession.Terminal.Screens.Revealing;

/// <summary>The screen on which the custodian opens the key, after all predictions are locked.</summary>
internal sealed class RevealScreen(Desk desk, Pen pen) : ParkedScreen(ScreenName.Reveal, desk, pen)
{
    private Unlocking _unlocking = Unlocking.Begun;
    private string _firstPassphrase = "";

    private OpenedKey? Opened => Study.Opening is null ? null : OpenedKey.In(Desk.Logbook.Entries);

    /// <inheritdoc/>
    protected override ParkedPage Page(int columns)
    {
        if (!_unlocking.IsAgain && Opened is { } key)
        {
            return key.Check.Holds
                ? new ParkedPage(RevealPage.Opened(Study, key, columns), NextStep.Words(Study, Desk.Keys, ScreenName.Reveal))
                : new ParkedPage(RevealPage.Opened(Study, key, columns), RevealScreenWords.AgainReadsMarks, "marks");
        }

        if (!_unlocking.IsAgain && KeyGate.ObjectionIn(Study) is { } bar)
        {
            return new ParkedPage(RevealPage.Barred(bar.ToString(), columns), NextStep.Words(Study, Desk.Keys, ScreenName.Reveal));
        }

        UnlockingStep step = _unlocking.Step(Study);
        (string hint, string prompt) = Asking(step);
        return new ParkedPage(RevealPage.Opening(_unlocking, Study, Desk.KeyOfDemo, columns), hint, prompt)
        {
            Secret =
                step is UnlockingStep.Passphrase or UnlockingStep.SecondPassphrase or UnlockingStep.PaperLine or UnlockingStep.PaperControl,
        };
    }

    /// <inheritdoc/>
    protected override void Take(string answer)
    {
        if (!_unlocking.IsAgain && KeyGate.ObjectionIn(Study) is not null)
        {
            bool isAsked = Opened is { Check.Holds: false } && answer.Equals(RevealScreenWords.Again, StringComparison.OrdinalIgnoreCase);
            _unlocking = isAsked ? Unlocking.Begun with { IsAgain = true } : _unlocking;
            return;
        }

        UnlockingStep step = _unlocking.Step(Study);
        if (step == UnlockingStep.Confirm)
        {
            Confirm(answer);
        }
        else if (answer.Length > 0 || step == UnlockingStep.PaperControl)
        {
            Take(step, answer);
        }
    }

    /// <inheritdoc/>
    protected override void Do(KeyDeed deed)
    {
        if (deed == KeyDeed.Back)
        {
            Forget();
        }
    }

    private void Forget()
    {
        _unlocking = Unlocking.Begun;
        _firstPassphrase = "";
    }

    private (string Hint, string Prompt) Asking(UnlockingStep step) =>
        step switch
        {
            UnlockingStep.Path => (RevealScreenWords.AskForKeyFile, "key file"),
            UnlockingStep.Passphrase => (RevealScreenWords.AskForPassphrase, "passphrase"),
            UnlockingStep.SecondPassphrase => (RevealScreenWords.AskForSecondPassphrase, "second passphrase"),
            UnlockingStep.PaperLine => (
                RevealScreenWords.AskForPaperLine(_unlocking.PaperDue(Study)),
                $"spec {_unlocking.PaperDue(Study)}"
            ),
            UnlockingStep.PaperControl => (RevealScreenWords.AskForControl, "control"),
            UnlockingStep.Mark => (RevealScreenWords.AskForMark(_unlocking.CodeDue(Study)), $"mark {_unlocking.CodeDue(Study)}"),
            UnlockingStep.Reader => (RevealScreenWords.AskForReaders, _unlocking.Readers.IsEmpty ? "first reader" : "second reader"),
            _ when !Compared().Holds => (RevealScreenWords.EnterReadsMarksAgain, "marks"),
            _ when _unlocking.IsAgain => (RevealScreenWords.EnterStoresMarks, "marks"),
            _ => (RevealScreenWords.EnterOpensKey, "open"),
        };

    private void Take(UnlockingStep step, string answer)
    {
        switch (step)
        {
            case UnlockingStep.Path:
                _unlocking = _unlocking with { Path = answer };
                break;
            case UnlockingStep.Passphrase:
                Try(answer);
                break;
            case UnlockingStep.SecondPassphrase:
                Try(Desk.TwoPassphrases(_firstPassphrase, answer));
                break;
            case UnlockingStep.PaperLine:
                TakePaper(answer);
                break;
            case UnlockingStep.PaperControl:
                TakeControl(answer);
                break;
            case UnlockingStep.Mark:
                TakeMark(answer);
                break;
            default:
                _unlocking = _unlocking with { Readers = _unlocking.Readers.Add(answer) };
                SayWhatDiffers();
                break;
        }
    }

    private void TakeMark(string answer)
    {
        (MarkRead? mark, Objection? objection) = Opener.Mark($"{_unlocking.CodeDue(Study)}={answer}", Study);
        _unlocking = mark is null ? _unlocking : _unlocking with { Marks = _unlocking.Marks.Add(mark) };
        Say(objection?.ToString());
    }

    // The marks are compared before anything is stored.
    private MarkCheck Compared() =>
        _unlocking.IsAgain
            ? MarkProof.Of(Opened!.DrivenKey, _unlocking.Marks, _unlocking.Readers)
            : _unlocking.Ring.Fact(Study, _unlocking.Marks, _unlocking.Readers).Check;

    private void SayWhatDiffers()
    {
        if (_unlocking.Step(Study) == UnlockingStep.Confirm && Compared() is { Holds: false } check)
        {
            Say(RevealScreenWords.NotAsInKey(string.Join("; ", WithheldWords.Of(check, null))));
        }
    }

    private void Try(string passphrase)
    {
        if (Desk.OpenKey is not { } open)
        {
            Say(RevealScreenWords.NoKeyFilesHere);
            return;
        }

        KeyTried tried = open(_unlocking.Path!, passphrase, _unlocking.Ring);
        _firstPassphrase = tried.NeedsSecond ? passphrase : "";
        if (tried.Ring is not { } ring)
        {
            NotOpened(tried);
            return;
        }

        _unlocking = _unlocking with { NeedsSecond = false };

        bool isNew = ring.KeysLacking(Study) < _unlocking.Ring.KeysLacking(Study);
        _unlocking = isNew
            ? _unlocking with
            {
                Path = null,
                Files = _unlocking.Files.Add(_unlocking.Path!),
                Ring = ring,
            }
            : _unlocking with
            {
                Path = null,
            };
        Say(isNew ? null : RevealScreenWords.KeyGivenTwice);
    }

    private void NotOpened(KeyTried tried)
    {
        _unlocking = _unlocking with
        {
            Path = tried.AskAgain || tried.NeedsSecond ? _unlocking.Path : null,
            NeedsSecond = tried.NeedsSecond,
        };
        Say(tried.NeedsSecond ? null : tried.Words);
    }

    private void TakePaper(string answer)
    {
        SpecCode code = _unlocking.PaperDue(Study)!.Value;
        (CodedSpec? line, Objection? objection) = Opener.PaperLine($"{code}={answer}", Study);
        _unlocking = line is null
            ? _unlocking
            : _unlocking with
            {
                Ring = _unlocking.Ring.WithPaper([line], null),
                Paper = _unlocking.Paper.Add(code),
            };
        Say(objection?.ToString());
    }

    private void TakeControl(string answer)
    {
        KeyRing ring = answer.Length > 0 ? _unlocking.Ring.WithPaper([], answer) : _unlocking.Ring;
        Objection? against = ring.ObjectionIn(Study);
        _unlocking = against is null ? _unlocking with { Ring = ring, IsControlSaid = true } : _unlocking;
        Say(against?.ToString());
    }

    private void Confirm(string answer)
    {
        if (Compared().Holds || answer.Equals(RevealScreenWords.AsRead, StringComparison.OrdinalIgnoreCase))
        {
            Store();
        }
        else if (answer.Length == 0)
        {
            _unlocking = _unlocking.ReadAgain(Desk.Clock.GetUtcNow());
        }
    }

    private void Store()
    {
        Entry fact = _unlocking.IsAgain
            ? Opened!.ReadAgain(_unlocking.Marks, _unlocking.Readers)
            : _unlocking.Ring.Fact(Study, _unlocking.Marks, _unlocking.Readers, _unlocking.Earlier);
        if (Told(Pen.Write(fact)))
        {
            Forget();
            ToTop();
        }
    }
}
