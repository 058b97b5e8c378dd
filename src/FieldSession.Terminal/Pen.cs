using FieldSession.Journal;

namespace FieldSession.Terminal;

/// <summary>The hand that writes into the logbook for every screen, and remembers whether the disk took it.</summary>
/// <param name="logbook">The study's one door.</param>
internal sealed class Pen(Logbook logbook)
{
    /// <summary>Why the last act that could have been stored was not; null: it is safe.</summary>
    public string? NotSavedBecause { get; private set; }

    /// <summary>Raised after each try, stored or not.</summary>
    public event EventHandler? Tried;

    /// <summary>Writes a typed line.</summary>
    public Outcome Write(string line) => Noted(logbook.Write(line));

    /// <summary>Writes a fact that was put together from several answers.</summary>
    public Outcome Write(Entry fact) => Noted(logbook.Write(fact));

    private Outcome Noted(Outcome outcome)
    {
        if (outcome.Objection is null)
        {
            NotSavedBecause = outcome.NotSavedBecause;
        }

        Tried?.Invoke(this, EventArgs.Empty);
        return outcome;
    }
}
