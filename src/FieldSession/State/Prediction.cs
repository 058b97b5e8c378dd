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
    string Person, SpecCode Feature, int Sure, SpecCode? Quieter, bool? WouldPay, PredictionBasis Basis, string? Words, LineMark Mark)
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
