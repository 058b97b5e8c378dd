using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>What a check answered.</summary>
public enum CheckAnswer
{
    /// <summary>Within its limits: recorded.</summary>
    Records,

    /// <summary>Outside a limit: the day goes on with a warning.</summary>
    Warns,

    /// <summary>So far outside that no run starts, unless it is overridden with a reason.</summary>
    Blocks,
}

/// <summary>A check that was made with typed values.</summary>
/// <param name="Name">Its name, such as "pressure".</param>
/// <param name="Values">What was typed, by name.</param>
/// <param name="Answer">What it answered.</param>
/// <param name="Words">The answer in words.</param>
/// <param name="Run">Number of the last run begun before it; 0: none.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record CheckRecord(
    string Name,
    ImmutableSortedDictionary<string, string> Values,
    CheckAnswer Answer,
    string Words,
    int Run,
    LineMark Mark
);

/// <summary>The crew's decision to go on although a blocking check rules it out.</summary>
/// <param name="Check">Name of the check.</param>
/// <param name="Reason">Why, in the crew's words.</param>
/// <param name="BeforeRun">Number of the run that it let start.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record Override(string Check, string Reason, int BeforeRun, LineMark Mark);
