using System.Collections.Immutable;

namespace FieldSession.State;

/// <summary>What one person says before the key is opened; it can't be changed afterwards.</summary>
/// <param name="Person">Who says it.</param>
/// <param name="Feature">The code that they hold to have the hidden feature.</param>
/// <param name="Sure">How sure, 1 (a guess) to 5 (certain).</param>
/// <param name="Quieter">The code that they hold to be quieter; null: no opinion.</param>
/// <param name="WouldPay">Whether they would pay for the feature; null: no opinion.</param>
/// <param name="Basis">Why they think so.</param>
/// <param name="Words">More in their own words; null: none.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record Prediction(
    string Person,
    SpecCode Feature,
    int Sure,
    SpecCode? Quieter,
    bool? WouldPay,
    PredictionBasis Basis,
    string? Words,
    LineMark Mark
)
{
    /// <summary>How sure as it was said in per cent, 1..100; null: it was said in steps, and <see cref="Sure"/> is the word.</summary>
    public int? SurePercent { get; init; }
}

/// <summary>What a prediction rests on: the check whether the blind held.</summary>
public enum PredictionBasis
{
    /// <summary>From the sound or the feel of the car: a right guess is a finding.</summary>
    Sound,

    /// <summary>From something seen or overheard: a right guess is a leak.</summary>
    Seen,

    /// <summary>A guess without grounds.</summary>
    Guess,
}

/// <summary>That the key was opened, and how its checks came out. Who is who is not here.</summary>
/// <param name="CommitmentHolds">Whether the key gave the published commitment; null: there was none.</param>
/// <param name="Marks">How the marks that were read last compare with the key.</param>
/// <param name="Readers">The people who read them.</param>
/// <param name="Mark">Where it is in the journal.</param>
public sealed record Opening(bool? CommitmentHolds, MarkCheck Marks, IReadOnlyList<string> Readers, LineMark Mark)
{
    /// <summary>Where it is in the journal that the marks were read again, in order.</summary>
    public ImmutableList<LineMark> ReadAgain { get; init; } = [];

    /// <summary>Whether the marks that two people read on the tyres agree with the key.</summary>
    public bool MarksAgree => Marks.Holds;
}

/// <summary>How the marks that were read on the tyres compare with the key. It names codes, no specs.</summary>
/// <param name="Differ">The codes whose mark is not the one in the key.</param>
/// <param name="NotRead">The driven codes whose mark was not read.</param>
/// <param name="ReadByTwo">Whether two different people read them.</param>
public sealed record MarkCheck(ImmutableList<SpecCode> Differ, ImmutableList<SpecCode> NotRead, bool ReadByTwo)
{
    /// <summary>Whether every mark was read by two people and is the one in the key.</summary>
    public bool Holds => Differ.IsEmpty && NotRead.IsEmpty && ReadByTwo;
}
