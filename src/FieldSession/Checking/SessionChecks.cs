using FieldSession.State;

namespace FieldSession.Checking;

/// <summary>The checks that belong to the session that is open or begins next: those made since the last one was closed.</summary>
public static class SessionChecks
{
    /// <summary>The checks of a name in the session, in order.</summary>
    public static IEnumerable<CheckRecord> In(Study study, string name)
    {
        ArgumentNullException.ThrowIfNull(study);
        int began = study.Sessions.LastOrDefault(session => session.After is not null && study.Hand.TookOver(session.Opened))?.After?.Mark.Place ?? 0;
        return study.Checks.Where(check => check.Name == name && check.Mark.Place > began);
    }
}
