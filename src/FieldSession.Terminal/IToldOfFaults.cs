namespace FieldSession.Terminal;

/// <summary>What is shown in the terminal and goes on after a fault in one of its handlers.</summary>
internal interface IToldOfFaults
{
    /// <summary>Says that a handler failed and that what was stored is safe.</summary>
    void Tell(Exception fault);
}
