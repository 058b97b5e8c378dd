namespace FieldSession.State;

/// <summary>How far the study has come, in the order of the job.</summary>
public enum Stage
{
    /// <summary>No plan yet.</summary>
    Empty,

    /// <summary>Planned, not sealed.</summary>
    Planned,

    /// <summary>Codes drawn, no run yet.</summary>
    Sealed,

    /// <summary>Runs are being driven.</summary>
    Driving,

    /// <summary>Every member of the crew has locked a prediction: the data are frozen.</summary>
    Predicted,

    /// <summary>The key is open.</summary>
    Revealed,
}
