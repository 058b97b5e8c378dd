using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Checking;

/// <summary>The meter was put on the calibrator, before a session or after it.</summary>
/// <param name="After">Whether this is the check after the session.</param>
/// <param name="LevelDb">What the meter showed, dB.</param>
public sealed record CalibrationChecked(bool After, double LevelDb) : Entry
{
    /// <inheritdoc/>
    public override Objection? ObjectionIn(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.WhileDataAreOpen(study)
            ?? study switch
            {
                { RunOn: { } run } => new Objection(JournalWords.RunIsOn(run), CheckingWords.EndRunOrCheckLater),
                { SessionOn: null } when After => new Objection(CheckingWords.NoSessionIsOpen, CheckingWords.CalibrateBeforeFirst),
                { SessionOn: { } session } when !After && study.Hand.Wrote(session.Opened) && study.LastRun?.Session == session.Number =>
                    new Objection(CheckingWords.SessionIsOpen, CheckingWords.CloseSessionFirst),
                _ => null,
            };
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        CalibrationCheck check = new(LevelDb, mark);
        Study next =
            study.SessionOn is { } open && (After || study.Hand.Wrote(open.Opened))
                ? study with
                {
                    Sessions = study.Sessions.SetItem(open.Number - 1, After ? open with { After = check } : open with { Before = check }),
                }
                : study with
                {
                    Sessions = study.Sessions.Add(new Session(study.Sessions.Count + 1, check, null) { Opened = mark }),
                };
        return next.Undoably(study, mark, Words);
    }

    /// <inheritdoc/>
    public override Echo EchoIn(Study before, Study after)
    {
        ArgumentNullException.ThrowIfNull(after);
        Limits limits = after.Plan?.Limits ?? new Limits();
        double? drift = After ? after.LastSession?.DriftDb : null;
        string said = drift switch
        {
            { } d when Math.Abs(d) > limits.CalibrationDriftVoidDb => CheckingWords.DriftVoidsSession(d),
            { } d when Math.Abs(d) > limits.CalibrationDriftWarnDb => CheckingWords.DriftIsWarnedOf(d, limits),
            { } d => CheckingWords.DriftIsSmall(d),
            null
                when !After
                    && Math.Abs(LevelDb - (after.Plan?.CalibratorDb ?? LevelDb)) > limits.Of(FurtherLimits.CalibratorDistance) + 1e-9 =>
                CheckingWords.CalibratorGivesOtherLevel(after.Plan?.CalibratorDb),
            null => "",
        };
        return new Echo(Words + said);
    }

    private string Words => $"calibration {(After ? "after" : "before")} {LevelDb:0.0#} dB";
}

/// <summary>
/// Reads <c>calibration before 94.0</c> and <c>calibration after 93.9</c>. <c>calibration 94.0</c> alone is the one before until a run
/// of the session is driven, and the one after once the order is driven to its end.
/// </summary>
public static class CalibrationText
{
    private const string Form = CheckingWords.CalibrationForm;

    /// <summary>The fact that a typed line means; null: the line is about something else.</summary>
    public static Parsed? Parse(string text, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        string[] words = Typed.Words(text);
        if (words.Length == 0 || !Typed.Is(words[0], "calibration"))
        {
            return null;
        }

        if (IsAfter(words, study) is not { } after)
        {
            return Parsed.No(CheckingWords.CalibrationNamesTimeAndLevel, Form);
        }

        return Typed.Number(words[^1]) is { } levelDb && levelDb is >= 50 and <= 140
            ? Parsed.As(new CalibrationChecked(after, levelDb))
            : Parsed.No(CheckingWords.IsNoLevelOfCalibrator(words[^1]), Form);
    }

    private static bool? IsAfter(string[] words, Study study) =>
        words switch
        {
            [_, var when, _] when Typed.Is(when, "before") => false,
            [_, var when, _] when Typed.Is(when, "after") => true,
            [_, _] => DueNow(study),
            _ => null,
        };

    // in the middle of a session the one after would close it, so it has to be said
    private static bool? DueNow(Study study) =>
        study switch
        {
            { SessionOn: { } session, LastRun: { } run } when run.Session == session.Number => study.OrderDriven ? true : null,
            _ => false,
        };
}
