namespace FieldSession.Acoustics;

/// <summary>Neighbouring samples of a recording and what the filters made of them; all of one length, or empty where the rate gives no A levels.</summary>
internal readonly ref struct WeightedPiece
{
    /// <summary>The samples, as numbers of full scale.</summary>
    public required ReadOnlySpan<double> Samples { get; init; }

    /// <summary>The samples, A-weighted.</summary>
    public ReadOnlySpan<double> A { get; init; }

    /// <summary>The samples, C-weighted.</summary>
    public ReadOnlySpan<double> C { get; init; }

    /// <summary>Mean squares with weighting A and F.</summary>
    public ReadOnlySpan<double> Fast { get; init; }

    /// <summary>Mean squares with weighting A and S.</summary>
    public ReadOnlySpan<double> Slow { get; init; }

    /// <summary>A part of the piece.</summary>
    public WeightedPiece Part(int from, int length) => new()
    {
        Samples = Samples.Slice(from, length),
        A = A.IsEmpty ? A : A.Slice(from, length),
        C = C.IsEmpty ? C : C.Slice(from, length),
        Fast = Fast.IsEmpty ? Fast : Fast.Slice(from, length),
        Slow = Slow.IsEmpty ? Slow : Slow.Slice(from, length),
    };
}
