using FieldSession.Journal;
using FieldSession.State;

namespace FieldSession.Rating;

/// <summary>What rules out every act of the ear: it is done at a stop, while the data are open, by someone of the crew.</summary>
public static class EarGate
{
    /// <summary>What rules out rating or choosing now; null: nothing.</summary>
    /// <param name="study">The study.</param>
    /// <param name="what">"ratings" or "choices".</param>
    public static Objection? ObjectionIn(Study study, string what)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Gate.WhileDataAreOpen(study)
            ?? (study.RunOn is { } run ? new Objection(RatingWords.RunIsOnRateAtStop(run, what), RatingWords.StopAndParkFirst) : null);
    }

    /// <summary>What rules out a person; null: nothing.</summary>
    public static Objection? ObjectionTo(Study study, string person)
    {
        ArgumentNullException.ThrowIfNull(study);
        return MemberIn(study, person) is null
            ? new Objection(JournalWords.IsNotInCrew(person), JournalWords.CrewIs(string.Join(", ", study.Plan!.Crew.Select(m => m.Name))))
            : null;
    }

    /// <summary>The member of the crew with a name; null: a stranger.</summary>
    public static CrewMember? MemberIn(Study study, string person)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Plan?.Crew.FirstOrDefault(m => CrewMember.SamePerson(m.Name, person));
    }

    /// <summary>How many of the first words are the name of a member of the crew, the longest that fits; 1 for a stranger.</summary>
    public static int WordsOfName(IReadOnlyList<string> words, Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Typed.WordsOfName(words, (study.Plan?.Crew ?? []).Select(member => member.Name));
    }

    /// <summary>Where a member sat in a run: who drove it sat at the wheel, whoever the plan put there sits beside.</summary>
    public static string SeatIn(Run? run, CrewMember member)
    {
        ArgumentNullException.ThrowIfNull(member);
        return run?.Driver is { } driver && CrewMember.SamePerson(driver, member.Name) ? CrewMember.DriverSeat
            : member.Seat == CrewMember.DriverSeat && run?.Driver is not null ? CrewMember.CoDriverSeat
            : member.Seat;
    }
}
