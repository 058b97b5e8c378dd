using FieldSession.Comparing;

namespace FieldSession.Reporting;

/// <summary>Which line of the verdict a row is.</summary>
public enum VerdictLineKind
{
    /// <summary>The meter.</summary>
    Meter,

    /// <summary>The ring in recordings.</summary>
    Ring,

    /// <summary>The ear.</summary>
    Ear,

    /// <summary>The worth.</summary>
    Worth,
}

/// <summary>What the checks of the key found.</summary>
public enum KeyCheckResult
{
    /// <summary>It is not open.</summary>
    NotOpen,

    /// <summary>Commitment and marks agree; names may be given.</summary>
    Holds,

    /// <summary>A check failed; names are withheld.</summary>
    Failed,
}

/// <summary>One line of a verdict as data: a row of verdict.csv, an entry of the JSON's 'verdicts'. Codes, never names.</summary>
/// <param name="Question">The code that is asked about.</param>
/// <param name="Against">The code it is held against.</param>
/// <param name="Line">Meter, ring, ear or worth.</param>
/// <param name="Word">The word: MEASURED, HEARD BLIND, CAN'T SAY, ...</param>
/// <param name="Reason">What it rests on.</param>
/// <param name="HangsOn">Single changes that give another word; empty: none of those tried; null: not worked out, or not asked of this
/// line.</param>
/// <param name="Looks">How often the order was lengthened after a comparison could be seen; null: not of the meter.</param>
/// <param name="Estimate">The difference; null: not of the meter, or not known.</param>
/// <param name="Basis">What the meter's word rests on; null likewise.</param>
public sealed record VerdictLine(
    string Question,
    string Against,
    VerdictLineKind Line,
    string Word,
    string Reason,
    string? HangsOn,
    int? Looks,
    Estimate? Estimate,
    WordBasis? Basis
)
{
    /// <summary>Readings of the two codes that are left out of the clean result.</summary>
    public int LeftOut { get; init; }

    /// <summary>What the checks of the key found.</summary>
    public KeyCheckResult Key { get; init; }

    /// <summary>The same pair in another line, which has no figures of the meter.</summary>
    internal VerdictLine As(VerdictLineKind line, string word, string reason) =>
        new(Question, Against, line, word, reason, null, null, null, null);
}
