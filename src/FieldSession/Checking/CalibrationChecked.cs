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
        return Gate.WhileDataAreOpen(study) ?? study switch
        {
            { RunOn: { } run } => new Objection(JournalWords.RunIsOn(run), CheckingWords.EndRunOrCheckLater),
            { SessionOn: null } when After => new Objection(CheckingWords.NoSessionIsOpen, CheckingWords.CalibrateBeforeFirst),
            { SessionOn: { } session } when !After && study.Hand.Wrote(session.Opened) && study.LastRun?.Session == session.Number => new Objection(
                CheckingWords.SessionIsOpen, CheckingWords.CloseSessionFirst),
            _ => null,
        };
    }

    /// <inheritdoc/>
    public override Study ApplyTo(Study study, LineMark mark)
    {
        ArgumentNullException.ThrowIfNull(study);
        CalibrationCheck check = new(LevelDb, mark);
        Study next = study.SessionOn is { } open && (After || study.Hand.Wrote(open.Opened))
            ? study with { Sessions = study.Sessions.SetItem(open.Number - 1, After ? open with { After = check } : open with { Before = check }) }
            : study with { Sessions = study.Sessions.Add(new Session(study.Sessions.Count + 1, check, null) { Opened = mark }) };
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
            null when !After && Math.Abs(LevelDb - (after.Plan?.CalibratorDb ?? LevelDb)) > limits.Of(FurtherLimits.CalibratorDistance) + 1e-9 =>
                CheckingWords.CalibratorGivesOtherLevel(after.Plan?.CalibratorDb),
            null => "",
        };
        return new Echo(Words + said);
    }

    private string Words => $"calibration {(After ? "after" : "before")} {LevelDb:0.0#} dB";
}
