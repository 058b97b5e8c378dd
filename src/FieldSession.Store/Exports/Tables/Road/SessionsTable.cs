using FieldSession.State;

namespace FieldSession.Store.Exports.Tables;

/// <summary>A session with what its calibration says of it.</summary>
/// <param name="Session">The session.</param>
/// <param name="IsVoid">Whether the meter drifted too far; null: not known yet.</param>
internal sealed record CalibratedSession(Session Session, bool? IsVoid);

/// <summary>The sessions and their calibration checks.</summary>
internal static class SessionsTable
{
    /// <summary>Columns and rows of the table.</summary>
    public static ExportTable Table { get; } =
        new DrawnTable<CalibratedSession>(
            "sessions",
            "The sessions, each with its calibration checks: one row a session.",
            [
                Column.Count<CalibratedSession>("session", "number, from 1", s => s.Session.Number).Always,
                Column.Number<CalibratedSession>("before_db", "dB", "shown on the calibrator before", s => s.Session.Before?.LevelDb),
                Column.Number<CalibratedSession>("after_db", "dB", "shown on the calibrator after", s => s.Session.After?.LevelDb),
                Column.Number<CalibratedSession>("drift_db", "dB", "after minus before", s => s.Session.DriftDb),
                Column.YesNo<CalibratedSession>(
                    "void",
                    "whether the meter drifted too far, so that no reading of the session counts",
                    s => s.IsVoid
                ),
                Column.Count<CalibratedSession>("before_line", "journal line of the check before", s => s.Session.Before?.Mark.Place),
                Column.Time<CalibratedSession>("before_at", "when the check before was made", s => s.Session.Before?.Mark.At),
                Column.YesNo<CalibratedSession>(
                    "before_typed_later",
                    "whether the check before was logged on paper and typed in afterwards",
                    s => s.Session.Before?.Mark.IsTypedLater
                ),
                Column.Count<CalibratedSession>("after_line", "journal line of the check after", s => s.Session.After?.Mark.Place),
                Column.Time<CalibratedSession>("after_at", "when the check after was made", s => s.Session.After?.Mark.At),
                Column.YesNo<CalibratedSession>(
                    "after_typed_later",
                    "whether the check after was logged on paper and typed in afterwards",
                    s => s.Session.After?.Mark.IsTypedLater
                ),
            ],
            Rows
        )
        {
            Key = ["session"],
        };

    private static IEnumerable<CalibratedSession> Rows(ExportSource source)
    {
        double voidDb = (source.Study.Plan?.Limits ?? new Limits()).CalibrationDriftVoidDb;
        return source.Study.Sessions.Select(session => new CalibratedSession(
            session,
            session.DriftDb is { } drift ? Math.Abs(drift) > voidDb : null
        ));
    }
}
