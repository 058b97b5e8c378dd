using System.Collections.Immutable;
using FieldSession.Journal;

namespace FieldSession.Terminal.Screens.Driving;

/// <summary>One line of the journal in the crew's words.</summary>
/// <param name="Number">Number of the line.</param>
/// <param name="Echo">What the program said.</param>
internal sealed record Act(int Number, Echo Echo);

/// <summary>The journal's last acts in words.</summary>
/// <param name="Last">The last acts, newest last.</param>
internal sealed record Acts(ImmutableList<Act> Last)
{
    /// <summary>No act yet.</summary>
    public static Acts None { get; } = new([]);

    /// <summary>The last acts of a logbook.</summary>
    public static Acts Of(Logbook logbook) => new([.. logbook.LastFacts.Select(fact => new Act(fact.Place, fact.Echo))]);

    /// <summary>The acts from a line on: while a run is on, what was read in earlier runs stays out of sight.</summary>
    public IEnumerable<Act> Since(int number) => Last.Where(act => act.Number >= number);
}
