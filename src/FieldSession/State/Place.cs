using System.Globalization;

namespace FieldSession.State;

/// <summary>
/// A place in the order of runs: R, the reference code that brackets the others, or the number of another code. Which
/// code takes which place is drawn by lot at sealing.
/// </summary>
/// <param name="Index">0 for R, else 1, 2, ...</param>
public readonly record struct Place(int Index)
{
    /// <summary>The reference place.</summary>
    public static Place Reference => new(0);

    /// <summary>Whether this is the reference place.</summary>
    public bool IsReference => Index == 0;

    /// <summary>"R", "1", "2", ...</summary>
    public override string ToString() => IsReference ? "R" : Index.ToString(CultureInfo.InvariantCulture);
}
